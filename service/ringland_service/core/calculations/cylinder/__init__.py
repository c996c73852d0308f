"""Calculations of the stage cylinder."""
