"""The templates of pages and pictures: escaped throughout, with no asset from outside."""

import re
from base64 import b64encode
from hashlib import sha256
from typing import Any

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup

# What XML forbids, and control characters that HTML has no use for.
_UNPRINTABLE = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\ufffe\uffff]")


def _printable(value: Any) -> Any:
    """Return a text without the characters that neither form can hold."""
    if isinstance(value, str) and not isinstance(value, Markup):
        return _UNPRINTABLE.sub("", value)
    return value


ENVIRONMENT = Environment(
    loader=PackageLoader("ringland_service.api.writing", "templates"),
    autoescape=True,
    undefined=StrictUndefined,
    finalize=_printable,
    trim_blocks=True,
    lstrip_blocks=True,
)


def _style() -> Markup:
    assert ENVIRONMENT.loader is not None  # noqa: S101 - given above
    source, _, _ = ENVIRONMENT.loader.get_source(ENVIRONMENT, "page.css")
    return Markup(source)  # noqa: S704 - the package's own file


STYLE = _style()
_DIGEST = b64encode(sha256(STYLE.encode("utf-8")).digest()).decode("ascii")
# The page's own style and nothing else: no script, no image, no form, no address.
STYLE_POLICY = (
    f"default-src 'none'; style-src 'sha256-{_DIGEST}'; base-uri 'none'; form-action 'none'"
)


def filled(template: str, **content: Any) -> str:
    """Return a template filled in."""
    return ENVIRONMENT.get_template(template).render(style=STYLE, **content)
