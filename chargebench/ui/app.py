"""Start of the desktop: the shell is on the screen before anything heavy is imported."""

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication

from chargebench.errors import ChargebenchError
from chargebench.ui import theme, trouble
from chargebench.ui.window import MainWindow

if TYPE_CHECKING:
    from chargebench.desk import Desk

WARM_UP_MS = 300  # after the first page: the property process starts beside, the window stays free


def default_shop() -> Path:
    """Where this person's shop is kept."""
    return _folder() / "shop.chargebench"


def _folder() -> Path:
    import platformdirs

    return platformdirs.user_data_path("chargebench", appauthor=False)


def _sample() -> "Desk":
    """The sample shop as it was left, or built now."""
    from chargebench.desk import Desk, sample

    path = _folder() / "sample.chargebench"
    if path.exists():
        return Desk.open(path)
    path.parent.mkdir(parents=True, exist_ok=True)
    return sample.build(path)


class _Start:
    """Opens the shop once the shell is on the screen, and closes it at the end."""

    def __init__(
        self,
        window: MainWindow,
        shop: "Desk | Path | None",
    ) -> None:
        self._window = window
        self._shop = shop
        self.desk: Desk | None = None
        window.painted.connect(lambda: QTimer.singleShot(0, self.open))

    def open(self) -> None:
        """Open what was asked for, else ask."""
        from chargebench.desk import Desk

        shop = self._shop
        if shop is None and default_shop().exists():
            shop = default_shop()
        if shop is None:
            self._first_start()
            return
        try:
            self._take(shop if isinstance(shop, Desk) else Desk.open(shop))
        except ChargebenchError as refusal:
            self._window.tell(str(refusal))

    def _take(self, desk: "Desk") -> None:
        self.desk = desk
        self._window.open_desk(desk)
        QTimer.singleShot(WARM_UP_MS, self._warm_up)

    def _first_start(self) -> None:
        from chargebench.ui.firststart import FirstStart

        page = FirstStart(default_shop())
        page.made.connect(self._take)
        page.sample_wanted.connect(self._look_at_sample)
        self._window.show_page(page)
        page.make.setFocus()

    def _look_at_sample(self) -> None:
        try:
            self._take(_sample())
        except ChargebenchError as refusal:
            self._window.tell(str(refusal))

    def _warm_up(self) -> None:
        from chargebench import fluids

        fluids.warm_up()


def run(shop: "Desk | Path | None" = None) -> int:
    """Show the window until it is closed.

    `shop` is an open desk, a shop file, or None for this person's own shop.
    """
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    app.setApplicationName("chargebench")
    theme.apply(app)
    theme.follow_system(app)
    window = MainWindow()
    start = _Start(window, shop)
    before = sys.excepthook
    sys.excepthook = trouble.hook(window.tell, trouble.default_log)
    try:
        window.show()
        return app.exec()
    finally:
        sys.excepthook = before
        if start.desk is not None and start.desk is not shop:
            start.desk.close()
