"""Putting together and running in: C45 to C50."""
