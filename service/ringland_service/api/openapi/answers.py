"""OpenAPI schemas of what the service answers."""

from typing import Any

from ringland_service.api.openapi.batch import batch_components
from ringland_service.api.openapi.fields import Components, pascal, ref
from ringland_service.api.openapi.problem import problem_component
from ringland_service.api.openapi.shapes import (
    INTERVAL,
    INTERVAL_OR_NULL,
    INTERVALS,
    NUMBER_OR_NULL,
    NUMBERS_OR_NULL,
    column,
)
from ringland_service.api.openapi.shapes import object_of as _object
from ringland_service.core.declare import (
    Calculation,
    Composite,
    Declared,
    asked,
    defaults,
    result_shapes,
)
from ringland_service.core.declare import declared as declared_fields
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import Field, ResultField
from ringland_service.core.metrology.conformity import (
    BY_INTERVAL,
    CLOSE,
    FAIL,
    INTERVAL_RULE,
    PASS,
    RULES,
    WORDS,
)
from ringland_service.core.metrology.limits import STANDINGS
from ringland_service.core.metrology.unjudged import WHY
from ringland_service.engine.standing_in import may_be_absent


def _nullable(schema: dict[str, Any]) -> dict[str, Any]:
    return {"anyOf": [schema, {"type": "null"}]}


def _shared() -> Components:
    """Return the components that every answer is made of."""
    text, number = {"type": "string"}, {"type": "number"}
    side = {"anyOf": [ref("QuantityValue"), number, {"type": "null"}]}
    value = {"anyOf": [ref("QuantityValue"), number]}
    return {
        "Interval": INTERVAL,
        "Intervals": {
            "type": "object",
            "description": "95 % intervals of results without a unit, by name, of several parts by"
            " part and name; a list for a list",
            "additionalProperties": {"anyOf": [ref("Interval"), INTERVALS]},
        },
        "QuantityValue": {
            "type": "object",
            "description": "a quantity in an answer; digits are the suggested decimals",
            "required": ["value", "unit", "digits"],
            "properties": {
                "value": number,
                "unit": text,
                "digits": {"type": "integer"},
                "uncertainty": {"type": "number", "description": "expanded (k = 2), same unit"},
                "interval": ref("Interval"),
            },
        },
        "QuantityList": {
            "type": "object",
            "description": "readings in an answer; null where one is missing",
            "required": ["values", "unit", "digits"],
            "properties": {
                "values": {"type": "array", "items": NUMBER_OR_NULL},
                "unit": text,
                "digits": {"type": "integer"},
                "uncertainties": {"type": "array", "items": NUMBER_OR_NULL},
                "intervals": INTERVALS,
            },
        },
        "Limit": _object(
            {
                "low": side,
                "high": side,
                "standing": {"type": "string", "enum": list(STANDINGS)},
                "source": text,
            },
            optional={
                "with_decompressor": {
                    "type": "boolean",
                    "description": "stated for a reading with the decompressor at work",
                }
            },
            description="a limit with its standing",
        ),
        "Verdict": _object(
            {
                "check": text,
                "words": text,
                "of": {
                    "type": ["string", "null"],
                    "description": "of which, where several are judged",
                },
                "value": value,
                "uncertainty": side,
                "interval": INTERVAL_OR_NULL,
                "bias": {
                    "type": ["string", "null"],
                    "description": "which way noise pushes the value, where the verdict is judged"
                    " from its interval",
                },
                "limit": ref("Limit"),
                "verdict": {"type": "string", "enum": list(WORDS)},
                "why": {
                    "type": ["string", "null"],
                    "enum": [*WHY, None],
                    "description": "why no verdict is due: "
                    + "; ".join(f"{token}: {words}" for token, words in WHY.items()),
                },
                "to_judge": {
                    "type": ["string", "null"],
                    "description": "what would make a reading that is not judged one that can be",
                },
                "without_uncertainty": {
                    "type": ["string", "null"],
                    "enum": [PASS, FAIL, CLOSE, None],
                },
                "probability_within": NUMBER_OR_NULL,
                "margin": value,
                "rule": {
                    "type": "string",
                    "enum": [*RULES, BY_INTERVAL],
                    "description": f"{BY_INTERVAL}: {INTERVAL_RULE}; not a rule to ask for",
                },
                "doubt_fails": {"type": ["string", "null"]},
                "to_settle": _nullable(ref("ToSettle")),
            },
            description="a verdict: value, limit, word, and how to settle or to judge it",
        ),
        "ToSettle": _object({"needed_uncertainty": side, "advice": text}),
        "Warning": _object({"code": text, "field": text, "message": text}),
        "Basis": _object({"field": text, "formula": text, "source": text}),
        "TraceStep": _object(
            {"field": text, "formula": text, "substituted": text, "value": number, "unit": text}
        ),
        "MeasureNext": _object(
            {
                "opens": text,
                "why": text,
                "ways": {
                    "type": "array",
                    "items": {
                        "type": "array",
                        "items": _object({"field": text, "words": text, "instrument": text}),
                    },
                },
                "advice": text,
            },
            description="what would open a part of the answer (any one way), or settle a verdict",
        ),
        "NotWorkedOut": _object(
            {"part": text, "words": text, "why": text},
            description="a part that is not worked out for this engine, and why",
        ),
        "Taken": _object(
            {"field": text, "from": text},
            description="where a part's field came from, where the names differ",
        ),
        "Column": column(),
        **batch_components(),
        "Problem": problem_component(),
    }


def shown_schema(field: Field, shape: str) -> dict[str, Any]:
    """Return the schema of a field as an answer shows it; ``shape`` is what a result is."""
    described = {"description": field.words}
    if isinstance(field, ResultField):
        return {**_result(field, shape), **described}
    if isinstance(field, declared.ReadingsField):
        return {**ref("QuantityList"), **described}
    if isinstance(field, (declared.QuantityField, declared.AnyQuantityField)):
        return {**ref("QuantityValue"), **described}
    if isinstance(field, declared.SectionField):
        return {**shown_record(field.record), **described}
    if isinstance(field, declared.RecordsField):
        return {"type": "array", "items": shown_record(field.record), **described}
    return {**_PLAIN[type(field)], **described}


_PLAIN: dict[type[Field], dict[str, Any]] = {
    declared.NumberField: {"type": "number"},
    declared.NumbersField: {"type": "array", "items": {"type": "number"}},
    declared.CountField: {"type": "integer"},
    declared.FlagField: {"type": "boolean"},
    declared.ChoiceField: {"type": "string"},
    declared.ChoicesField: {"type": "array", "items": {"type": "string"}},
    declared.TextField: {"type": "string"},
    declared.UnitField: {"type": "string"},
}


def _result(field: ResultField, shape: str) -> dict[str, Any]:
    if field.record is not None:
        return {"type": "array", "items": shown_record(field.record)}
    if shape == "list":
        return (
            ref("QuantityList")
            if field.kind or field.kind_of
            else {"type": "array", "items": _LISTED}
        )
    if field.choices is not None:
        return {"type": "string", "enum": list(field.choices)}
    if field.kind is not None or field.kind_of or shape == "quantity":
        return ref("QuantityValue")
    return {"type": shape}


_LISTED = {"type": ["string", "number"]}


def shown_record(record: type) -> dict[str, Any]:
    """Return the schema of a record as an answer shows it; absent where not known."""
    shapes = result_shapes(record)
    properties = {f.public(n): shown_schema(f, shapes[n]) for n, f in asked(record).items()}
    return {"type": "object", "properties": properties}


def answer_component(calculation: Declared, components: Components) -> str:
    """Add the components of a calculation's answer and return the answer's name."""
    for name, schema in _shared().items():
        components.setdefault(name, schema)
    name = f"{pascal(calculation.name)}Answer"
    text = {"type": "string"}
    properties: dict[str, Any] = {
        "calculation": {"type": "string", "const": calculation.name},
        "formulas": text,
        "inputs": shown_record(calculation.inputs),
        "result": _results(calculation, components),
        "uncertainties": _uncertainties(calculation),
        "intervals": ref("Intervals"),
        "verdicts": {"type": "array", "items": ref("Verdict")},
        "warnings": {"type": "array", "items": ref("Warning")},
        "cautions": {"type": "array", "items": text},
        "basis": {"type": "array", "items": ref("Basis")},
    }
    if isinstance(calculation, Composite):
        properties["taken"] = {"type": "array", "items": ref("Taken")}
    found = _object(properties, description=calculation.summary)
    found["properties"] = {**properties, "trace": {"type": "array", "items": ref("TraceStep")}}
    components[name] = found
    return name


def _uncertainties(calculation: Declared) -> dict[str, Any]:
    """Return the schema of the uncertainties of results without a unit, by name."""
    of = "part and name" if isinstance(calculation, Composite) else "name"
    about = f"expanded uncertainties (k = 2) of results without a unit, by {of}; a list for a list"
    one = {"anyOf": [{"type": "number"}, NUMBERS_OR_NULL]}
    return {"type": "object", "description": about, "additionalProperties": one}


def _results(calculation: Declared, components: Components) -> dict[str, Any]:
    if isinstance(calculation, Composite):
        parts: dict[str, Any] = {
            step.part: ref(result_component(step.calculation, components))
            for step in calculation.steps
        }
        parts["not_worked_out"] = {"type": "array", "items": ref("NotWorkedOut")}
        parts["measure_next"] = {"type": "array", "items": ref("MeasureNext")}
        return {"type": "object", "required": ["measure_next"], "properties": parts}
    assert isinstance(calculation, Calculation)  # noqa: S101 - the other kind of Declared
    return ref(result_component(calculation, components))


def result_component(calculation: Calculation, components: Components) -> str:
    """Add the component of a calculation's results and return its name."""
    name = f"{pascal(calculation.name)}Result"
    if name not in components:
        optional = defaults(calculation.outputs)
        fields = declared_fields(calculation.outputs)
        absent = may_be_absent(calculation)
        sure = [f.public(n) for n, f in fields.items() if n not in optional and n not in absent]
        found = shown_record(calculation.outputs)
        components[name] = {**found, "required": sure} if sure else found
    return name
