"""The trade's arithmetic: pure functions and declarations, no I/O."""
