"""What a worn cylinder needs, and the sizes ordered from the machinist."""
