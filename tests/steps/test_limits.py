"""Limits of a charge in its room and by climate, as the nameplate shows them."""

import pytest

from chargebench.steps import work_out
from chargebench.steps.case import Case
from chargebench.steps.limits import service_ban
from tests.steps.cases import case

EU = "eu-2024-573"
ROOM = {"room_area": "24 m²", "room_height": "2.5 m"}


def plate(refrigerant: str, charge: str, **more: str) -> Case:
    """A case of a nameplate under the EU set; what is not of the nameplate is of the register."""
    equipment = {key: text for key, text in more.items() if key not in ROOM}
    room = {key: text for key, text in more.items() if key in ROOM}
    return case(
        {"nameplate": {"refrigerant": refrigerant, "charge": charge, **room}},
        equipment={"refrigerant": refrigerant, "charge": charge, **equipment},
        rule_set=EU,
    )


def shown(of: Case) -> dict[str, object]:
    return {each.key: each.value for each in work_out(of, "nameplate").figures}


# Regulation (EU) 2024/573, Art. 5 and annexes I and VI: 3921.6, 1430 by mass; 5 t, hermetic 10 t.
@pytest.mark.parametrize(
    ("refrigerant", "charge", "hermetic", "tonnes", "every"),
    [
        ("R404A", "1.275 kg", "no", "5.00 t", "12 month"),
        ("R404A", "1.27 kg", "no", "4.98 t", "none owed"),
        ("R134a", "7 kg", "yes", "10.01 t", "12 month"),
        ("R134a", "3 kg", "yes", "4.29 t", "none owed"),
        ("R290", "85 g", "no", "0.00 t", "none owed"),
    ],
)
def test_that_co2_equivalent_and_leak_check_are_shown(
    refrigerant: str, charge: str, hermetic: str, tonnes: str, every: str
) -> None:
    figures = shown(plate(refrigerant, charge, hermetic_labelled=hermetic))
    assert (figures["co2e"], figures["leak-check"]) == (tonnes, every)


def test_that_a_detection_system_doubles_the_interval() -> None:
    figures = shown(plate("R404A", "1.275 kg", leak_detection="yes"))
    assert figures["leak-check"] == "24 month"


def test_that_a_full_release_is_held_against_room_and_floor() -> None:
    # 24 m² x 2.5 m: 300 g in 60 m³ are 5 g/m³, 13.16 % of 0.038 kg/m³; m1 = 4 x 0.038 = 152 g.
    figures = {
        each.key: each for each in work_out(plate("R290", "300 g", **ROOM), "nameplate").figures
    }
    assert figures["share-of-lfl"].value.m_as("percent") == pytest.approx(13.158, abs=0.001)  # type: ignore[union-attr]
    assert figures["practical-limit"].value.m_as("g/m**3") == pytest.approx(5)  # type: ignore[union-attr]
    # 2.5 x 0.038**1.25 x 0.6 x sqrt(24) = 123.3 g (IEC 60335-2-40 annex GG).
    assert figures["floor-area"].limit.m_as("g") == pytest.approx(123.3, abs=0.2)  # type: ignore[union-attr]


@pytest.mark.parametrize("room", [{}, {"room_area": "24 m²"}, ROOM | {"room_height": "0 m"}])
def test_that_without_a_room_nothing_is_said_of_it(room: dict[str, str]) -> None:
    assert "share-of-lfl" not in shown(plate("R290", "300 g", **room))


def test_that_a_small_charge_asks_no_floor_area() -> None:
    assert "floor-area" not in shown(plate("R290", "85 g", **ROOM))


# Art. 13(3), (4): virgin refrigerant of GWP 2500 and more, refrigeration since 1 January 2025.
@pytest.mark.parametrize(
    ("refrigerant", "origin", "banned"),
    [("R404A", "virgin", True), ("R404A", "reclaimed", False), ("R134a", "virgin", False)],
)
def test_that_a_service_ban_holds_for_virgin_of_high_gwp(
    refrigerant: str, origin: str, banned: bool
) -> None:
    of = case(
        {
            "nameplate": {"refrigerant": refrigerant, "charge": "1.2 kg"},
            "weigh_in": {"origin": origin},
        },
        equipment={"refrigerant": refrigerant, "category": "commercial refrigeration"},
        rule_set=EU,
    )
    assert (service_ban(of) is not None) is banned


def test_that_without_an_origin_or_climate_rules_no_ban_is_claimed() -> None:
    assert service_ban(plate("R404A", "1.2 kg")) is None
    assert service_ban(case({"weigh_in": {"origin": "virgin"}})) is None
