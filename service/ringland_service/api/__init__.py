"""The web layer: Flask and marshmallow, derived from the declarations."""
