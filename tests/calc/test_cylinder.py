"""Fill limits, tare loss and requalification at their boundaries."""

from datetime import date

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench import rules
from chargebench.calc.cylinder import (
    FillLimit,
    fill_limit,
    gross_limit,
    requalification_state,
    room_left,
    tare_loss,
    weighing_tolerance,
)
from chargebench.errors import ChargebenchError
from chargebench.fluids import saturation
from chargebench.rules import Cylinders
from chargebench.units import Q, Quantity
from tests.outside.rows import label, rows

RATIOS = rows("cylinder_ratios")
CAPACITIES = st.floats(0.1, 1000)
DENSITIES = st.floats(300, 1500)


def cylinders(name: str = "us-federal") -> Cylinders:
    return rules.load(name).cylinder


def density(value: float | None) -> Quantity | None:
    return None if value is None else Q(value, "kg/m**3")


def limit(
    capacity: Quantity,
    at_25: float | None,
    hot: float | None,
    *,
    name: str = "us-federal",
    refrigerant: str = "",
) -> FillLimit:
    return fill_limit(
        water_capacity=capacity,
        refrigerant_liquid_density_25C=density(at_25),
        liquid_density_hot=density(hot),
        rule=cylinders(name),
        refrigerant=refrigerant,
    )


# acservicetech.com: 65.6 lb gross allowed, 47.6 lb now, 18.0 lb left; its own limit has no
# density, as if the relative density were 1.
def test_that_the_room_left_is_the_limit_less_the_content() -> None:
    found = limit(Q(47.6, "lb"), 997.05, 997.05)
    assert gross_limit(tare=Q(27.5, "lb"), limit=found).m_as("lb") == pytest.approx(65.6, abs=0.05)
    left = room_left(limit=found, content=Q(47.6 - 27.5, "lb"))
    assert left.m_as("lb") == pytest.approx(18.0, abs=0.05)
    assert room_left(limit=found, content=Q(40, "lb")).m_as("lb") == pytest.approx(-1.9, abs=0.05)


# 0.8 x 26.2 lb x 0.494 by hand; the published relative density of R290 is 0.494 at 77 °F.
def test_that_a_cylinder_of_r290_holds_less_than_half_its_water() -> None:
    found = limit(Q(26.2, "lb"), 0.494 * 997.05, 440, refrigerant="R290")
    assert found.mass.m_as("lb") == pytest.approx(10.35, abs=0.01)
    assert found.by == "80 % at 25 °C"
    assert found.printed is not None
    # 49 CFR 173.304a(d): 42 % of the water for a gas of this specific gravity.
    assert found.printed.m_as("lb") == pytest.approx(0.42 * 26.2)


# Liquid share of the volume at 130 °F after 80 % at 77 °F: R125 99.9 %, R22 89.9 %; over 100 % the
# hot limit is the lower one.
@pytest.mark.parametrize(
    ("at_25", "hot", "by", "kilograms"),
    [
        (1190, 1059, "80 % at 25 °C", 9.52),
        (1190, 953, "80 % at 25 °C", 9.52),
        (1190, 952, "80 % at 25 °C", 9.52),
        (1190, 951, "liquid full at hot temperature", 9.51),
        (1190, 900, "liquid full at hot temperature", 9.00),
    ],
)
def test_that_the_lower_limit_counts(at_25: float, hot: float, by: str, kilograms: float) -> None:
    found = limit(Q(10, "L"), at_25, hot)
    assert found.by == by
    assert found.mass.m_as("kg") == pytest.approx(kilograms, rel=1e-9)
    assert found.at_reference is not None
    assert found.at_hot is not None
    assert found.printed is None
    assert found.hot_temperature.text == "130 degF"


# Figures in 49 CFR 173.304a(a)(2): carbon dioxide 68, ammonia 54, R22 105 % of the water.
@pytest.mark.parametrize(
    ("refrigerant", "percent"), [("R744", 68), ("R717", 54), ("R22", 105), ("R12", 119)]
)
def test_that_a_printed_ratio_is_a_limit_of_its_own(refrigerant: str, percent: float) -> None:
    found = limit(Q(10, "kg"), None, None, refrigerant=refrigerant)
    assert found.by == "printed filling ratio"
    assert found.mass.m_as("kg") == pytest.approx(percent / 10)


@pytest.mark.parametrize(("at_25", "hot"), [(None, None), (700, None), (None, 500)])
def test_that_a_gas_without_liquid_and_without_ratio_is_refused(
    at_25: float | None, hot: float | None
) -> None:
    with pytest.raises(ChargebenchError) as refused:
        limit(Q(10, "L"), at_25, hot, refrigerant="R508B")
    assert str(refused.value) == (
        "R508B has no liquid at 130 degF; expected a filling ratio in the rule set. "
        "Fill by the ratio stamped on the cylinder."
    )


def european(name: str) -> FillLimit:
    rule = cylinders("eu-2024-573")
    curve = saturation(name)
    return fill_limit(
        water_capacity=Q(1, "L"),
        refrigerant_liquid_density_25C=curve.liquid_density(rule.fill_temperature.quantity),
        liquid_density_hot=curve.liquid_density(rule.hot_temperature.quantity),
        rule=rule,
    )


# ADR packing instruction P200, table 2, from memory, printed to 0.01 kg/L.
@pytest.mark.parametrize("row", RATIOS, ids=[label(row) for row in RATIOS])
def test_that_the_european_limit_never_exceeds_the_filling_ratio(row: dict[str, str]) -> None:
    assert european(row["refrigerant"]).mass.m_as("kg") <= float(row["expected"]) + 0.01


# Where the printed ratio is the 60 °C half of its rule, the hot limit is that ratio.
@pytest.mark.parametrize(
    ("refrigerant", "ratio"), [("R32", 0.78), ("R404A", 0.82), ("R407A", 0.94), ("R407C", 0.95)]
)
def test_that_the_european_hot_limit_is_the_filling_ratio(refrigerant: str, ratio: float) -> None:
    at_hot = european(refrigerant).at_hot
    assert at_hot is not None
    assert at_hot.m_as("kg") == pytest.approx(ratio, abs=0.01)


# 0.80 x water x relative density at 77 °F, with the densities of table "SG(77 F)" by CoolProp.
@pytest.mark.parametrize(
    ("refrigerant", "relative"), [("R134a", 1.210), ("R290", 0.494), ("R600a", 0.552)]
)
def test_that_stored_densities_give_the_relative_density(refrigerant: str, relative: float) -> None:
    rule = cylinders()
    at_25 = saturation(refrigerant).liquid_density(rule.fill_temperature.quantity)
    found = limit(Q(100, "kg"), at_25.m_as("kg/m**3"), 5000)
    assert found.mass.m_as("kg") == pytest.approx(80 * relative, rel=0.003)


@pytest.mark.parametrize("capacity", [Q(0, "L"), Q(-1, "kg")])
def test_that_a_cylinder_holds_something(capacity: Quantity) -> None:
    with pytest.raises(ChargebenchError, match="water capacity above zero"):
        limit(capacity, 1000, 900)


def test_that_a_capacity_is_a_mass_or_a_volume() -> None:
    with pytest.raises(ChargebenchError, match="as a mass of water or a volume"):
        limit(Q(1, "m"), 1000, 900)
    with pytest.raises(pint.DimensionalityError):
        fill_limit(
            water_capacity=Q(1, "L"),
            refrigerant_liquid_density_25C=Q(1, "kg"),
            liquid_density_hot=None,
            rule=cylinders(),
        )


@given(CAPACITIES, DENSITIES, DENSITIES)
def test_that_the_limit_is_the_same_in_any_unit(pounds: float, at_25: float, hot: float) -> None:
    in_pounds = limit(Q(pounds, "lb"), at_25, hot)
    litres = Q(pounds, "lb").to("kg") / Q(997.05, "kg/m**3")
    in_litres = limit(litres.to("L"), at_25, hot)
    assert in_litres.mass.m_as("g") == pytest.approx(in_pounds.mass.m_as("g"), rel=1e-12)


@given(CAPACITIES, DENSITIES, DENSITIES)
def test_that_the_limit_never_exceeds_either(litres: float, at_25: float, hot: float) -> None:
    kilograms = limit(Q(litres, "L"), at_25, hot).mass.m_as("kg")
    assert kilograms <= 0.8 * litres * at_25 / 1000 * (1 + 1e-12)
    assert kilograms <= litres * hot / 1000 * (1 + 1e-12)


# 49 CFR 180.209(c): 5 % or more of the stamped tare lost; 25.0 lb stamped, 23.7 found is 5.2 %.
@pytest.mark.parametrize(
    ("found", "percent", "blocks"),
    [
        (23.7, 5.2, True),
        (23.75, 5.0, True),
        (23.76, 4.96, False),
        (25.0, 0, False),
        (25.5, -2, False),
    ],
)
def test_that_five_per_cent_of_tare_lost_blocks(
    found: float, percent: float, *, blocks: bool
) -> None:
    loss = tare_loss(stamped=Q(25, "lb"), found=Q(found, "lb").to("kg"), rule=cylinders())
    assert loss.share.m_as("percent") == pytest.approx(percent, abs=1e-6)
    assert loss.blocks_filling is blocks


def test_that_a_tare_of_zero_is_refused() -> None:
    with pytest.raises(ChargebenchError, match="stamped tare above zero"):
        tare_loss(stamped=Q(0, "kg"), found=Q(1, "kg"), rule=cylinders())


# 49 CFR 180.205(c): not filled after the due date, filled before it may be used up.
@pytest.mark.parametrize(
    ("on", "word", "may", "left"),
    [
        (date(2028, 5, 31), "current", True, 30),
        (date(2027, 6, 15), "current", True, 381),
        (date(2028, 6, 1), "due this month", True, 29),
        (date(2028, 6, 30), "due this month", True, 0),
        (date(2028, 7, 1), "overdue", False, -1),
    ],
)
def test_that_requalification_is_due_by_its_day(
    on: date, word: str, left: int, *, may: bool
) -> None:
    state = requalification_state(date(2028, 6, 30), on)
    assert (state.word, state.may_be_filled, state.days_left) == (word, may, left)


# By hand: 20 g of 400 g are 5 %.
def test_that_a_small_cylinder_loses_its_share_alike() -> None:
    found = tare_loss(stamped=Q(400, "g"), found=Q(380, "g"), rule=cylinders())
    assert found.share.m_as("percent") == pytest.approx(5)
    assert found.blocks_filling


def test_that_a_cylinder_of_unknown_date_is_not_filled() -> None:
    state = requalification_state(None, date(2028, 6, 30))
    assert (state.word, state.may_be_filled, state.days_left) == ("unknown", False, None)


# hvaclaboratory.com: a field scale is within 0.5 % of its reading; the least is our own figure.
@pytest.mark.parametrize(("gross", "grams"), [(10_000, 50), (100, 3), (600, 3), (601, 3.005)])
def test_that_a_weighing_differs_by_the_scale(gross: float, grams: float) -> None:
    allowed = weighing_tolerance(gross=Q(gross, "g").to("lb"), rule=cylinders())
    assert allowed.m_as("g") == pytest.approx(grams)
