"""Text that is not one unambiguous reading, and what the refusal says was expected."""

import pytest

from chargebench.errors import ReadingRefused
from chargebench.units import Kind, Q, absolute, air_pressure_at, read


@pytest.mark.parametrize(
    ("kind", "text", "says"),
    [
        (Kind.MASS, "1,234 g", "“1,234 g” could be 1234 or 1.234; write it without a comma."),
        (Kind.MASS, "12,345 g", "“12,345 g” could be 12345 or 12.345; write it without a comma."),
        (
            Kind.MASS,
            "1.234,5 g",
            (
                "Expected one decimal mark in “1.234,5 g”; write 1234.5 or 1234,5, "
                "without marks between thousands."
            ),
        ),
        (
            Kind.MASS,
            "12 34 g",
            "Expected one number in “12 34 g”; spaces may only part thousands, as in 4 312.5.",
        ),
        (
            Kind.MASS,
            "1 lb 16 oz",
            "Expected less than one lb in the oz of “1 lb 16 oz”.",
        ),
        (
            Kind.DURATION,
            "1 h 60 min",
            "Expected less than one h in the min of “1 h 60 min”.",
        ),
        (
            Kind.LENGTH,
            "1/3 in",
            (
                "Expected a length, such as 36 in, 1/4 in or 1.5 m; fractions are read only "
                "for lengths, in halves to 64ths of an inch."
            ),
        ),
        (
            Kind.MASS,
            "1/4 lb",
            (
                "Expected a mass, such as 3.9 oz, 1 lb 2.5 oz or 110 g; fractions are read only "
                "for lengths, in halves to 64ths of an inch."
            ),
        ),
        (
            Kind.PRESSURE,
            "10 inHg",
            (
                "“10 inHg” may be a vacuum or an absolute pressure; write -10 inHg or 10 inHg vac "
                "for a vacuum, 10 inHg(a) for absolute."
            ),
        ),
        (
            Kind.PRESSURE,
            "4.7 bar",
            "“bar” may be gauge or absolute; write bar(g) as read on a gauge, or bar(a).",
        ),
        (
            Kind.PRESSURE,
            "68 psi",
            "“psi” may be gauge or absolute; write psig as read on a gauge, or psia.",
        ),
        (
            Kind.PRESSURE,
            "-5 micron",
            "An absolute pressure can not be negative; got “-5 micron”.",
        ),
        (
            Kind.PRESSURE,
            "500",
            (
                "Expected a pressure with its unit, such as 68 psig, 4.7 bar(g), -10 inHg, 500 "
                "micron or 66 Pa; got only “500”."
            ),
        ),
        (
            Kind.TEMPERATURE,
            "-300 °C",
            (
                "“-300 °C” is outside what a temperature here can be (0 to 1500 K); check the unit "
                "and decimal mark."
            ),
        ),
        (
            Kind.AREA,
            "12 psi",
            "Expected an area, such as 12 m² or 130 ft²; “psi” is a unit of pressure.",
        ),
        (
            Kind.MASS,
            "12 furlong",
            (
                "Expected a mass, such as 3.9 oz, 1 lb 2.5 oz or 110 g; “furlong” is not a unit "
                "known here."
            ),
        ),
        (
            Kind.MASS,
            "110 g 3",
            (
                "Expected a mass with its unit, such as 3.9 oz, 1 lb 2.5 oz or 110 g; got only "
                "“110 g 3”."
            ),
        ),
    ],
)
def test_that_a_refusal_says_what_was_expected(kind: Kind, text: str, says: str) -> None:
    with pytest.raises(ReadingRefused) as refusal:
        read(kind, text)
    assert str(refusal.value) == says


@pytest.mark.parametrize(
    ("kind", "text"),
    [
        (Kind.MASS, "2 oz 1 lb"),  # smaller first
        (Kind.MASS, "1 lb 2 lb"),
        (Kind.MASS, "1 kg 2 g"),  # no compound of the trade
        (Kind.MASS, "1 lb -2 oz"),
        (Kind.MASS, "g"),
        (Kind.MASS, ""),
        (Kind.MASS, "  "),
        (Kind.MASS, ". g"),
        (Kind.MASS, "- g"),
        (Kind.MASS, "ten g"),
        (Kind.MASS, "nan g"),
        (Kind.MASS, "inf kg"),
        (Kind.MASS, "1e3 g"),
        (Kind.MASS, "--5 g"),
        (Kind.MASS, "1..5 g"),
        (Kind.MASS, "5 g 🙂"),
        (Kind.MASS, "101 t"),
        (Kind.MASS, "1" * 61),
        (Kind.NUMBER, "3 g"),
        (Kind.LENGTH, "1/0 in"),
        (Kind.PERCENT, "-1 %"),
        (Kind.AIR_PRESSURE, "1013 kPa"),  # ten times too much
    ],
)
def test_that_what_is_no_single_reading_is_refused(kind: Kind, text: str) -> None:
    with pytest.raises(ReadingRefused, match=r"Expected|outside"):
        read(kind, text)


def test_that_a_vacuum_deeper_than_the_air_is_refused() -> None:
    # 29.92 inHg is the air at sea level; at 2000 m it is 23.47 inHg (79 495 Pa).
    deep = read(Kind.PRESSURE, "-25 inHg")
    assert absolute(deep, air_pressure_at(Q(0, "m"))).m_as("inHg") == pytest.approx(4.92, abs=0.01)
    with pytest.raises(ReadingRefused) as refusal:
        absolute(deep, air_pressure_at(Q(2_000, "m")))
    assert str(refusal.value) == (
        "“-25 inHg” is below a perfect vacuum where the air has 23.47 inHg(a); check the sign "
        "and the unit."
    )


@pytest.mark.parametrize("metres", [-2_001, 11_001])
def test_that_heights_outside_the_linear_layer_are_refused(metres: float) -> None:
    with pytest.raises(ReadingRefused, match="between -2000 m and 11000 m"):
        air_pressure_at(Q(metres, "m"))
