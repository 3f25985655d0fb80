"""Statements: what 40 CFR 82.155(b)(2) and 82.156(a)(3) want written down, read back from paper."""

from dataclasses import replace
from pathlib import Path

import pytest

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError, ExportRefused
from chargebench.reports import pdf
from chargebench.reports.statements import disposed, draw_disposal
from tests.reports.papers import text_of
from tests.reports.test_job_report import record


def test_that_the_disposal_statement_names_recoverer_address_and_date(
    shop: Desk, tmp_path: Path
) -> None:
    drawn = shop.disposal_statement(record(shop, "B-0008").case.job)
    text = text_of(pdf.write(drawn, tmp_path / "disposal.pdf"))
    for words in (
        "All refrigerant that had not leaked before was recovered",
        "L. Brandvold, 608-2-51880",
        "12 Slipway Lane, Larkmoor",
        "LC-2019-077",
        "2026-10-06",
        "Fenwold, OD-130, FW-OD-1104",
        "31 Mill Lane, Larkmoor",
        "R404A",
        "2 lb 8 oz",
        "C-031",
        "82.155",
    ):
        assert words in text
    # 19 lb 11.6 oz - 17 lb 5.0 oz = 2 lb 6.6 oz = 1.094 kg.
    assert "Recovered 1.094 kg" in text


def test_that_equipment_that_stays_has_no_disposal_statement(shop: Desk) -> None:
    with pytest.raises(ChargebenchError, match="disposed of or taken out of service"):
        shop.disposal_statement(record(shop, "B-0010").case.job)


def test_that_every_disposal_of_the_sample_is_found(shop: Desk) -> None:
    found = [line.number for line in shop.jobs() if disposed(record(shop, line.number))]
    assert found == ["B-0008"]


def test_that_nothing_left_is_not_called_recovered(shop: Desk, tmp_path: Path) -> None:
    job = record(shop, "B-0008")
    changed = []
    for step in job.steps:
        if step.step == "recovery":
            values = {**step.answers.values, "how": "nothing left in the system", "lines": ()}
            step = replace(step, answers=replace(step.answers, values=values))
        changed.append(step)
    drawn = draw_disposal(shop.letterhead("A4"), replace(job, steps=tuple(changed)))
    text = text_of(pdf.write(drawn, tmp_path / "disposal.pdf"))
    assert "had leaked out before" in text
    assert "All refrigerant" not in text


def test_that_the_hand_over_names_both_sides_mass_and_document(shop: Desk, tmp_path: Path) -> None:
    (entry,) = (each for each in shop.entries() if each.kind == "returned")
    text = text_of(pdf.write(shop.hand_over_statement(entry.id), tmp_path / "hand-over.pdf"))
    typed = entry.payload["typed"]
    for words in (*(typed[key] for key in ("cylinder", "mass", "receiver", "document")),):
        assert words in text
    assert "Hand-over of refrigerant to a reclaimer" in text
    assert "Larkmoor Cold" in text
    assert f"{entry.happened_at:%Y-%m-%d}" in text


def test_that_only_what_was_returned_has_a_hand_over_statement(shop: Desk) -> None:
    other = next(each for each in shop.entries() if each.kind == "weighed")
    with pytest.raises(ChargebenchError, match="content was returned"):
        shop.hand_over_statement(other.id)


def test_that_an_export_holds_a_report_for_each_job_and_the_statements(
    shop: Desk, tmp_path: Path
) -> None:
    exported = shop.export(tmp_path / "out")
    left = {path.name for path in (tmp_path / "out" / "reports").iterdir()}
    assert left == {
        *(f"{line.number}.pdf" for line in shop.jobs()),
        "B-0008 disposal.pdf",
        "B-205 hand-over.pdf",
    }
    assert {path.name for path in exported.files if path.parent.name == "reports"} == left
    listed = (tmp_path / "out" / "manifest.json").read_text("utf-8")
    assert all(f"reports/{name}" in listed for name in left)
    assert "Job report B-0010" in text_of(tmp_path / "out" / "reports" / "B-0010.pdf")


def test_that_an_export_cancelled_at_the_reports_is_refused(shop: Desk, tmp_path: Path) -> None:
    seen: list[str] = []

    def progress(what: str, *_: int) -> None:
        seen.append(what)

    with pytest.raises(ExportRefused, match="job reports"):
        shop.export(tmp_path / "out", progress=progress, cancelled=lambda: "Job reports" in seen)
    assert not (tmp_path / "out" / "manifest.json").exists()
