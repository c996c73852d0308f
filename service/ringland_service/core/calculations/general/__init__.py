"""Calculations of the stage general."""
