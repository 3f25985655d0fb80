"""Whether an entry of another bench is one that this program could have signed.

A chain proves that an entry was not changed since; it does not prove that this program wrote it.
What the desk reads of an entry later is looked at before it is taken in.
"""

from collections.abc import Mapping
from typing import Any

import msgspec

from chargebench.desk.photos import PICTURE
from chargebench.desk.registers import ID
from chargebench.errors import PostingRefused
from chargebench.flags import Level
from chargebench.ledger import HANDED_OVER, Conflict, NewEntry
from chargebench.steps import STEPS, stocktake
from chargebench.words import say

Text = dict[str, str | list[dict[str, str]]]


class _Flag(msgspec.Struct, forbid_unknown_fields=True):
    level: Level
    key: str
    says: str
    about: str
    figure: str = ""
    limit: str = ""
    source: str = ""
    mark: str = ""


class _Opened(msgspec.Struct):
    reason: str


class _Signed(msgspec.Struct):
    step: str
    typed: Text
    rule_set: str
    flags: list[_Flag]


class _FollowUp(msgspec.Struct):
    step: str
    typed: Text


class _NotNeeded(msgspec.Struct):
    step: str
    reason: str


class _Closed(msgspec.Struct):
    flags: list[_Flag]


class _Why(msgspec.Struct):
    reason: str


class _Reversal(msgspec.Struct):
    reverses: str
    reason: str


class _TakenIn(msgspec.Struct):
    file: str
    sha256: str


class _Weighing(msgspec.Struct, forbid_unknown_fields=True):
    expected_mg: int
    found_mg: int
    tolerance_mg: int
    scale_mg: int = 0
    ledger_mg: int = 0


class _Weighed(msgspec.Struct):
    places: list[str]
    weighed: _Weighing | msgspec.UnsetType = msgspec.UNSET


class _Picture(msgspec.Struct):
    picture: str
    caption: str
    at_step: str


class _StockTake(msgspec.Struct):
    said: list[str]
    entries: list[str]
    lines: list[dict[str, str | int]]
    not_counted: list[str]


class _HandedOver(msgspec.Struct):
    file: str
    sha256: str
    conflicts: list[Conflict]


class _Settled(msgspec.Struct):
    entry: str
    conflict: int
    reason: str


class _Named(msgspec.Struct):
    bench: str


_SHAPES: dict[str, type] = {
    "job-opened": _Opened,
    "step-signed": _Signed,
    "follow-up": _FollowUp,
    "step-not-needed": _NotNeeded,
    "job-closed": _Closed,
    "job-reopened": _Why,
    "reversal": _Reversal,
    "taken-in": _TakenIn,
    "weighed": _Weighed,
    PICTURE: _Picture,
    stocktake.KIND: _StockTake,
    HANDED_OVER: _HandedOver,
    "settled": _Settled,
    "bench-named": _Named,
}


def check(new: NewEntry) -> None:
    """Refuse an entry whose content the desk could not read.

    Raises
    ------
    PostingRefused
        What was expected instead; a kind that is not known here is left alone.
    """
    shape = _SHAPES.get(new.kind)
    if shape is not None:
        try:
            msgspec.convert(new.payload, shape)
        except msgspec.ValidationError as problem:
            raise PostingRefused(
                say(
                    "It is not what this program signs as “{kind}” ({problem}). If that "
                    "bench runs a newer chargebench, take the file in with one.",
                    kind=new.kind,
                    problem=problem,
                )
            ) from problem
    step = new.payload.get("step")
    if new.kind in ("step-signed", "follow-up", "step-not-needed") and step not in STEPS:
        raise PostingRefused(
            say(
                "This program knows no step “{step}”. Take the file in with a newer chargebench.",
                step=str(step)[:40],
            )
        )
    if new.kind == "register":
        _check_id(new.payload)


def _check_id(payload: Mapping[str, Any]) -> None:
    if not ID.fullmatch(payload["id"]):
        raise PostingRefused("A row's id of letters, digits, dots and dashes was expected.")
