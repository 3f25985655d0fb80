"""Every way of writing a reading that the trade uses, and what it is understood as."""

from fractions import Fraction

import pytest

from chargebench.units import Kind, read

F = Fraction


@pytest.mark.parametrize(
    ("kind", "text", "value", "unit"),
    [
        (Kind.MASS, "3.9 oz", F(39, 10), "oz"),
        (Kind.MASS, "1 lb 2.5 oz", 1 + F(5, 2) / 16, "lb"),
        (Kind.MASS, "1lb2.5oz", 1 + F(5, 2) / 16, "lb"),
        (Kind.MASS, "2 lbs. 0 oz.", F(2), "lb"),
        (Kind.MASS, "0,11 kg", F(11, 100), "kg"),
        (Kind.MASS, "110 g", F(110), "g"),
        (Kind.MASS, "110g", F(110), "g"),
        (Kind.MASS, "  110\u00a0grams ", F(110), "g"),
        (Kind.MASS, "+110 g", F(110), "g"),
        (Kind.MASS, "0.25 tonne", F(1, 4), "t"),
        (Kind.MASS, ".5 kg", F(1, 2), "kg"),
        (Kind.MASS, ",5 kg", F(1, 2), "kg"),
        (Kind.MASS, "5. kg", F(5), "kg"),
        (Kind.MASS, "4 312.5 g", F(43125, 10), "g"),
        (Kind.MASS, "4\u202f312,5 g", F(43125, 10), "g"),
        (Kind.MASS, "0,110 kg", F(11, 100), "kg"),  # a leading zero is no thousands group
        (Kind.MASS, "1234,567 g", F(1_234_567, 1000), "g"),  # nor are four digits before it
        (Kind.SCALE, "-12.5 g", F(-25, 2), "g"),
        (Kind.SCALE, "\u221212,5 g", F(-25, 2), "g"),
        (Kind.SCALE, "-1 lb 2 oz", F(-9, 8), "lb"),
        (Kind.SCALE, "\u22121 lb 2 oz", F(-9, 8), "lb"),
        (Kind.SCALE, "9 lb 8.1 oz", 9 + F(81, 10) / 16, "lb"),
        (Kind.TEMPERATURE, "-12.5 °C", F(-25, 2), "°C"),
        (Kind.TEMPERATURE, "9 F", F(9), "°F"),
        (Kind.TEMPERATURE, "9 deg F", F(9), "°F"),
        (Kind.TEMPERATURE, "293.15 K", F(29315, 100), "K"),
        (Kind.DIFFERENCE, "9 F", F(9), "°F"),
        (Kind.DIFFERENCE, "-3 °C", F(-3), "K"),
        (Kind.LENGTH, "1/4 in", F(1, 4), "in"),
        (Kind.LENGTH, "3/16 inch", F(3, 16), "in"),
        (Kind.LENGTH, "6 ft 3 in", F(25, 4), "ft"),
        (Kind.LENGTH, "6' 3\"", F(25, 4), "ft"),
        (Kind.LENGTH, "4.8 mm", F(24, 5), "mm"),
        (Kind.AREA, "24 m2", F(24), "m²"),
        (Kind.AREA, "24 m²", F(24), "m²"),
        (Kind.AREA, "260 sq ft", F(260), "ft²"),
        (Kind.VOLUME, "16,5 cc", F(33, 2), "mL"),
        (Kind.VOLUME, "2 m3", F(2), "m³"),
        (Kind.DURATION, "1 h 30 min", F(3, 2), "h"),
        (Kind.DURATION, "1 d 6 h 36 min", F(51, 40), "d"),
        (Kind.DURATION, "90 s", F(90), "s"),
        (Kind.PERCENT, "35 per cent", F(35), "%"),
        (Kind.MASS_RATE, "3 g/yr", F(3), "g/yr"),
        (Kind.CURRENT, "4.2 A", F(21, 5), "A"),
        (Kind.NUMBER, "2,5", F(5, 2), ""),
    ],
)
def test_that_a_form_of_the_trade_is_understood(
    kind: Kind, text: str, value: Fraction, unit: str
) -> None:
    reading = read(kind, text)
    assert (reading.value, reading.unit, reading.text) == (value, unit, text.strip())


@pytest.mark.parametrize(
    ("text", "value", "unit", "gauge"),
    [
        ("68 psig", 68, "psig", True),
        ("68 PSI (g)", 68, "psig", True),
        ("-10 inHg", -10, "inHg", True),
        ("10 inHg vac", -10, "inHg", True),  # the trade names the vacuum, not the sign
        ('10 "Hg vac', -10, "inHg", True),
        ("0 inHg", 0, "inHg", True),
        ("29.92 inHg(a)", F(2992, 100), "inHg(a)", False),
        ("4.7 bar(g)", F(47, 10), "bar(g)", True),
        ("4.7 barg", F(47, 10), "bar(g)", True),
        ("101.3 kPa(a)", F(1013, 10), "kPa(a)", False),
        ("500 micron", 500, "micron", False),
        ("500 microns", 500, "micron", False),
        ("500 µmHg", 500, "micron", False),
        ("500 mTorr", 500, "micron", False),
        ("66 Pa", 66, "Pa", False),
        ("0,5 Torr", F(1, 2), "Torr", False),
        ("14.7 psia", F(147, 10), "psia", False),
        ("1 atm", 1, "atm", False),
    ],
)
def test_that_a_pressure_is_told_gauge_or_absolute(
    text: str, value: Fraction, unit: str, gauge: bool
) -> None:
    reading = read(Kind.PRESSURE, text)
    assert (reading.value, reading.unit, reading.gauge) == (value, unit, gauge)


def test_that_a_bare_number_takes_the_unit_of_its_place() -> None:
    assert read(Kind.PRESSURE, "420", "micron") == read(Kind.PRESSURE, "420", "micron")
    assert read(Kind.PRESSURE, "420", "micron").unit == "micron"
    assert read(Kind.PRESSURE, "420 Pa", "micron").unit == "Pa"


@pytest.mark.parametrize("text", ["0 K", "-273.15 °C", "-459.67 °F"])
def test_that_absolute_zero_is_still_a_temperature(text: str) -> None:
    # NIST SP 811, B.8: t/°C = T/K - 273.15, t/°F = 1.8 T/K - 459.67.
    assert read(Kind.TEMPERATURE, text).quantity.m_as("kelvin") == pytest.approx(0, abs=1e-9)
