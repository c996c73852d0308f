"""What an engine is: its kind and condition, materials, and the survey of a bore."""
