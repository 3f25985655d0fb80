"""Job files with one thing wrong each, made from a small good one."""

import copy
import json
from collections.abc import Callable
from typing import Any

from chargebench.jobfile import SIZE_MOST

NOON = "2026-03-04T12:00-05:00"
GOOD: dict[str, Any] = {
    "chargebench_job": 1,
    "register": {
        "site": {"S-01": {"name": "Bakery, Quay Street"}},
        "equipment": {
            "E-001": {
                "name": "Bakery freezer",
                "site": "S-01",
                "category": "commercial refrigeration",
                "cabinet": "self-contained with doors or drawers",
                "refrigerant": "R290",
                "charge": "3.0 oz",
            }
        },
        "cylinder": {"C-014": {"refrigerant": "R290", "contents": "new", "refillable": "yes"}},
        "person": {"P-01": {"name": "N. Okafor", "role": "technician"}},
        "instrument": {"S-2": {"kind": "scale", "name": "Bench scale", "resolution": "0.1 g"}},
    },
    "stock": [
        {
            "act": "receive",
            "typed": {"cylinder": "C-014", "mass": "4.40 kg"},
            "by": "P-01",
            "happened_at": "2026-03-02T09:00-05:00",
        }
    ],
    "job": {
        "equipment": "E-001",
        "opened_at": "2026-03-04T08:00-05:00",
        "by": "P-01",
        "steps": [
            {
                "step": "nameplate",
                "by": "P-01",
                "happened_at": NOON,
                "typed": {"refrigerant": "R290", "charge": "3.0 oz"},
            },
            {
                "step": "weigh_in",
                "by": "P-01",
                "happened_at": NOON,
                "typed": {
                    "kind": "into an evacuated system",
                    "lines": [
                        {
                            "cylinder": "C-014",
                            "scale": "S-2",
                            "arrangement": "cylinder on the scale",
                            "start": "4312.5 g",
                            "end": "4227.4 g",
                            "hose_state": "no hose, closed at the equipment",
                        }
                    ],
                },
            },
            {"step": "recovery", "by": "P-01", "happened_at": NOON, "not_needed": "empty"},
        ],
        "closed_at": "2026-03-04T13:00-05:00",
    },
}
Change = Callable[[dict[str, Any]], object]


def file(change: Change = lambda _: None) -> bytes:
    """Bytes of the good file after a change."""
    tree = copy.deepcopy(GOOD)
    change(tree)
    return json.dumps(tree, ensure_ascii=False).encode()


def _job(tree: dict[str, Any]) -> dict[str, Any]:
    job: dict[str, Any] = tree["job"]
    return job


def _nameplate(tree: dict[str, Any]) -> dict[str, Any]:
    typed: dict[str, Any] = _job(tree)["steps"][0]["typed"]
    return typed


def _line(tree: dict[str, Any]) -> dict[str, Any]:
    line: dict[str, Any] = _job(tree)["steps"][1]["typed"]["lines"][0]
    return line


def _deep(levels: int) -> Any:
    value: Any = "text"
    for _ in range(levels):
        value = [value]
    return value


def _again(tree: dict[str, Any]) -> None:
    _job(tree)["steps"].append(copy.deepcopy(_job(tree)["steps"][0]))


BROKEN: dict[str, bytes] = {
    "empty": b"",
    "spaces only": b" \n ",
    "cut short": file()[:900],
    "cut short in a text": file()[: file().index(b"Quay") + 2],
    "not JSON": file().replace(b'"by": "P-01"', b'"by" "P-01"', 1),
    "not UTF-8": file().replace(b"Bakery freezer", b"B\xe4ckerei", 1),
    "a list": b"[]",
    "no version": b"{}",
    "newer version": file(lambda tree: tree.update(chargebench_job=2)),
    "version as text": file(lambda tree: tree.update(chargebench_job="1")),
    "nothing in it": b'{"chargebench_job": 1}',
    "unknown field": file(lambda tree: _nameplate(tree).update(chrage="85 g")),
    "unknown fields at the top": file(lambda tree: tree.update(comment="x", orders=[])),
    "ten levels too deep": file(lambda tree: _line(tree).update(end=_deep(10))),
    "hundred thousand levels deep": b'{"chargebench_job": ' + b"[" * 100_000,
    "number for text": file(lambda tree: _nameplate(tree).update(charge=85)),
    "not a number": file(lambda tree: _nameplate(tree).update(charge=float("nan"))),
    "nothing for text": file(lambda tree: _nameplate(tree).update(charge=None)),
    "yes for text": file(lambda tree: _nameplate(tree).update(charge=True)),
    "text for lines": file(lambda tree: _job(tree)["steps"][1]["typed"].update(lines="4312.5 g")),
    "lines for text": file(lambda tree: _nameplate(tree).update(charge=["85 g"])),
    "text for a line": file(
        lambda tree: _job(tree)["steps"][1]["typed"].update(lines=["4312.5 g"])
    ),
    "object for text": file(lambda tree: _nameplate(tree).update(charge={"g": "85"})),
    "reading without unit": file(lambda tree: _line(tree).update(end="4227.4")),
    "wrong kind of unit": file(lambda tree: _line(tree).update(end="42 psig")),
    "unknown refrigerant": file(lambda tree: _nameplate(tree).update(refrigerant="R299")),
    "choice that is none": file(lambda tree: _line(tree).update(arrangement="on the floor")),
    "field missing": file(lambda tree: _line(tree).pop("start")),
    "key twice": file().replace(b'"charge": "3.0 oz"}', b'"charge": "3 oz", "charge": "9 oz"}', 1),
    "control character": file(lambda tree: _job(tree).update(reason="a\u0000b")),
    "text turned around at a mark": file(lambda tree: _job(tree).update(reason="a\u200fb")),
    "text turned around": file(lambda tree: _job(tree).update(reason="gpj.\u202ecod")),
    "half a character": file().replace(b'"3.0 oz"', b'"3.0 oz\\ud800"'),
    "text too long": file(lambda tree: _job(tree).update(reason="x" * 5_000)),
    "too many lines": file(
        lambda tree: _job(tree)["steps"][1]["typed"].update(lines=[_line(tree)] * 501)
    ),
    "time without zone": file(lambda tree: _job(tree).update(opened_at="2026-03-04T08:00")),
    "time that is none": file(lambda tree: _job(tree)["steps"][0].update(happened_at=4)),
    "closed before opened": file(lambda tree: _job(tree).update(closed_at="2026-03-03T08:00Z")),
    "step before the job": file(
        lambda tree: _job(tree)["steps"][0].update(happened_at="2026-03-04T07:59-05:00")
    ),
    "step after the job": file(
        lambda tree: _job(tree)["steps"][0].update(happened_at="2026-03-04T13:01-05:00")
    ),
    "step twice": file(_again),
    "again the first time": file(lambda tree: _job(tree)["steps"][0].update(again="wet")),
    "step that is none": file(lambda tree: _job(tree)["steps"][0].update(step="defrost")),
    "step as a number": file(lambda tree: _job(tree)["steps"][0].update(step=3)),
    "act that is none": file(lambda tree: tree["stock"][0].update(act="sell")),
    "act without its text": file(lambda tree: tree["stock"][0].pop("typed")),
    "act with a wrong reading": file(lambda tree: tree["stock"][0]["typed"].update(mass="4 m")),
    "act with an unknown field": file(lambda tree: tree["stock"][0]["typed"].update(price="9")),
    "act at no time": file(lambda tree: tree["stock"][0].update(happened_at="today")),
    "neither typed nor not needed": file(lambda tree: _job(tree)["steps"][2].pop("not_needed")),
    "step with an unknown field": file(lambda tree: _job(tree)["steps"][0].update(note="x")),
    "job without its person": file(lambda tree: _job(tree).pop("by")),
    "job as text": file(lambda tree: tree.update(job="B-0142")),
    "steps as an object": file(lambda tree: _job(tree).update(steps={})),
    "cylinder without its row": file(lambda tree: tree["register"]["cylinder"].clear()),
    "equipment without its row": file(lambda tree: tree["register"]["equipment"].clear()),
    "site without its row": file(lambda tree: tree["register"]["site"].clear()),
    "person without a row": file(lambda tree: _job(tree).update(by="P-09")),
    "tick by nobody known": file(
        lambda tree: (
            _nameplate(tree)
            and _job(tree)["steps"][1]["typed"].update(
                ticks=[{"line": "earthed", "at": NOON, "by": "P-09"}]
            )
        )
    ),
    "row without an id": file(
        lambda tree: tree["register"]["site"].update({" ": {"name": "nowhere"}})
    ),
    "register that is none": file(lambda tree: tree["register"].update(van={})),
    "person as a number": file(lambda tree: _job(tree).update(by=1)),
    "register as text": file(lambda tree: tree.update(register="none")),
    "register as a list": file(lambda tree: tree["register"].update(site=[])),
    "thirty problems": file(
        lambda tree: _job(tree)["steps"][1]["typed"].update(
            lines=[_line(tree) | {"end": "4227.4"}] * 30
        )
    ),
    "50 MB": b'{"chargebench_job": 1, "about": "' + b"x" * 50_000_000 + b'"}',
    "just over the largest": b" " * (SIZE_MOST + 1),
}
