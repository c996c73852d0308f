"""From the OpenAPI document to ``ringland/_generated``; not shipped."""
