"""What is held against inputs and results: rules, warnings, checks, wants and agreements.

Had from ``declare.py`` as well, like all words of a declaration.
"""

import dataclasses
from collections.abc import Callable, Mapping
from typing import Any

from ringland_service.core.limits import Limit
from ringland_service.core.unjudged import Unjudged

# Fields that must be given together to answer one need.
Way = tuple[str, ...]


@dataclasses.dataclass(frozen=True)
class Rule:
    """A rule between fields. Skipped while one of the fields is absent.

    ``broken`` takes the inputs and answers a bool, or an array of them for a column.
    ``field`` (the first of ``fields``) is the one that the error names.
    """

    fields: tuple[str, ...]
    broken: Callable[[Any], Any]
    message: str
    right: str


@dataclasses.dataclass(frozen=True)
class Notice:
    """A warning that rides with an answer. ``when`` takes inputs and results.

    ``unless_doubted`` names a quantity, of the inputs or of the records in them, whose stated doubt
    silences it. ``common_practice`` marks one that a figure of the tables raises: it falls away
    with the common-practice figures.
    """

    code: str
    field: str
    when: Callable[[Any, Any], Any]
    message: str
    unless_doubted: str = ""
    common_practice: bool = False


@dataclasses.dataclass(frozen=True)
class Check:
    """A verdict to be passed on one value.

    Attributes
    ----------
    name : str
        Unique over all calculations, so that a whole job can address it.
    value : str
        Name of the result (or input) judged.
    words : str
    default : callable or None
        Takes inputs and results, returns the ``Limit`` that judges when the request gives none;
        with ``each`` perhaps a tuple of them, one a member.
    settle : str
        What would narrow the doubt.
    doubt_fails : str
        Where set, too close to call counts as fail; says why.
    each : str
        Where ``value`` is a list, each of its members gets a verdict of its own; names the list
        of results that says which is which.
    unjudged : tuple of Unjudged
        The conditions under which no verdict is due, the weightiest first.
    with_decompressor : bool
        Whether a limit may say that it is stated with the decompressor at work.
    """

    name: str
    value: str
    words: str
    settle: str
    default: Callable[[Any, Any], Limit | tuple[Limit, ...] | None] | None = None
    doubt_fails: str = ""
    each: str = ""
    unjudged: tuple[Unjudged, ...] = ()
    with_decompressor: bool = False


@dataclasses.dataclass(frozen=True)
class Want:
    """What to measure or tell more, and why; each way a set of fields, any one way will do.

    Where no further field would tell, ``advice`` says what to do with those given.
    """

    why: str
    ways: tuple[Way, ...] = ()
    advice: str = ""


@dataclasses.dataclass(frozen=True)
class Agreement:
    """What is told in several fields that must agree within its uncertainty.

    Looked at as soon as all ``of`` are known; ``broken`` takes the known values by name and the
    expanded uncertainties (k = 2) of those that have one.

    Attributes
    ----------
    of : tuple of str
        Fields of the inputs, of a composite in any section, or ``part.result`` of a step.
    broken : callable
    message, right : str
        What is wrong, in words of the trade, and what would be right.
    fields : tuple of str
        Fields that the error names; those of ``of`` where not given. A field that is not known
        is left out.
    """

    of: tuple[str, ...]
    broken: Callable[[Mapping[str, Any], Mapping[str, Any]], bool]
    message: str
    right: str
    fields: tuple[str, ...] = ()
