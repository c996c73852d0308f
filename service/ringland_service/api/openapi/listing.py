"""What ``GET /v1`` and the table routes serve: enough to build a form from."""

from dataclasses import asdict
from typing import Any

from ringland_service.api.reading.envelope import checks_of
from ringland_service.api.reading.list_text import list_example
from ringland_service.api.reading.query import offers_get
from ringland_service.api.reading.row_budget import MOST_ROWS, most_rows
from ringland_service.api.shapes.examples import example_of
from ringland_service.api.writing import forms
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.calculations.diagnosis.tables import (
    COMPLAINTS,
    EVIDENCE,
    FIGURES,
    FOR,
    NEXT_TESTS,
    SUSPECTS,
    Evidence,
)
from ringland_service.core.calculations.diagnosis.tables import RULES as RULES_OF_ADDITION
from ringland_service.core.declare import Composite, Declared, asked, defaults
from ringland_service.core.declare import declared as declared_fields
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import Field, ResultField
from ringland_service.core.declare.kinds import KINDS
from ringland_service.core.engines.materials import MATERIALS
from ringland_service.core.metrology.conformity import DEFAULT_RULE, RULES
from ringland_service.core.metrology.limits import GRADES, LIMITS, STANDINGS
from ringland_service.units import TABLE, symbols
from ringland_service.vocabulary import ALIASES


def calculations() -> dict[str, Any]:
    """Return the list of calculations with their fields."""
    return {
        "calculations": [calculation(c) for c in CALCULATIONS],
        "rules": RULES,
        "default_rule": DEFAULT_RULE,
        "standings": STANDINGS,
        "most_rows": MOST_ROWS,
    }


def calculation(of: Declared) -> dict[str, Any]:
    """Return one calculation: path, methods, fields, results, checks."""
    found: dict[str, Any] = {
        "name": of.name,
        "number": of.number,
        "stage": of.stage,
        "title": of.title,
        "summary": of.summary,
        "path": f"/v1/{of.name}",
        "get": offers_get(of),
        "most_rows": most_rows(of),
        "forms": list(forms.media_types(of)),
        "formulas": of.formulas,
        "one_of": [
            [[_public(of.inputs, name) for name in way] for way in ways] for ways in of.one_of
        ],
        "fields": fields(of.inputs),
        "checks": [{"name": c.name, "words": c.words} for c in checks_of(of)],
        "cautions": list(of.cautions),
    }
    if isinstance(of, Composite):
        parts = {step.part: step.calculation.name for step in of.steps}
        purposes = {step.part: step.purpose for step in of.steps}
        return found | {"parts": parts, "purposes": purposes}
    return found | {"results": results(of)}


def _public(record: type, name: str) -> str:
    return asked(record)[name].public(name)


def fields(record: type) -> list[dict[str, Any]]:
    """Return the fields of a record."""
    optional = defaults(record)
    return [
        {
            "name": field.public(name),
            "words": field.words,
            "required": name not in optional,
            "default": optional.get(name),
            "example": _example(field),
            **_shape(field),
        }
        for name, field in asked(record).items()
    ]


def _example(field: Field) -> Any:
    """Return the example of a field: plain values, and records in JSON form where it has any."""
    if isinstance(field, declared.RecordsField):
        return example_of(field) if field.example else None
    return field.example


def _shape(field: Field) -> dict[str, Any]:
    """Return what a form needs to know of a field's shape."""
    if isinstance(field, declared.QuantityField):
        return _quantity(field)
    if isinstance(field, (declared.NumberField, declared.CountField)):
        shape = "count" if isinstance(field, declared.CountField) else "number"
        return {"shape": shape, "low": field.low, "high": field.high}
    if isinstance(field, declared.NumbersField):
        counted = {"least": field.least, "most": field.most}
        text = {"text": list_example(field)}
        return {"shape": "numbers", "low": field.low, "high": field.high, **counted, **text}
    if isinstance(field, declared.ChoiceField):
        return {"shape": "choice", "choices": dict(field.choices)}
    if isinstance(field, declared.ChoicesField):
        return {"shape": "choices", "choices": dict(field.choices), "text": list_example(field)}
    if isinstance(field, declared.SectionField):
        return {"shape": "section", "fields": fields(field.record)}
    if isinstance(field, declared.RecordsField):
        return {"shape": "records", "fields": fields(field.record)}
    if isinstance(field, declared.TextField):
        return {"shape": "text", "longest": field.longest}
    shapes: dict[type[Field], str] = {
        declared.FlagField: "flag",
        declared.AnyQuantityField: "any_quantity",
        declared.UnitField: "unit",
    }
    return {"shape": shapes[type(field)]}


def _quantity(field: declared.QuantityField) -> dict[str, Any]:
    of = field.type
    found: dict[str, Any] = {
        "shape": "readings" if isinstance(field, declared.ReadingsField) else "quantity",
        "kind": of.kind.name,
        "unit": of.kind.unit,
        "units": list(symbols(of.kind)),
        "low": of.low,
        "high": of.high,
        "usual_low": of.warn_low,
        "usual_high": of.warn_high,
        "digits": of.digits,
        "instrument": of.instrument,
    }
    if isinstance(field, declared.ReadingsField):
        found |= {"least": field.least, "most": field.most, "gaps": field.gaps}
        found["text"] = list_example(field)
    return found


def results(of: Any) -> list[dict[str, Any]]:
    """Return the results of a calculation."""
    return [
        {
            "name": field.public(name),
            "words": field.words,
            "kind": field.kind.name if field.kind else None,
            "unit": field.kind.unit if field.kind else None,
            "source": field.source,
        }
        for name, field in declared_fields(of.outputs).items()
        if isinstance(field, ResultField)
    ]


def limits() -> dict[str, Any]:
    """Return the table of common-practice limits and grades."""
    return {
        "limits": [asdict(row) for row in LIMITS.values()],
        "grades": [asdict(grade) for grade in GRADES.values()],
        "standings": STANDINGS,
    }


def units() -> dict[str, Any]:
    """Return the units that each kind accepts, with their factors to the canonical unit."""
    return {
        "kinds": [
            {
                "kind": name,
                "unit": KINDS[name].unit,
                "us": KINDS[name].us,
                "units": [
                    {"symbol": symbol, "factor": unit.factor, "offset": unit.offset}
                    for symbol, unit in table.items()
                    if symbol not in ALIASES
                ],
                "aliases": {a: s for a, s in ALIASES.items() if a in table},
            }
            for name, table in TABLE.items()
        ]
    }


def materials() -> dict[str, Any]:
    """Return the materials with their expansion coefficients."""
    return {"materials": [asdict(material) for material in MATERIALS.values()]}


def evidence() -> dict[str, Any]:
    """Return the tables of the diagnosis: who is suspected, by what, how much, how it adds up."""
    return {
        "suspects": [_filled(asdict(suspect)) for suspect in SUSPECTS.values()],
        "evidence": [_evidence(row) for row in EVIDENCE.values()],
        "figures": [asdict(figure) for figure in FIGURES.values()],
        "rules": [_filled(asdict(rule)) for rule in RULES_OF_ADDITION.values()],
        "complaints": [_filled(asdict(one)) for one in COMPLAINTS.values()],
        "next_tests": [_filled(asdict(test)) for test in NEXT_TESTS],
        "standings": STANDINGS,
    }


def _evidence(row: Evidence) -> dict[str, Any]:
    """Return a row of evidence, every line with its weight as a word and as a signed number."""
    found = _filled(asdict(row))
    for line in found["lines"]:
        sign = 1.0 if line["direction"] == FOR else -1.0
        line["counts"] = sign * FIGURES[line["weight"]].value
    return found


def _filled(row: dict[str, Any]) -> dict[str, Any]:
    """Return a row less what it does not say."""
    return {name: value for name, value in row.items() if value not in ("", (), False)}
