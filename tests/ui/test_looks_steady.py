"""Memory does not grow with the jobs that were opened; `python -m tests.steady` opens 500."""

import gc
import shutil
import sys
from pathlib import Path

import pytest
import shiboken6
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ui.window import MainWindow
from tests.steady import opened

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(sys.platform != "linux", reason="memory is read from /proc"),
]

GROWTH_MIB = 8  # our own bound: forms that are not let go take some 0.3 MiB a job
DEAD_MOST = 300  # widgets Python holds though Qt let them go; a form has some 50, 90 are opened


def test_that_memory_stays_where_it_is_while_jobs_are_opened(
    qtbot: QtBot, sample_shop: Path, tmp_path: Path
) -> None:
    shutil.copy(sample_shop, tmp_path / "sample.chargebench")
    with Desk.open(tmp_path / "sample.chargebench") as desk:
        window = MainWindow()
        qtbot.addWidget(window)
        window.show()
        window.open_desk(desk)
        held = [mib for _, mib in opened(window, desk, 90, 30)]
    dead = [
        each
        for each in gc.get_objects()
        if isinstance(each, QWidget) and not shiboken6.isValid(each)
    ]
    assert len(dead) < DEAD_MOST
    assert held[-1] - held[1] < GROWTH_MIB, held
