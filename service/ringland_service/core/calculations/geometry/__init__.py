"""Calculations of the stage geometry."""
