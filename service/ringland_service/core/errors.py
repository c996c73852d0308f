"""The error tree of the core.

    CoreError
    ├── OutOfBounds      a number outside what the calculation can stand for
    └── Contradiction    inputs that cannot all be true of one engine

Only the web layer knows status codes; here an error says which field, what is wrong,
and what would be right.
"""


class CoreError(ValueError):
    """A question that cannot be answered as asked.

    Parameters
    ----------
    field : str
        Name of the input at fault, as in the declaration (``bore_mm``).
    message : str
        What is wrong, in words of the trade.
    right : str
        What would be right.
    also : tuple of str
        The other inputs that the fault lies between, where there are any.
    """

    code = "refused"

    def __init__(
        self, field: str, message: str, right: str = "", also: tuple[str, ...] = ()
    ) -> None:
        super().__init__(f"{field}: {message}" + (f" ({right})" if right else ""))
        self.field = field
        self.message = message
        self.right = right
        self.also = also


class OutOfBounds(CoreError):
    """A number outside the bounds of its kind."""

    code = "out_of_bounds"


class Contradiction(CoreError):
    """Inputs that cannot all be true of one engine."""

    code = "contradiction"
