"""The quantities of the trade, each once: kind, bounds, description, instrument."""
