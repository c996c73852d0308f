"""OpenAPI schemas of what the service answers."""

from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.openapi.batch import batch_components
from ringland_service.api.openapi.problem import problem_component
from ringland_service.api.shapes.looks import record_schema
from ringland_service.api.shapes.schema_parts import (
    INTERVAL,
    INTERVAL_OR_NULL,
    INTERVALS,
    NUMBER,
    NUMBER_OR_NULL,
    NUMBERS_OR_NULL,
    TEXT,
    Components,
    column,
    pascal,
    ref,
)
from ringland_service.api.shapes.schema_parts import object_of as _object
from ringland_service.core.declare import Calculation, Composite, Operation, declared, defaults
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


def _nullable(schema: JsonObject) -> JsonObject:
    return {"anyOf": [schema, {"type": "null"}]}


def _shared() -> Components:
    """Return the components that every answer is made of."""
    text, number = TEXT, NUMBER
    side: JsonObject = {"anyOf": [ref("QuantityValue"), number, {"type": "null"}]}
    value: JsonObject = {"anyOf": [ref("QuantityValue"), number]}
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
            "description": "a quantity in an answer; decimals are the suggested decimals",
            "required": ["value", "unit", "decimals"],
            "properties": {
                "value": number,
                "unit": text,
                "decimals": {"type": "integer"},
                "uncertainty": {"type": "number", "description": "expanded (k = 2), same unit"},
                "interval": ref("Interval"),
            },
        },
        "QuantityList": {
            "type": "object",
            "description": "readings in an answer; null where one is missing",
            "required": ["values", "unit", "decimals"],
            "properties": {
                "values": {"type": "array", "items": NUMBER_OR_NULL},
                "unit": text,
                "decimals": {"type": "integer"},
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
                "label": text,
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
                "conformance_probability": NUMBER_OR_NULL,
                "margin": value,
                "rule": {
                    "type": "string",
                    "enum": [*RULES, BY_INTERVAL],
                    "description": f"{BY_INTERVAL}: {INTERVAL_RULE}; not a rule to ask for",
                },
                "inconclusive_fails": {"type": ["string", "null"]},
                "to_settle": _nullable(ref("ToSettle")),
            },
            description="a verdict: value, limit, word, and how to settle or to judge it",
        ),
        "ToSettle": _object({"target_uncertainty": side, "advice": text}),
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
                        "items": _object({"field": text, "description": text, "instrument": text}),
                    },
                },
                "advice": text,
            },
            description="what would open a part of the answer (any one way), or settle a verdict",
        ),
        "NotWorkedOut": _object(
            {"part": text, "label": text, "why": text},
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


def answer_component(calculation: Operation, components: Components) -> str:
    """Add the components of a calculation's answer and return the answer's name."""
    for name, schema in _shared().items():
        components.setdefault(name, schema)
    name = f"{pascal(calculation.name)}Answer"
    text = TEXT
    properties: JsonObject = {
        "calculation": {"type": "string", "const": calculation.name},
        "formulas": text,
        "inputs": record_schema(calculation.inputs),
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


def _uncertainties(calculation: Operation) -> JsonObject:
    """Return the schema of the uncertainties of results without a unit, by name."""
    of = "part and name" if isinstance(calculation, Composite) else "name"
    about = f"expanded uncertainties (k = 2) of results without a unit, by {of}; a list for a list"
    one: JsonObject = {"anyOf": [{"type": "number"}, NUMBERS_OR_NULL]}
    return {"type": "object", "description": about, "additionalProperties": one}


def _results(calculation: Operation, components: Components) -> JsonObject:
    if isinstance(calculation, Composite):
        parts: JsonObject = {
            step.part: ref(result_component(step.calculation, components))
            for step in calculation.steps
        }
        parts["not_worked_out"] = {"type": "array", "items": ref("NotWorkedOut")}
        parts["measure_next"] = {"type": "array", "items": ref("MeasureNext")}
        return {"type": "object", "required": ["measure_next"], "properties": parts}
    assert isinstance(calculation, Calculation)  # noqa: S101 - the other kind of Operation
    return ref(result_component(calculation, components))


def result_component(calculation: Calculation, components: Components) -> str:
    """Add the component of a calculation's results and return its name."""
    name = f"{pascal(calculation.name)}Result"
    if name not in components:
        optional = defaults(calculation.outputs)
        fields = declared(calculation.outputs)
        absent = may_be_absent(calculation)
        sure: list[Json] = [
            f.public(n) for n, f in fields.items() if n not in optional and n not in absent
        ]
        found = record_schema(calculation.outputs)
        components[name] = {**found, "required": sure} if sure else found
    return name
