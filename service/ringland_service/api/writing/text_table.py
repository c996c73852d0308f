"""A table of ready texts: columns where they fit, else the long cells one below another."""

import itertools
import re
import textwrap
from collections.abc import Mapping, Sequence

GAP = "  "
LEAST_LONG = 28
SHORT = 26
AT_THE_HEAD = 2
BOUND = "\N{NO-BREAK SPACE}"
BEFORE_UNIT = re.compile(r"(?<=[0-9]) (?=(?:mm|in|°C|µm|N·m|kPa|cc|kg|g)\b)")


def table(rows: Sequence[Mapping[str, str]], width: int, indent: int = 2) -> list[str]:
    """Return rows of texts by column as lines no longer than ``width``.

    One long column is wrapped beside the others; where several are long, each stands below the
    short ones of its row, behind its name.
    """
    names = list(dict.fromkeys(name for row in rows for name in row))
    wide = {name: max(len(name), *(len(row.get(name, "")) for row in rows)) for name in names}
    longest = max(names, key=lambda name: wide[name])
    others = sum(wide[name] + len(GAP) for name in names if name != longest)
    room = width - indent - others
    if wide[longest] <= room or room >= LEAST_LONG:
        wide[longest] = min(wide[longest], room)
        return _columns(rows, wide, indent)
    return _stacked(rows, wide, width, indent)


def _columns(rows: Sequence[Mapping[str, str]], wide: Mapping[str, int], indent: int) -> list[str]:
    numeric = {n for n in wide if all(row.get(n, "").isdecimal() for row in rows)}
    lines: list[str] = []
    for row in ({name: name for name in wide}, *rows):
        cells = {n: _wrapped(row.get(n, ""), wide[n]) for n in wide}
        for k in range(max(map(len, cells.values()))):
            texts = [cells[n][k] if k < len(cells[n]) else "" for n in wide]
            placed = [
                text.rjust(wide[n]) if n in numeric else text.ljust(wide[n])
                for n, text in zip(wide, texts, strict=True)
            ]
            lines.append((" " * indent + GAP.join(placed)).rstrip())
    return lines


def _wrapped(text: str, width: int, first: str = "", rest: str = "") -> list[str]:
    """Return a text in lines; a number and its unit stay on one of them."""
    lines = textwrap.wrap(
        BEFORE_UNIT.sub(BOUND, text),
        width,
        initial_indent=first,
        subsequent_indent=rest,
        break_on_hyphens=False,
    )
    return [line.replace(BOUND, " ") for line in lines] or [""]


def _stacked(
    rows: Sequence[Mapping[str, str]], wide: Mapping[str, int], width: int, indent: int
) -> list[str]:
    short = list(itertools.takewhile(lambda name: wide[name] <= SHORT, wide))[:AT_THE_HEAD]
    long = [name for name in wide if name not in short]
    label = max(map(len, long))
    lines: list[str] = []
    for number, row in enumerate(rows, 1):
        told = [row[name] for name in short if row.get(name)]
        lines.append(f"{' ' * indent}{number}. {', '.join(told)}".rstrip())
        for name in (name for name in long if row.get(name)):
            head = f"{' ' * (indent + 3)}{name:<{label}}{GAP}"
            lines += _wrapped(row[name], width, head, " " * len(head))
    return lines
