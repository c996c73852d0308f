"""Ringland: the arithmetic of a top-end engine job, as a stateless calculation service."""

__version__ = "0.1.0"
