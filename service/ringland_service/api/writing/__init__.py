"""Answers of every form: JSON, text, CSV, pages and pictures."""
