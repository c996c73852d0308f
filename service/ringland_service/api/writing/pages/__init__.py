"""Pages for people: an answer as HTML to read on a phone or to print."""
