"""Pure formulas by subject; each takes one engine or a column of engines alike."""
