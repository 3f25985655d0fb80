"""Hand-over in the window: write, take in, decide, and begin a bench at the first start."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QProgressDialog
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.errors import ExportRefused
from chargebench.ui.firststart import FirstStart
from chargebench.ui.handing import HandOverPanel, told
from chargebench.ui.notifier import Notifier
from chargebench.ui.records import RecordsArea
from chargebench.ui.records_page import ENTRIES, FLAGS
from chargebench.ui.settling import DecideTwice, SettleConflict
from tests.desk import benches

CYLINDER = {"refrigerant": "R290", "contents": "new", "refillable": "yes", "serial": "77-0412"}


@pytest.fixture
def records(qtbot: QtBot, themed: QApplication, desk: Desk) -> RecordsArea:  # noqa: ARG001
    made = RecordsArea(desk, Notifier())
    qtbot.addWidget(made, before_close_func=lambda area: area.finish())
    made.resize(1180, 720)
    made.show()
    return made


def _written(qtbot: QtBot, panel: HandOverPanel) -> Path:
    qtbot.keyClick(panel.main, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: not panel.working and panel.says.text().startswith("Written: "))
    return Path(panel.file.text())


def test_that_a_bench_is_begun_from_the_window_and_hands_over_to_it(
    qtbot: QtBot, records: RecordsArea, desk: Desk, tmp_path: Path
) -> None:
    qtbot.keyClick(records.hand_over, Qt.Key.Key_Space)
    panel = records.hand_over_panel
    assert panel.isVisible()
    assert panel.further.text() == "To begin a further bench, D"
    panel.further.setFocus()
    qtbot.keyClick(panel.further, Qt.Key.Key_Space)
    assert "Letter D is then given" in panel.says.text()
    chain = _written(qtbot, panel)
    page = FirstStart(tmp_path / "van" / "shop.chargebench")
    qtbot.addWidget(page)
    page.show()
    with qtbot.waitSignal(page.made) as made:
        page.join_shop(chain)
    bench = made.args[0]
    with bench:
        assert (bench.reading.bench, bench.shop) == ("D", desk.shop)
        bench.act("receive", {"cylinder": "C-014", "mass": "1 kg"})
        bench.hand_over(tmp_path / "back.chain")
    records.take(tmp_path / "back.chain")
    assert records.says.text().startswith("back.chain: Taken in of bench D: entries 1 to 2.")
    assert desk.reading.balance("cylinder:C-014", "R290") == 5_000_000
    records.show_view(ENTRIES)
    numbers = [records.entries.index(row, 0).data() for row in range(4)]
    assert numbers[1:3] == ["D 2", "D 1"]  # of the other bench; this one's own stand bare
    assert numbers[0].isdigit()


def test_that_an_ordinary_hand_over_gives_no_letter(
    qtbot: QtBot, records: RecordsArea, desk: Desk
) -> None:
    before = desk.reading.head()
    records.show_hand_over()
    chain = _written(qtbot, records.hand_over_panel)
    assert chain.exists()
    assert desk.reading.head() == before
    records.show_hand_over()
    assert records.hand_over_panel.file.text() != str(chain)  # nothing is written over
    records.hand_over_panel.file.setText(str(chain))
    records.hand_over_panel.begin()
    refusal = records.hand_over_panel.refusal
    qtbot.waitUntil(lambda: "is there already" in refusal.text())


def test_that_a_file_that_begins_no_bench_is_refused_at_the_first_start(
    qtbot: QtBot, desk: Desk, tmp_path: Path
) -> None:
    desk.hand_over(tmp_path / "plain.chain")
    page = FirstStart(tmp_path / "van.chargebench")
    qtbot.addWidget(page)
    page.show()
    page.join_shop(None)
    assert page.refused.isHidden()
    page.join_shop(tmp_path / "plain.chain")
    assert "was not made to begin a bench" in page.refused.text()
    assert not (tmp_path / "van.chargebench").exists()


def test_that_files_are_chosen_many_at_once_and_a_refusal_leaves_what_went_before(
    qtbot: QtBot,
    records: RecordsArea,
    desk: Desk,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    with benches.further(desk, tmp_path, "D") as bench:
        bench.hand_over(tmp_path / "a.chain")
    (tmp_path / "b.chain").write_bytes((tmp_path / "a.chain").read_bytes()[:-9])
    names = [str(tmp_path / name) for name in ("a.chain", "b.chain")]
    monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *_: (names, ""))
    qtbot.keyClick(records.take_in, Qt.Key.Key_Space)
    taken, refused = records.says.text().splitlines()
    assert taken.startswith("a.chain: Taken in")
    assert refused.startswith("b.chain: The file ends in the middle")


def _flag(qtbot: QtBot, records: RecordsArea, key: str) -> None:
    records.show_view(FLAGS)
    qtbot.waitUntil(lambda: not records.working, timeout=10_000)
    keys = [flag.key for flag in records.flags.rows]
    records.tables[FLAGS].selectRow(keys.index(key))
    qtbot.keyClick(records.tables[FLAGS], Qt.Key.Key_Return)


def test_that_a_flag_leads_to_the_decision_on_a_cylinder_met_twice(
    qtbot: QtBot, records: RecordsArea, desk: Desk, tmp_path: Path
) -> None:
    with benches.further(desk, tmp_path, "D") as bench:
        bench.save_row("cylinder", None, CYLINDER)
        desk.save_row("cylinder", "C-20", CYLINDER | {"owner": "Larkmoor Cold"})
        benches.pass_on(bench, desk, tmp_path)
    _flag(qtbot, records, "met-twice")
    dialog = records.findChild(DecideTwice)
    assert isinstance(dialog, DecideTwice)
    assert "Serial number: 77-0412 – the same" in dialog.words.text()
    assert "Owner: Larkmoor Cold – nothing" in dialog.words.text()
    qtbot.keyClick(dialog.same, Qt.Key.Key_Space)
    assert desk.met_twice() == []
    assert "C-D-001" not in desk.choices("cylinder")


def test_that_a_conflict_is_settled_with_a_reason(
    qtbot: QtBot, records: RecordsArea, desk: Desk, tmp_path: Path
) -> None:
    with benches.further(desk, tmp_path, "D") as bench:
        for each in (desk, bench):
            each.act("return", {"cylinder": "C-014", "mass": "3 kg", "to": "reclaimer"})
        benches.pass_on(bench, desk, tmp_path)
    _flag(qtbot, records, "bench-overdrawn")
    dialog = records.findChild(SettleConflict)
    assert isinstance(dialog, SettleConflict)
    qtbot.keyClick(dialog.settled, Qt.Key.Key_Space)
    assert "how it was settled" in dialog.refusal.text()
    qtbot.keyClicks(dialog.reason, "weighed; 2 kg booked as difference")
    qtbot.keyClick(dialog.settled, Qt.Key.Key_Space)
    assert desk.conflicts() == {}


def test_that_cancelling_undoes_all_of_a_file(
    records: RecordsArea, desk: Desk, tmp_path: Path
) -> None:
    with benches.further(desk, tmp_path, "D") as bench:
        for number in range(300):
            bench.save_row("site", None, {"name": f"Site {number}"})
        bench.hand_over(tmp_path / "long.chain")
    before = desk.reading.heads()

    def press(_done: int, _of: int) -> None:
        dialog = records.findChild(QProgressDialog)
        assert isinstance(dialog, QProgressDialog)
        dialog.cancel()

    with told(records, "Taking in …") as tell:

        def pressed(done: int, of: int) -> None:
            press(done, of)
            tell(done, of)

        with pytest.raises(ExportRefused, match="nothing of this file was taken in"):
            desk.take_over(tmp_path / "long.chain", pressed)
    assert desk.reading.heads() == before
