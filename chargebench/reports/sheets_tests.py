"""Sheets of what was measured and moved: decay and pressure tests, recovery, weigh-ins, leaks."""

from collections.abc import Iterator
from dataclasses import dataclass

from chargebench.calc.evacuation import MICRON_PA
from chargebench.reports.content import AuditContent, JobRecord, StepRecord
from chargebench.reports.steprows import (
    COUNTS,
    HEAD,
    SAYS,
    counts,
    head,
    number_in,
    records,
    said,
    typed_text,
)
from chargebench.reports.table import HEAD_ROW, Column, Curve, Form, Row, Table
from chargebench.steps.evacuation import Evacuated
from chargebench.units import Reading, absolute

CHARTS_MOST = 60  # newest tests; more make a workbook that opens slowly


@dataclass(frozen=True, slots=True)
class _Decay:
    job: JobRecord
    record: StepRecord
    points: tuple[tuple[float, float, str], ...]  # minutes, pascals, as typed

    @property
    def title(self) -> str:
        return f"{self.job.case.number}, entry {self.record.number}"


def _decays(content: AuditContent) -> list[_Decay]:
    found: list[_Decay] = []
    for job, record in records(content, "evacuation"):
        points = []
        for line in record.answers.lines("decay"):
            reading, at = line.reading("reading"), line.quantity("at")
            if reading is not None and at is not None:
                air = job.case.air_pressure("evacuation")
                pascals = float(absolute(reading, air).m_as("Pa"))
                points.append((float(at.m_as("min")), pascals, reading.text))
        found.append(_Decay(job, record, tuple(points)))
    return found


def decay_tests(content: AuditContent) -> Table:
    """One row a decay test, the curves below."""
    tests = _decays(content)
    return Table(
        "Decay tests",
        "Vacuum decay: how far it was pulled down, how it rose, and what that means.",
        (
            *HEAD,
            Column("Pulled to, as typed", 12),
            Column("Pump ran [min]", 9, Form.TENTHS),
            Column("Broken with nitrogen", 10),
            Column("Readings", 9, Form.WHOLE),
            Column("Over [min]", 9, Form.TENTHS),
            Column("First [Pa]", 10, Form.TENTHS),
            Column("Last [Pa]", 10, Form.TENTHS),
            Column("Rise [micron]", 10, Form.WHOLE),
            Column("Verdict", 16),
            Column("Leak not excluded below [micron/min]", 14, Form.TENTHS),
            SAYS,
            COUNTS,
        ),
        (_decay_row(each) for each in tests),
        charts=tuple(_curves(content, tests)),
    )


def _decay_row(test: _Decay) -> Row:
    record, points = test.record, test.points
    result = record.worked.result
    judged = result.verdict if isinstance(result, Evacuated) else None
    first, last = (points[0], points[-1]) if points else (None, None)
    return (
        *head(test.job, record),
        typed_text(record, "pulled_to"),
        number_in(record.answers, "pulling_time", "min"),
        record.answers.text("breaks"),
        len(points),
        last[0] - first[0] if first and last else None,
        first[1] if first else None,
        last[1] if last else None,
        (last[1] - first[1]) / MICRON_PA if first and last else None,
        str(judged.word) if judged else "",
        judged.slope_upper_micron if judged else None,
        said(record),
        counts(record),
    )


def decay_readings(content: AuditContent) -> Table:
    """Every reading of every decay test; the charts draw from here."""
    return Table(
        "Decay readings",
        "Every reading of every decay test, as typed and as understood.",
        (
            Column("Job", 10),
            Column("Entry", 8, Form.WHOLE),
            Column("After [min]", 10, Form.TENTHS),
            Column("As typed", 14),
            Column("Pressure [Pa]", 12, Form.TENTHS),
            Column("Pressure [micron]", 12, Form.WHOLE),
        ),
        (
            (
                test.job.case.number,
                test.record.number,
                at,
                typed,
                pascals,
                round(pascals / MICRON_PA, 6),
            )
            for test in _decays(content)
            for at, pascals, typed in test.points
        ),
    )


def _curves(content: AuditContent, tests: list[_Decay]) -> Iterator[Curve]:
    """Charts of the newest tests, in micron where the shop works in inches and pounds."""
    micron = content.shop.get("units") == "IP"
    row = HEAD_ROW + 1
    skipped = max(len(tests) - CHARTS_MOST, 0)
    for number, test in enumerate(tests):
        last = row + len(test.points) - 1
        if len(test.points) > 1 and number >= skipped:
            yield Curve(
                test.title,
                "Decay readings",
                x=3,
                y=6 if micron else 5,
                first=row,
                last=last,
                x_title="minutes after isolating",
                y_title="micron" if micron else "Pa",
                x_values=tuple(point[0] for point in test.points),
                y_values=tuple(point[1] / (MICRON_PA if micron else 1) for point in test.points),
            )
        row = last + 1


def pressure_tests(content: AuditContent) -> Table:
    """One row a nitrogen test."""

    def rows() -> Iterator[Row]:
        for job, record in records(content, "pressure_test"):
            answers = record.answers
            yield (
                *head(job, record),
                answers.text("gas"),
                answers.yes("regulated"),
                typed_text(record, "start_pressure"),
                _absolute_kpa(job, answers.reading("start_pressure")),
                number_in(answers, "start_temperature", "degC"),
                number_in(answers, "hold", "min"),
                typed_text(record, "end_pressure"),
                _absolute_kpa(job, answers.reading("end_pressure")),
                number_in(answers, "end_temperature", "degC"),
                answers.yes("bubbles"),
                said(record),
                counts(record),
            )

    return Table(
        "Pressure tests",
        "Standing pressure with dry nitrogen, corrected for temperature.",
        (
            *HEAD,
            Column("Gas", 18),
            Column("Regulator and relief", 10),
            Column("Start, as typed", 11),
            Column("Start [kPa absolute]", 10, Form.TENTHS),
            Column("Start [°C]", 8, Form.TENTHS),
            Column("Held [min]", 8, Form.TENTHS),
            Column("End, as typed", 11),
            Column("End [kPa absolute]", 10, Form.TENTHS),
            Column("End [°C]", 8, Form.TENTHS),
            Column("Joints soaped", 9),
            SAYS,
            COUNTS,
        ),
        rows(),
    )


def _absolute_kpa(job: JobRecord, reading: Reading | None) -> float | None:
    if reading is None:
        return None
    return float(absolute(reading, job.case.air_pressure("pressure_test")).m_as("kPa"))
