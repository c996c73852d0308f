"""Valves, guides, seats, springs and lash; the head face and the cam."""
