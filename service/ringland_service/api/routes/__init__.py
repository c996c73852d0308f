"""The routes, and how an answer is sent."""
