"""A job file's tree held against the forms; problems are collected, each with its place."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from chargebench.jobfile.model import REGISTERS_HELD, Job, JobFile, StepTyped, StockAct
from chargebench.jobfile.shape import (
    ID_LONGEST,
    Place,
    a_list,
    a_text,
    a_time,
    an_object,
    known_keys,
    named,
    typed_text,
)
from chargebench.steps import REGISTERS, STEPS, STOCK
from chargebench.steps.form import LINES_MOST, TEXT_LONGEST, Asks, Field, Form, Typed

STEPS_MOST = 100
FILE_KEYS = ("chargebench_job", "about", "shop", "register", "stock", "job")
ACT_KEYS = ("act", "typed", "by", "happened_at")
JOB_KEYS = ("equipment", "reason", "opened_at", "by", "steps", "closed_at")
STEP_KEYS = ("step", "typed", "not_needed", "again", "by", "happened_at")
AFTER_CLOSING = ("follow_up",)


def checked(value: dict[str, Any], place: Place, sha256: str) -> JobFile | None:
    """The job file of a tree, or None with the problems noted in the place."""
    if not known_keys(value, FILE_KEYS, (), place):
        return None
    about = a_text(value.get("about", ""), place.at("about"), TEXT_LONGEST)
    shop = (
        typed_text(value["shop"], REGISTERS["shop"], place.at("shop")) if "shop" in value else None
    )
    register = _register(value.get("register", {}), place.at("register"))
    known = _Known(register)
    acts = a_list(value.get("stock", []), place.at("stock"), LINES_MOST)
    stock = [_act(each, place.at("stock").at(at), known) for at, each in enumerate(acts)]
    job = _job(value["job"], place.at("job"), known) if "job" in value else None
    if shop is None and job is None and not stock and not any(register.values()):
        place.refuse("Expected a job, a shop, register rows or stock acts; there is none.")
    return JobFile(about, shop, register, tuple(each for each in stock if each), job, sha256)


@dataclass(frozen=True, slots=True)
class _Known:
    """The rows the file brings; what a job names must be among them."""

    register: Mapping[str, Mapping[str, Typed]]

    def row(self, register: str, key: str, place: Place) -> None:
        if key not in self.register.get(register, {}):
            place.refuse(
                "Expected a row “{key}” in register.{register}.",
                key=key[:ID_LONGEST],
                register=register,
            )

    def rows_named(self, form: Form | Field, typed: Typed, place: Place) -> None:
        """Refuse ids in typed text that the file has no row for."""
        for each in form.fields:
            given = typed.get(each.key, "")
            if each.asks is Asks.ROW and isinstance(given, str) and given.strip():
                self.row(each.register, given.strip(), place.at(each.key))
            elif not isinstance(given, str):
                for at, line in enumerate(given):
                    self._line(each, line, place.at(each.key).at(at))

    def _line(self, each: Field, line: Mapping[str, str], place: Place) -> None:
        if each.asks is Asks.TICKS:
            self.row("person", line["by"].strip(), place.at("by"))
        else:
            self.rows_named(each, line, place)


def _register(value: Any, place: Place) -> dict[str, dict[str, Typed]]:
    if not known_keys(value, REGISTERS_HELD, (), place) and not isinstance(value, dict):
        return {}
    register: dict[str, dict[str, Typed]] = {}
    for name in REGISTERS_HELD:
        if name not in value:
            continue
        rows = an_object(value[name], place.at(name))
        register[name] = {
            _id(key, place.at(name)): typed_text(row, REGISTERS[name], place.at(name).at(key)) or {}
            for key, row in rows.items()
        }
    for key, row in register.get("equipment", {}).items():
        site = row.get("site", "")
        if isinstance(site, str) and site.strip() and site.strip() not in register.get("site", {}):
            place.at("equipment").at(key).at("site").refuse(
                "Expected a row “{site}” in register.site.", site=site.strip()[:ID_LONGEST]
            )
    return register


def _act(value: Any, place: Place, known: _Known) -> StockAct | None:
    if not known_keys(value, ACT_KEYS, ACT_KEYS, place):
        return None
    form = _one_of(value["act"], STOCK, place.at("act"))
    by = _person(value["by"], place.at("by"), known)
    when = a_time(value["happened_at"], place.at("happened_at"))
    if form is None or when is None:
        return None
    typed = typed_text(value["typed"], form, place.at("typed"))
    if typed is None:
        return None
    known.rows_named(form, typed, place.at("typed"))
    return StockAct(form.key, typed, by, when)


def _job(value: Any, place: Place, known: _Known) -> Job | None:
    if not known_keys(value, JOB_KEYS, ("equipment", "opened_at", "by"), place):
        return None
    equipment = a_text(value["equipment"], place.at("equipment"), ID_LONGEST)
    known.row("equipment", equipment, place.at("equipment"))
    by = _person(value["by"], place.at("by"), known)
    reason = a_text(value.get("reason", ""), place.at("reason"), TEXT_LONGEST)
    opened = a_time(value["opened_at"], place.at("opened_at"))
    closed = None
    if "closed_at" in value:
        closed = a_time(value["closed_at"], place.at("closed_at"))
    steps_at = place.at("steps")
    listed = a_list(value.get("steps", []), steps_at, STEPS_MOST)
    steps = [_step(each, steps_at.at(at), known) for at, each in enumerate(listed)]
    if opened is None or None in steps:
        return None
    job = Job(equipment, opened, by, reason, tuple(each for each in steps if each), closed)
    _order(job, place)
    return job


def _order(job: Job, place: Place) -> None:
    """Refuse times that can not be, and a step done twice without a reason."""
    closed = job.closed_at
    if closed is not None and closed < job.opened_at:
        place.at("closed_at").refuse("Expected a time after the job was opened.")
        closed = None
    seen: set[str] = set()
    for at, each in enumerate(job.steps):
        here = place.at("steps").at(at)
        if each.happened_at < job.opened_at:
            here.at("happened_at").refuse("Expected a time after the job was opened.")
        late = closed is not None and each.happened_at > closed
        if late and each.step not in AFTER_CLOSING:
            here.at("happened_at").refuse("Expected a time before the job was closed.")
        if each.step in seen and not each.again:
            here.refuse(
                "“{step}” stands a second time; say in “again” why it was repeated.", step=each.step
            )
        if each.step not in seen and each.again:
            here.at("again").refuse("“{step}” was not done before in this job.", step=each.step)
        seen.add(each.step)


def _step(value: Any, place: Place, known: _Known) -> StepTyped | None:
    if not known_keys(value, STEP_KEYS, ("step", "by", "happened_at"), place):
        return None
    form = _one_of(value["step"], STEPS, place.at("step"))
    by = _person(value["by"], place.at("by"), known)
    when = a_time(value["happened_at"], place.at("happened_at"))
    not_needed = a_text(value.get("not_needed", ""), place.at("not_needed"), TEXT_LONGEST)
    again = a_text(value.get("again", ""), place.at("again"), TEXT_LONGEST)
    if ("typed" in value) == bool(not_needed.strip()):
        place.refuse("Expected either “typed”, or “not_needed” with the reason.")
        return None
    if form is None or when is None:
        return None
    if not_needed:
        return StepTyped(form.key, by, when, not_needed=not_needed, again=again)
    typed = typed_text(value["typed"], form, place.at("typed"))
    if typed is None:
        return None
    known.rows_named(form, typed, place.at("typed"))
    return StepTyped(form.key, by, when, typed, again=again)


def _id(key: str, place: Place) -> str:
    text = a_text(key, place.at(key[:ID_LONGEST]), ID_LONGEST)
    if not text.strip() or text != text.strip():
        place.refuse("Expected an id such as C-014 for each row.")
    return text


def _one_of(value: Any, forms: Mapping[str, Form], place: Place) -> Form | None:
    if isinstance(value, str) and value in forms:
        return forms[value]
    got = f"“{value[:ID_LONGEST]}”" if isinstance(value, str) else named(value)
    place.refuse("Expected one of: {forms}; got {got}.", forms=", ".join(forms), got=got)
    return None


def _person(value: Any, place: Place, known: _Known) -> str:
    by = a_text(value, place, ID_LONGEST)
    if by:
        known.row("person", by, place)
    return by
