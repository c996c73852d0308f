"""What JSON each declared field has."""
