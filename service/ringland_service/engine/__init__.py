"""One question end to end: understood inputs, compute, doubt, checks, answer."""
