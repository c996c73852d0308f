"""Requests of every form: bodies, addresses, columns and lines, strictly read."""
