"""Calculations of the machining of a bore."""
