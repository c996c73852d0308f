"""What each shape of declared field is: one adapter a shape, asked by all that reads and writes.

``registry.adapter(field)`` finds it. A new shape is a class here and a line in this module.
"""

# Imported for their adapters, which enter themselves in the registry.
from ringland_service.api.shapes import (
    numbers,
    open_kind,
    quantity,
    readings,
    records,
    results,
    tokens,
)

__all__ = ["numbers", "open_kind", "quantity", "readings", "records", "results", "tokens"]
