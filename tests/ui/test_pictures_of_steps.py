"""What the pictures show is what the desk worked out of the typed text.

By hand: 4312.5 g less 4223.8 g is 88.7 g out of the cylinder; no hose, so 88.7 g are in, which is
3.7 g over a nameplate of 85 g; the stop reading is 4312.5 g less 85 g, 4227.5 g.
"""

from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk, UsageTotal
from chargebench.ui.decay_view import decay_view
from chargebench.ui.mass_view import MassView, mass_view, scale_text
from chargebench.ui.month_chart import MonthChart
from chargebench.ui.window import MainWindow


def line(**typed: str) -> dict[str, str]:
    return {
        "cylinder": "C-014",
        "scale": "S-2",
        "arrangement": "cylinder on the scale",
        "hose_state": "no hose, closed at the equipment",
    } | typed


def looked(desk: Desk, job: str, **typed: str) -> MassView:
    whole: dict[str, Any] = {"kind": "into an evacuated system", "lines": [line(**typed)]}
    look = desk.look(job, "weigh_in", whole)
    view = mass_view(look.worked, desk.units, desk.job(job).case, look.answers)
    assert view is not None
    return view


def test_that_the_mass_picture_follows_the_readings(desk: Desk, job: str) -> None:
    desk.sign(job, "nameplate", {"refrigerant": "R290", "charge": "85 g", "tolerance": "2 g"})
    before = mass_view(desk.look(job, "weigh_in", {}).worked, "SI", desk.job(job).case)
    assert before is not None
    assert before.verdict == "Nothing weighed yet"
    started = looked(desk, job, start="4312.5 g")
    assert [scale_text(each) for each in started.stop_readings] == ["4\u202f227.5 g"]
    assert started.charged is None
    over = looked(desk, job, start="4312.5 g", end="4223.8 g")
    assert over.verdict.startswith("Over nameplate by 3.7 g (±")
    left = dict(over.rows)["left in C-014"]
    assert left == "3.911 kg"  # 4 kg received less 88.7 g; its limit is not known


def test_that_what_is_left_in_a_cylinder_is_the_same_before_and_after_signing(
    desk: Desk, job: str
) -> None:
    desk.sign(job, "nameplate", {"refrigerant": "R290", "charge": "85 g", "tolerance": "2 g"})
    twice = [line(start="4312.5 g", end="4263 g"), line(start="4263 g", end="4227.5 g")]
    typed: dict[str, Any] = {"kind": "into an evacuated system", "lines": twice}
    for signed in (False, True):
        if signed:
            desk.sign(job, "weigh_in", typed)
        look = desk.look(job, "weigh_in", typed)
        view = mass_view(look.worked, desk.units, desk.job(job).case, look.answers)
        assert view is not None
        # 4 kg received less the two draws, 49.5 g and 35.5 g; its limit is not known.
        assert dict(view.rows)["left in C-014"] == "3.915 kg"
    (held,) = [each.mass_mg for each in desk.cylinders() if each.id == "C-014"]
    assert held == 3_915_000


def test_that_a_stop_reading_is_in_the_unit_the_start_was_typed_in(desk: Desk, job: str) -> None:
    desk.sign(job, "nameplate", {"refrigerant": "R290", "charge": "3 oz", "tolerance": "2 g"})
    view = looked(desk, job, start="152 oz")
    assert [scale_text(each) for each in view.stop_readings] == ["149.00 oz"]


def test_that_the_decay_plot_shows_readings_verdict_and_water(desk: Desk, job: str) -> None:
    readings = [{"at": f"{n} min", "reading": f"{300 + n} micron"} for n in range(21)]
    look = desk.look(job, "evacuation", {"coldest": "20 °C", "decay": readings})
    view = decay_view(look.worked, "IP", look.answers.quantity("coldest"))
    assert view is not None
    assert view.minutes == tuple(float(n) for n in range(21))
    assert view.word == "tight"
    assert "can not be excluded" in view.left_open
    # Water at 20 °C: printed as 2.339 kPa in steam tables (from memory).
    assert view.water is not None
    assert view.water.pascals == pytest.approx(2339, abs=1)
    assert view.text(view.water.pascals).endswith(" micron")
    assert len(view.curve) == len(view.low) == len(view.high) == len(view.curve_minutes) > 100


def test_that_a_history_row_leads_from_stock_to_the_job_on_the_bench(
    qtbot: QtBot, window: MainWindow, desk: Desk, job: str
) -> None:
    desk.sign(job, "nameplate", {"refrigerant": "R290", "charge": "85 g", "tolerance": "2 g"})
    desk.sign(
        job,
        "weigh_in",
        {
            "kind": "into an evacuated system",
            "lines": [line(start="4312.5 g", end="4227.5 g")],
        },
    )
    qtbot.keyClick(window, Qt.Key.Key_2, Qt.KeyboardModifier.AltModifier)
    focused = QApplication.focusWidget()
    assert focused is not None
    qtbot.keyClicks(focused, "C-014")
    qtbot.keyClick(focused, Qt.Key.Key_Return)
    table = QApplication.focusWidget()
    assert table is not None
    qtbot.keyClick(table, Qt.Key.Key_Return)
    shown = window.bench.shown_job()
    assert shown is not None
    assert shown[0] == job


def test_that_months_without_movement_are_drawn_as_gaps(
    qtbot: QtBot,
    themed: QApplication,  # noqa: ARG001
) -> None:
    chart = MonthChart("SI")
    qtbot.addWidget(chart)
    chart.resize(300, 150)
    chart.show_months(
        {
            "2025-12": UsageTotal("all", charged_mg=2_000_000),
            "2026-02": UsageTotal("all", recovered_mg=500_000, released_mg=1_000),
        }
    )
    assert chart.sentence == (
        "2025-12: charged 2.000 kg; 2026-01: nothing charged, recovered or released; "
        "2026-02: recovered 500.0 g, released 1.0 g"
    )
    chart.grab()
    chart.show_months({})
    assert chart.sentence == "Nothing moved in this period."
    chart.grab()
