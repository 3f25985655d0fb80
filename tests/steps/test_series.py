"""Two-column text as readings: what loggers and people write, and what is refused."""

from pathlib import Path

import pytest

from chargebench.errors import SeriesRefused
from chargebench.steps.series import lines_from_file, lines_from_text
from chargebench.units import Kind, read


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (
            "0 min\t350 micron\n5 min\t420 micron",
            [("0 min", "350 micron"), ("5 min", "420 micron")],
        ),
        ("min;micron\n0;350\n2,5;420,5", [("0 min", "350 micron"), ("2,5 min", "420,5 micron")]),
        ("time [s],p [Pa]\n0,46.7\n60,56", [("0 s", "46.7 Pa"), ("60 s", "56 Pa")]),
        ("t / min\tp / mbar\n0\t0,47\n1\t0,56\n", [("0 min", "0,47 mbar"), ("1 min", "0,56 mbar")]),
        ("Time (min);Pressure (psi(a))\n0;1\n9;2", [("0 min", "1 psi(a)"), ("9 min", "2 psi(a)")]),
        ("# pump off\n\n0 s; 1 Torr;\n30 s; 1.1 Torr;", [("0 s", "1 Torr"), ("30 s", "1.1 Torr")]),
        (
            "14:30:00;350 micron\n14:31:30;380 micron",
            [("0 s", "350 micron"), ("1 min 30 s", "380 micron")],
        ),
        (
            "2026-11-25 23:59:00\t1 Torr\n2026-11-26 00:01:00\t2 Torr",
            [("0 s", "1 Torr"), ("2 min", "2 Torr")],
        ),
        ('"0","350 micron"\n"1","360 micron"', None),
    ],
)
def test_that_two_columns_become_readings_with_their_units(
    text: str, expected: list[tuple[str, str]] | None
) -> None:
    if expected is None:
        with pytest.raises(SeriesRefused, match="Line 1: expected a time span with its unit"):
            lines_from_text(text)
        return
    lines = lines_from_text(text)
    assert [(line["at"], line["reading"]) for line in lines] == expected


def test_that_every_line_read_is_understood_as_a_reading_again() -> None:
    for line in lines_from_text("min;µmHg\n0;350\n1;380\n2;401"):
        assert read(Kind.DURATION, line["at"]).unit == "min"
        assert read(Kind.PRESSURE, line["reading"]).unit == "micron"


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("", "parted by tab, semicolon or comma"),
        ("5 420\n6 430", "parted by tab, semicolon or comma"),
        ("0 min;350 micron", "at least two readings"),
        ("0;350\n1;360", "Line 1: expected a time span with its unit"),
        ("min;\n0;350\n1;360", "Line 2: expected a pressure with its unit"),
        ("min,micron\n0,5,350\n1,0,360", "Line 2: .* may be a decimal mark"),
        ("min,micron\n0,5 350\n1,0 360", "Line 2: .* may be a decimal mark"),
        ("0 min;350 micron;9\n1 min;360 micron;9", "Line 1: expected two columns"),
        ("0 min;350 micron\nend of test;x", "Line 2: expected a time and a reading"),
        ("1 min;350 micron\n1 min;360 micron", "Line 2: expected a later time"),
        ("0 min;350 micron\n1 min;360 g", "Line 2: "),
        ("0 min;350 micron\n1 min;NaN micron", "Line 2: "),
        ("0:30;350 micron\n1:00;360 micron", "minutes and seconds or hours and minutes"),
        ("0:00:30;350 micron\n5 min;360 micron", "Line 2: expected a time like the one"),
        ("min;psi\n0;1\n1;2", "Line 2: "),
        ("\n".join(f"{n} s;5 micron" for n in range(501)), "at most 500 readings; got 501"),
    ],
)
def test_that_other_text_is_refused_with_the_line_and_what_was_expected(
    text: str, says: str
) -> None:
    with pytest.raises(SeriesRefused, match=says):
        lines_from_text(text)


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_that_a_file_is_read_in_the_encodings_loggers_write(tmp_path: Path, encoding: str) -> None:
    file = tmp_path / "decay.txt"
    file.write_bytes("min;µmHg\r\n0;350\r\n1;380\r\n".encode(encoding))
    assert [line["reading"] for line in lines_from_file(file)] == ["350 µmHg", "380 µmHg"]


def test_that_a_file_that_is_no_text_too_big_or_absent_is_refused(tmp_path: Path) -> None:
    noise = tmp_path / "picture.png"
    noise.write_bytes(b"\x89PNG\0\0\0,\xff")
    with pytest.raises(SeriesRefused, match=r"picture\.png is not text"):
        lines_from_file(noise)
    big = tmp_path / "big.csv"
    big.write_bytes(b"0 s;1 Pa\n" * 120_000)
    with pytest.raises(SeriesRefused, match=r"big\.csv has 1\.1 MB"):
        lines_from_file(big)
    with pytest.raises(SeriesRefused, match=r"none\.csv can not be read"):
        lines_from_file(tmp_path / "none.csv")


@pytest.mark.parametrize(
    "text",
    [
        "min;psig;°F\n0;150;72\n10;149,5;70",
        "min,psig,°F\n0,150,72\n10,149.5,70",
        "0 min\t150 psig\t72 °F\n10 min\t149.5 psig\t70 °F",
    ],
)
def test_that_a_pressure_test_may_have_its_temperatures_in_a_third_column(text: str) -> None:
    lines = lines_from_text(text, third=Kind.TEMPERATURE)
    assert [read(Kind.DURATION, line["at"]).value for line in lines] == [0, 10]
    assert [float(read(Kind.PRESSURE, line["reading"]).value) for line in lines] == [150, 149.5]
    assert [read(Kind.TEMPERATURE, line["temperature"]).value for line in lines] == [72, 70]


def test_that_a_third_cell_is_no_temperature_where_a_comma_may_be_the_decimal_mark() -> None:
    with pytest.raises(SeriesRefused, match=r"Line 2: .* may be a decimal mark"):
        lines_from_text("min,psig\n0,5,150\n10,0,149", third=Kind.TEMPERATURE)


def test_that_two_columns_serve_where_a_third_may_be() -> None:
    lines = lines_from_text("0 min;150 psig\n10 min;149 psig", third=Kind.TEMPERATURE)
    assert lines[1] == {"at": "10 min", "reading": "149 psig"}
