"""The JSON Schema of job files, made from the forms: they are the single truth for fields."""

from typing import Any

from chargebench.jobfile.check import STEPS_MOST
from chargebench.jobfile.model import REGISTERS_HELD, VERSION
from chargebench.jobfile.shape import ID_LONGEST
from chargebench.steps import REGISTERS, STEPS, STOCK
from chargebench.steps.form import LINES_MOST, TEXT_LONGEST, TICK_FIELDS, YES_NO, Asks, Field, Form

_WHEN = {"type": "string", "format": "date-time", "examples": ["2026-03-04T08:10-05:00"]}
_ID = {"type": "string", "minLength": 1, "maxLength": ID_LONGEST}
_LONG = {"type": "string", "maxLength": TEXT_LONGEST}
_PERSON = _ID | {"description": "Id of a row in register.person."}


def schema() -> dict[str, Any]:
    """JSON Schema (draft 2020-12) of a job file."""
    properties: dict[str, Any] = {
        "chargebench_job": {"const": VERSION, "description": "Version of this format."},
        "about": _LONG | {"description": "What the file is, for people."},
        "shop": {"$ref": "#/$defs/register.shop"},
        "register": _closed(
            {
                name: {
                    "type": "object",
                    "propertyNames": _ID,
                    "additionalProperties": {"$ref": f"#/$defs/register.{name}"},
                }
                for name in REGISTERS_HELD
            }
        ),
        "stock": {
            "type": "array",
            "maxItems": LINES_MOST,
            "items": {"oneOf": [_act(key) for key in STOCK]},
        },
        "job": _job(),
    }
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "chargebench job file",
        "description": "One job as typed, with the register rows it needs. All readings are text "
        "with their unit, such as “3.9 oz” or “68 psig”.",
        **_closed(properties, "chargebench_job"),
        "$defs": _definitions(),
    }


def _definitions() -> dict[str, Any]:
    groups = (("register", REGISTERS), ("step", STEPS), ("stock", STOCK))
    return {f"{group}.{key}": _form(form) for group, forms in groups for key, form in forms.items()}


def _job() -> dict[str, Any]:
    return _closed(
        {
            "equipment": _ID | {"description": "Id of a row in register.equipment."},
            "reason": _LONG | {"description": "Why the job was opened."},
            "opened_at": _WHEN,
            "by": _PERSON,
            "steps": {
                "type": "array",
                "maxItems": STEPS_MOST,
                "items": {"oneOf": [each for key in STEPS for each in _step(key)]},
            },
            "closed_at": _WHEN,
        },
        "equipment",
        "opened_at",
        "by",
    )


def _act(key: str) -> dict[str, Any]:
    return _closed(
        {
            "act": {"const": key},
            "typed": {"$ref": f"#/$defs/stock.{key}"},
            "by": _PERSON,
            "happened_at": _WHEN,
        },
        "act",
        "typed",
        "by",
        "happened_at",
    )


def _step(key: str) -> tuple[dict[str, Any], dict[str, Any]]:
    again = _LONG | {"description": "Why a step done before in this job was done again."}
    common = {"step": {"const": key}, "by": _PERSON, "happened_at": _WHEN, "again": again}
    reason = _LONG | {"minLength": 1, "description": "Why the step was not needed."}
    return (
        _closed(
            common | {"typed": {"$ref": f"#/$defs/step.{key}"}},
            "step",
            "by",
            "happened_at",
            "typed",
        ),
        _closed(common | {"not_needed": reason}, "step", "by", "happened_at", "not_needed"),
    )


def _form(form: Form) -> dict[str, Any]:
    return {"title": form.title, "description": form.purpose, **_fields(form.fields)}


def _fields(fields: tuple[Field, ...]) -> dict[str, Any]:
    required = [each.key for each in fields if each.required]
    return _closed({each.key: _field(each) for each in fields}, *required)


def _field(each: Field) -> dict[str, Any]:
    if each.asks in (Asks.LINES, Asks.TICKS):
        inner = TICK_FIELDS if each.asks is Asks.TICKS else each.fields
        lines = {"type": "array", "maxItems": LINES_MOST, "items": _fields(inner)}
        return lines | ({"minItems": 1} if each.required else {}) | {"description": each.label}
    said: dict[str, Any] = {"type": "string", "maxLength": TEXT_LONGEST}
    said["description"] = f"{each.label}: {_asks(each)}" + (f" {each.hint}" if each.hint else "")
    if each.example:
        said["examples"] = [each.example]
    if each.asks in (Asks.CHOICE, Asks.YES_NO):
        said["enum"] = list(each.choices or YES_NO) + ([] if each.required else [""])
    elif each.required:
        said["minLength"] = 1
    return said


def _asks(each: Field) -> str:
    match each.asks:
        case Asks.READING:
            assert each.kind is not None, each.key
            return f"a {each.kind} with its unit."
        case Asks.ROW:
            return f"id of a row in register.{each.register}."
        case _:
            return f"{each.asks}."


def _closed(properties: dict[str, Any], *required: str) -> dict[str, Any]:
    said: dict[str, Any] = {"type": "object", "additionalProperties": False}
    if required:
        said["required"] = list(required)
    return said | {"properties": properties}
