"""Lines as scales and gauges send them; the shapes are common practice, from memory."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.errors import ReadingRefused
from chargebench.instruments.settings import LineSettings
from chargebench.instruments.speech import seems_seven_bits, understand
from chargebench.units import Kind, read

PLAIN = "9600 8N1"


def hear(line: str, settings: str = PLAIN, kind: Kind = Kind.SCALE) -> tuple[str, bool | None]:
    heard = understand(line.encode("latin-1"), LineSettings.read(settings), kind)
    return heard.text, heard.steady


@pytest.mark.parametrize(
    ("line", "settings", "text", "steady"),
    [
        ("  4312.5 g", PLAIN, "4312.5 g", None),
        ("+0004312.5g", PLAIN, "4312.5 g", None),
        ("ST,GS,+  4312.5 g ", "9600 8N1, stable ST", "4312.5 g", True),
        ("ST,-00012.5,g", "9600 8N1, stable ST", "-12.5 g", True),
        ("US,GS,+  4312.5 g ", "9600 8N1, stable ST", "4312.5 g", False),
        ("-   12.34 kg ?", "9600 8N1, moving ?", "-12.34 kg", False),
        ("-   12.34 kg  ", "9600 8N1, moving ?", "-12.34 kg", True),
        ("S 4312,5 g", "2400 7E1, stable S", "4312.5 g", True),
        ("\x02 9 lb  8.1 oz \x00", PLAIN, "9 lb 8.1 oz", None),
        ("net: 152.1oz *", "9600 8N1, stable *", "152.1 oz", True),
        ("4312.5", "9600 8N1, unit g", "4312.5 g", None),
        ("No. 17   4312.5 g", PLAIN, "4312.5 g", None),
        ("12:03:11 4312.5 g", PLAIN, "4312.5 g", None),
        ("4,312 kg", "9600 8N1, decimal comma", "4.312 kg", None),
        ("\xff\xfe~~ 4312.5 g ~\x07", PLAIN, "4312.5 g", None),
        ("-0.0 g", PLAIN, "0.0 g", None),
    ],
)
def test_that_a_scales_line_is_understood(
    line: str, settings: str, text: str, steady: bool | None
) -> None:
    assert hear(line, settings) == (text, steady)


@pytest.mark.parametrize(
    ("line", "text"),
    [
        ("VAC   350 micron", "350 micron"),
        ("4.67E-1 mbar", "0.467 mbar"),
        ("3.50e+2 mTorr", "350 mTorr"),
        ("P 46,7 Pa", "46.7 Pa"),
        ("0350 \xb5mHg", "350 µmHg"),
    ],
)
def test_that_a_gauges_line_is_understood(line: str, text: str) -> None:
    assert hear(line, kind=Kind.PRESSURE)[0] == text


@pytest.mark.parametrize(
    ("line", "settings", "says"),
    [
        ("------", PLAIN, "No number"),
        ("OL g", PLAIN, "No number"),
        ("4312.5", PLAIN, "say in the settings which unit"),
        ("4,312 kg", PLAIN, "may be 4312 or 4.312"),
        ("4312.5 g 17.3 g", PLAIN, "More than one number"),
        ("99999999 kg", PLAIN, "outside what"),
        ("350 micron", PLAIN, "without a unit known here"),
        ("4312.5.1 g", PLAIN, "No number"),
    ],
)
def test_that_what_is_no_reading_is_refused_with_what_is_missing(
    line: str, settings: str, says: str
) -> None:
    with pytest.raises(ReadingRefused, match=says):
        hear(line, settings)


@given(st.decimals(min_value=-99999, max_value=99999, places=1))
def test_that_every_number_of_a_display_comes_through_as_it_was_sent(value: Decimal) -> None:
    heard = understand(f"ST,GS,{value:+09.1f} g".encode(), LineSettings(stable="ST"), Kind.SCALE)
    assert read(Kind.SCALE, heard.text).value == value
    assert heard.step == Decimal("0.1")


@given(st.binary(max_size=300) | st.text("0123456789.,+- gGlboz:", max_size=60).map(str.encode))
def test_that_no_bytes_are_more_than_refused(line: bytes) -> None:
    try:
        text = understand(line, LineSettings(), Kind.SCALE).text
    except ReadingRefused as refusal:
        text = f"{len(str(refusal))} g"
    assert read(Kind.SCALE, text)


def test_that_seven_bits_read_as_eight_are_recognized() -> None:
    # Even parity in the eighth bit, as a port of 7E1 sends it.
    even = bytes(b | (0x80 if b.bit_count() % 2 else 0) for b in b"  4312.5 g S")
    assert seems_seven_bits(even)
    assert not seems_seven_bits(b"  4312.5 g S")


@given(
    st.builds(
        LineSettings,
        baud=st.sampled_from([300, 9600, 115200]),
        bits=st.sampled_from([7, 8]),
        parity=st.sampled_from("NEO"),
        stop=st.sampled_from(["1", "1.5", "2"]),
        stable=st.sampled_from(["", "ST", "*"]),
        moving=st.sampled_from(["", "?", "US"]),
        unit=st.sampled_from(["", "g"]),
        comma=st.booleans(),
        asked=st.sampled_from(["", "W", "READ 1"]),
    )
)
def test_that_settings_written_are_read_as_the_same(settings: LineSettings) -> None:
    assert LineSettings.read(str(settings)) == settings


@pytest.mark.parametrize(
    "text",
    [
        "",
        "8N1",
        "9601 8N1",
        "9600 9N1",
        "9600 8N1, stable",
        "9600 8N1, x y",
        "9600 8N1, stable A, stable B",
        "9600 8N1, decimal point",
    ],
)
def test_that_settings_that_are_none_are_refused(text: str) -> None:
    with pytest.raises(ReadingRefused, match="Expected"):
        LineSettings.read(text)
