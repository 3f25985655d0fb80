"""What the whole window must not do while one works in it."""

from PySide6.QtWidgets import QApplication

from tests.hands import Hands


def test_that_no_part_flashes_as_a_window_of_its_own(at_job: Hands, qapp: QApplication) -> None:
    moved: list[object] = []
    qapp.processEvents()
    qapp.focusWindowChanged.connect(moved.append)
    steps = at_job.page.steps
    for row in range(steps.count()):
        steps.setCurrentRow(row)
        qapp.processEvents()
    for place in (1, 2, 0):
        at_job.window.show_area(place)
        qapp.processEvents()
    qapp.focusWindowChanged.disconnect(moved.append)
    assert not moved
    assert at_job.window.isActiveWindow()
