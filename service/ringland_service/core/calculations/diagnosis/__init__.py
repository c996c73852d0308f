"""Calculations of the diagnosis, with its tables."""
