"""What a shop that works in IP units is told: no sentence, reason or flag speaks in SI."""

import re
from collections.abc import Iterator
from typing import Any

import pytest

from chargebench import flags, steps
from chargebench.steps import STOCK, Case, answer, beside, stock
from chargebench.steps.stock import Shelf
from tests.steps.cases import case, row, rule_set_of

# A number and a unit of SI; leaks of nitrogen are spoken of in mbar L/s everywhere.
METRIC = re.compile(
    r"[\d.\u202f]+\s(?:K|°C|k?Pa(?:/min)?|bar|kg|g|g/yr|kg/yr|mL|L|mm|m)(?![\w/ ]*L/s)\b"
)
IMPERIAL = re.compile(r"[\d.\u202f]+\s(?:°F|psi|psia|psig|lb|oz|oz/yr|micron/min)\b")

READINGS = {
    "tapped": "no",
    "suction_pressure": "2 psig",
    "suction_line": "45 F",
    "discharge_pressure": "150 psig",
    "liquid_line": "80 F",
    "ambient": "75 F",
    "box": "30 F",
    "set_point": "10 F",
    "drier_in": "90 F",
    "drier_out": "80 F",
    "frost": "only at the inlet",
}
WEIGHED = {
    "cylinder": "C-014",
    "scale": "S-5",
    "arrangement": "cylinder on the scale",
    "start": "9 lb",
    "end": "8 lb 11 oz",
    "drawn_as": "liquid",
    "hose_state": "saturated vapour",
    "hose_length": "36 in",
    "hose_bore": "3/16 in",
}
ANSWERS: dict[str, Any] = {
    "nameplate": {"refrigerant": "R290", "charge": "3.5 oz", "last_known_full": "2025-03-01"},
    "as_found": READINGS,
    "as_left": READINGS | {"suction_line": "20 F"},
    "support": {"figures": [{"reading": "superheat", "expected": "8 F", "tolerance": "2 F"}]},
    "leak_search": {
        "method": "electronic detector",
        "detector": "D-1",
        "checked_before": "yes",
        "checked_after": "yes",
        "system_pressure": "10 psig",
    },
    "pressure_test": {
        "start_pressure": "150 psig",
        "start_temperature": "70 F",
        "hold": "30 min",
        "end_pressure": "140 psig",
        "end_temperature": "70 F",
        "leak_wanted": "0.2 oz/yr",
    },
    "recovery": {
        "how": "recovered",
        "lines": [{"cylinder": "C-015", "scale": "S-1", "before": "20 lb", "after": "20 lb 2 oz"}],
    },
    "evacuation": {
        "pulled_to": "900 micron",
        "decay": [{"at": f"{at} min", "reading": f"{900 + 70 * at} micron"} for at in range(26)],
    },
    "weigh_in": {"kind": "into an evacuated system", "lines": [WEIGHED]},
    "follow_up": {"what": "charge"},
}


def given(units: str) -> Case:
    signed = tuple(key for key in ANSWERS if key not in ("support", "follow_up"))
    return case(ANSWERS, signed=signed, equipment={"charge": "3.5 oz"}, units=units)


def told(of: Case, step: str) -> Iterator[str]:
    """Every text a step is worked out to and raises."""
    worked = steps.work_out(of, step)
    yield from worked.sentences
    for figure in worked.figures:
        if isinstance(figure.value, str) and figure.key != "smallest-leak":
            yield figure.value
    tables = list(worked.tables)
    if step in ("as_found", "as_left") and (found := beside.table(of, step, ())):
        tables.append(found)
    for table in tables:
        yield table.says
        for line in table.rows:
            yield from (text for cell in line for text in (cell.value, cell.why) if text is not None
                        if isinstance(text, str))  # fmt: skip
    for flag in flags.of_step(of, step, worked):
        yield from (flag.says, flag.figure, flag.limit)


@pytest.mark.parametrize("step", list(ANSWERS))
def test_that_an_ip_shop_is_told_in_ip_units(step: str) -> None:
    assert [text for text in told(given("IP"), step) if METRIC.search(text)] == []


@pytest.mark.parametrize(
    "step", ["as_found", "leak_search", "pressure_test", "recovery", "evacuation", "weigh_in"]
)
def test_that_the_same_figures_are_told_in_either_system(step: str) -> None:
    imperial, metric = (" ".join(told(given(units), step)) for units in ("IP", "SI"))
    assert IMPERIAL.search(imperial)
    assert METRIC.search(metric)
    assert len(list(told(given("IP"), step))) == len(list(told(given("SI"), step)))


def test_that_a_superheat_is_told_as_a_difference_and_not_as_a_temperature() -> None:
    # 14 K are 25.2 °F of difference (9/5); the usual 3 to 12 K are 5.4 to 21.6 °F.
    surfaces = {"tapped": "no", "evaporator_inlet": "-26 °C", "suction_line": "-12 °C"}
    of = case({"as_found": surfaces}, units="IP")
    (reason, *_) = steps.work_out(of, "as_found").result.evidence
    assert reason.reading.startswith("superheat 25.2 °F, usual (usual 5.4 to 21.6 °F")


def test_that_stock_work_is_told_in_the_shops_units() -> None:
    act = {"cylinder": "C-014", "scale": "S-1", "gross": "10 lb"}
    shelf = Shelf(
        cylinders={"C-014": row("cylinder", {"refrigerant": "R290", "contents": "new",
                                             "refillable": "yes", "tare": "8 lb"})},
        contents_mg={"C-014": {"R290": 400_000}},
        instruments={},
        rule_set=rule_set_of("us-federal"),
        units="IP",
    )  # fmt: skip
    answers = answer(STOCK["weigh"], act)
    worked = stock.work_out("weigh", answers, shelf)
    assert worked.sentences == ("C-014 holds 2.00 lb; the ledger has 14.11 oz.",)
    (flag,) = flags.of_stock("weigh", answers, shelf, worked)
    assert not METRIC.search(flag.says)
