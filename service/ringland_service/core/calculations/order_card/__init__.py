"""The order for the machinist, and the check of one already written."""
