"""Writing a job file: the same file for the same content, byte for byte."""

import hashlib
import json
from collections.abc import Mapping
from datetime import datetime
from typing import Any

from chargebench.jobfile.model import REGISTERS_HELD, VERSION, Job, JobFile, StepTyped
from chargebench.steps import REGISTERS, STEPS, STOCK
from chargebench.steps.form import TICK_FIELDS, Asks, Field, Form, Typed


def write(file: JobFile) -> bytes:
    """A job file's bytes: UTF-8, fields in the order of their forms, empty ones left out."""
    value: dict[str, Any] = {"chargebench_job": VERSION}
    if file.about:
        value["about"] = file.about
    if file.shop is not None:
        value["shop"] = _typed(REGISTERS["shop"], file.shop)
    register = {
        name: {key: _typed(REGISTERS[name], row) for key, row in file.register[name].items()}
        for name in REGISTERS_HELD
        if file.register.get(name)
    }
    if register:
        value["register"] = register
    if file.stock:
        value["stock"] = [
            {
                "act": each.act,
                "typed": _typed(STOCK[each.act], each.typed),
                "by": each.by,
                "happened_at": _when(each.happened_at),
            }
            for each in file.stock
        ]
    if file.job is not None:
        value["job"] = _job(file.job)
    return (json.dumps(value, ensure_ascii=False, indent=2, allow_nan=False) + "\n").encode()


def digest(file: JobFile) -> str:
    """SHA-256 of the content, whatever the spaces and line ends of the file it came from."""
    return hashlib.sha256(write(file)).hexdigest()


def _job(job: Job) -> dict[str, Any]:
    value: dict[str, Any] = {"equipment": job.equipment}
    if job.reason:
        value["reason"] = job.reason
    value |= {"opened_at": _when(job.opened_at), "by": job.by}
    value["steps"] = [_step(each) for each in job.steps]
    if job.closed_at is not None:
        value["closed_at"] = _when(job.closed_at)
    return value


def _step(each: StepTyped) -> dict[str, Any]:
    value: dict[str, Any] = {"step": each.step}
    if each.again:
        value["again"] = each.again
    value |= {"by": each.by, "happened_at": _when(each.happened_at)}
    if each.not_needed:
        value["not_needed"] = each.not_needed
    else:
        value["typed"] = _typed(STEPS[each.step], each.typed)
    return value


def _typed(form: Form | Field, typed: Typed | Mapping[str, str]) -> dict[str, Any]:
    return _fields(form.fields, typed)


def _fields(fields: tuple[Field, ...], typed: Typed | Mapping[str, str]) -> dict[str, Any]:
    value: dict[str, Any] = {}
    for each in fields:
        given = typed.get(each.key, "")
        if each.asks in (Asks.LINES, Asks.TICKS):
            inner = TICK_FIELDS if each.asks is Asks.TICKS else each.fields
            lines = [] if isinstance(given, str) else [_fields(inner, line) for line in given]
            given = [line for line in lines if line]
        if given:
            value[each.key] = given
    return value


def _when(when: datetime) -> str:
    return when.isoformat(timespec="seconds" if when.second else "minutes")
