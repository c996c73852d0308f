"""Calculations of the stage engine tests."""
