"""Flags of nameplate, readings and weigh-in: raised past their limit, silent up to it."""

from typing import Any

import pytest

from chargebench.steps import Case, Typed
from tests.flags import raised
from tests.steps.cases import case

HOUSEHOLD = {"cabinet": "household refrigerator or freezer", "refrigerant": "R600a"}
LINE = {
    "cylinder": "C-014",
    "scale": "S-1",
    "arrangement": "cylinder on the scale",
    "start": "4312.5 g",
    "end": "4212.5 g",
    "hose_state": "no hose, closed at the equipment",
}


def charged(
    line: dict[str, str] | None = None, *, kind: str = "into an evacuated system", **more: Any
) -> Case:
    typed: Typed = {"kind": kind, "lines": [LINE | (line or {})]}
    return case({"weigh_in": typed}, **more)


# SNAP, rule of 2018: household refrigerators hold up to 150 g of R600a.
def test_that_a_nameplate_over_its_limit_is_flagged_from_the_next_gram() -> None:
    at, over = (
        case({"nameplate": {"charge": charge}}, equipment=HOUSEHOLD)
        for charge in ("150 g", "151 g")
    )
    assert "over-charge-limit" not in raised.by_step(at, "nameplate")
    flag = raised.by_step(over, "nameplate")["over-charge-limit"]
    assert flag.level == "stop"
    assert flag.says == (
        "Nameplate 151.0 g is over the charge limit of 150.0 g (SNAP listing of 2018, household) "
        "by 1.0 g. Check nameplate and type; local codes decide."
    )
    assert (flag.figure, flag.limit, flag.about) == ("151.0 g", "150.0 g", "step:nameplate")
    assert (flag.source, flag.mark) == ("SNAP, 2018 rule", "SEEN")


# IEC 60335-2-89:2019: 13 m³ of the lower limit, 38 g/m³ for R290 (ISO 817, from memory): 494 g.
@pytest.mark.parametrize(("charge", "over"), [("494 g", False), ("0.494 kg", False),
                                              ("495 g", True)])  # fmt: skip
def test_that_a_limit_met_exactly_as_typed_is_met(charge: str, over: bool) -> None:
    given = case({"nameplate": {"charge": charge}}, rule_set="generic")
    assert ("over-charge-limit" in raised.by_step(given, "nameplate")) is over


def test_that_a_limit_from_memory_says_so() -> None:
    ice = {"cabinet": "ice machine"}  # its later listing was not read
    given = case({"nameplate": {"charge": "151 g"}}, equipment=ice)
    assert raised.by_step(given, "nameplate")["over-charge-limit"].mark == "MEMORY"


def test_that_a_nameplate_unlike_its_register_is_flagged() -> None:
    differs = case({"nameplate": {"refrigerant": "R600a"}})
    flag = raised.by_step(differs, "nameplate")["nameplate-differs"]
    assert flag.says.startswith("The nameplate says R600a, the register R290.")
    assert (flag.level, flag.figure, flag.limit) == ("check", "R600a", "R290")
    assert raised.by_step(case({"nameplate": {"refrigerant": "R290"}}), "nameplate") == {}


@pytest.mark.parametrize("step", ["as_found", "as_left"])
def test_that_another_refrigerant_in_the_system_is_flagged(step: str) -> None:
    wrong = case({step: {"refrigerant_found": "R134a"}})
    flag = raised.by_step(wrong, step)["wrong-refrigerant"]
    assert flag.says.startswith("R134a where the nameplate says R290. Do not charge; recover it")
    assert (flag.level, flag.about, flag.source) == ("stop", f"step:{step}", "40CFR82F")
    assert raised.by_step(case({step: {"refrigerant_found": "R290"}}), step) == {}
    nameless = case({step: {"refrigerant_found": "R134a"}}, equipment={"refrigerant": ""})
    assert raised.by_step(nameless, step) == {}


# Tolerance of 100 g of A3: 2 g (common practice). Scale of 0.1 g: U = 0.1 g when shown.
def test_that_over_nameplate_says_by_how_much_and_how_sure() -> None:
    assert raised.by_step(charged({"end": "4210.6 g"}), "weigh_in") == {}  # 101.9 g
    flag = raised.by_step(charged({"end": "4208.5 g"}), "weigh_in")["over-nameplate"]
    assert flag.level == "stop"
    assert flag.says == (
        "Over nameplate by 4.0 g (±0.1 g): 104.0 g in, nameplate 100.0 g, tolerance 2.0 g. "
        "Recover and weigh in again; do not leave overcharged."
    )
    assert (flag.figure, flag.limit) == ("104.0 g", "100.0 g")
    assert (flag.source, flag.mark) == ("COMMON, Critical charge of hydrocarbon", "MEMORY")


def test_that_under_nameplate_asks_for_the_rest() -> None:
    flag = raised.by_step(charged({"end": "4217.5 g"}), "weigh_in")["under-nameplate"]
    assert flag.says == ("Under nameplate by 5.0 g (±0.1 g): 95.0 g of 100.0 g. Weigh in the rest.")
    assert flag.level == "check"


def test_that_a_scale_too_coarse_names_one_that_would_do() -> None:
    flag = raised.by_step(charged({"scale": "S-5"}), "weigh_in")["scale-too-coarse"]
    # U = 2 x 5 / sqrt(6) = 4.1 g; to hold 0 against 2 g, d = 2 sqrt(6) / 2 = 2.4 g.
    assert flag.says == (
        "Scale too coarse to tell: 0.0 g (±4.1 g) against a tolerance of 2.0 g. Use a finer "
        "scale. 2.4 g would do."
    )
    assert flag.level == "check"


def test_that_no_finer_scale_is_promised_where_the_spread_is_the_doubt() -> None:
    spread: dict[str, Any] = {
        "S-1": {"kind": "scale", "name": "S", "resolution": "1 g", "repeatability": "3 g"}
    }
    flag = raised.by_step(charged(instruments=spread), "weigh_in")["scale-too-coarse"]
    assert flag.says.endswith("Use a finer scale.")


def test_that_a_makers_tolerance_goes_before_the_default() -> None:
    plate: dict[str, Any] = {"equipment": {"tolerance": "5 g"}}
    assert raised.by_step(charged({"end": "4208.5 g"}, **plate), "weigh_in") == {}
    flag = raised.by_step(charged({"end": "4206.5 g"}, **plate), "weigh_in")["over-nameplate"]
    assert flag.source == "COMMON, the maker's tolerance as typed"


def test_that_a_charge_over_the_limit_is_flagged_whatever_the_nameplate() -> None:
    big: dict[str, Any] = {
        "equipment": HOUSEHOLD | {"charge": "150 g"},
        "cylinders": {"C-014": {"refrigerant": "R600a", "contents": "new", "refillable": "yes"}},
    }
    # In floats 256.1 - 106.1 is a hair more than 150.
    at = charged({"arrangement": "zeroed display", "start": "256.1 g", "end": "106.1 g"}, **big)
    assert raised.by_step(at, "weigh_in") == {}
    over = raised.by_step(charged({"start": "4300.6 g", "end": "4145.6 g"}, **big), "weigh_in")
    flag = over["charge-over-limit"]
    assert flag.says.startswith("155.0 g in it is over the charge limit of 150.0 g (SNAP")
    assert flag.says.endswith("Recover down to the nameplate.")
    assert (flag.level, flag.mark) == ("stop", "SEEN")


def test_that_topping_up_a_sealed_system_is_flagged() -> None:
    topped: dict[str, Any] = {"kind": "part of a charge"}
    assert raised.by_step(charged(**topped), "weigh_in")["topped-up-sealed"].level == "check"
    open_drive: dict[str, Any] = {"equipment": {"factory_sealed": "no"}}
    assert raised.by_step(charged(**topped, **open_drive), "weigh_in") == {}
    assert "topped-up-sealed" not in raised.by_step(charged(), "weigh_in")


@pytest.mark.parametrize(
    ("row", "what"),
    [
        ({"refrigerant": "R600a", "contents": "new"}, "R600a"),
        ({"refrigerant": "R290", "contents": "mixed waste"}, "a mixture with R290"),
    ],
)
def test_that_charging_from_the_wrong_cylinder_is_flagged(row: dict[str, str], what: str) -> None:
    given = charged(cylinders={"C-014": row | {"refillable": "yes"}})
    flag = raised.by_step(given, "weigh_in")["wrong-refrigerant"]
    assert flag.says.startswith(f"{what} where the nameplate says R290.")
    assert (flag.level, flag.about) == ("stop", "cylinder:C-014")


def test_that_an_unknown_cylinder_raises_nothing_while_it_is_typed() -> None:
    assert raised.by_step(charged({"cylinder": "C-0"}), "weigh_in") == {}
    assert raised.by_step(case({"weigh_in": {"kind": "part of a charge"}}), "weigh_in") == {}


# Regulation (EU) 2024/573, Art. 13(3): virgin refrigerant of GWP 2500 and more; R404A 3921.6.
def test_that_virgin_of_high_gwp_is_flagged_where_the_rules_ban_it() -> None:
    typed: Typed = {
        "kind": "into an evacuated system", "origin": "virgin", "lines": [LINE]
    }  # fmt: skip
    plate = {"nameplate": {"refrigerant": "R404A", "charge": "100 g"}, "weigh_in": typed}
    flag = raised.by_step(case(plate, rule_set="eu-2024-573"), "weigh_in")["service-ban"]
    assert flag.level == "stop"
    assert flag.says.startswith("Servicing with this refrigerant of GWP 3921.6 is banned from 2500")
    assert "since 2025-01-01" in flag.says
    assert flag.source.startswith("EU2024/573")
    reclaimed = plate | {"weigh_in": {**typed, "origin": "reclaimed"}}
    assert "service-ban" not in raised.by_step(case(reclaimed, rule_set="eu-2024-573"), "weigh_in")
