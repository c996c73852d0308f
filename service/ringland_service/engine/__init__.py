"""One question end to end: understood inputs, compute, uncertainty, checks, answer."""
