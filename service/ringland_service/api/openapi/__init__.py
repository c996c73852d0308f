"""The OpenAPI document and the listing, from the declarations."""
