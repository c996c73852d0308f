"""Calculations of the stage job."""
