"""Start of the desktop: the shell is on the screen before anything heavy is imported."""

import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication

from chargebench.errors import ChargebenchError
from chargebench.ui import language, theme, trouble
from chargebench.ui.language import tr
from chargebench.ui.window import MainWindow
from chargebench.words import joined, say

if TYPE_CHECKING:
    from chargebench.desk import Desk
    from chargebench.ledger import Address
    from chargebench.ui.trouble_page import TroublePage

    Shop = Desk | Path | Address | Callable[[], Desk] | None

SAMPLE = "Opening the sample shop. The first time it is made, which takes a few seconds …"
PAINT_MS = 50  # so long the window may take to show what it says before work that holds it
BACKUP_AT_ONCE = 32 * 2**20  # bytes of a shop file that are copied before it is shown: 40 ms
WARM_UP_MS = 300  # after the first page: the property process starts beside, the window stays free


class _Start:
    """Opens the shop once the shell is on the screen, and closes it at the end."""

    def __init__(
        self,
        window: MainWindow,
        shop: "Shop",
    ) -> None:
        self._window = window
        self._shop = shop
        self.desk: Desk | None = None
        self._page: TroublePage | None = None
        window.backups_wanted.connect(self._show_backups)
        if callable(shop):  # what opens a shop of one's own has its path
            window.waiting.setText(tr(SAMPLE))
        window.painted.connect(
            lambda: QTimer.singleShot(PAINT_MS if callable(shop) else 0, self.open)
        )

    def open(self) -> None:
        """Open what was asked for, else ask."""
        from chargebench.desk import Desk, where
        from chargebench.ledger import Address

        shop = self._shop
        if shop is None and where.shop_file().exists():
            shop = where.shop_file()
        if shop is None:
            self._first_start(where.shop_file())
            return
        if isinstance(shop, Path):
            self._open_file(shop)
            return
        try:
            if isinstance(shop, Address):
                shop = Desk.open(shop)
            self._take(shop if isinstance(shop, Desk) else shop())
        except ChargebenchError as refusal:
            self._window.tell(str(refusal))

    def _open_file(self, shop: Path) -> None:
        """Open a shop file; where it can not be, say what can be done."""
        from chargebench.desk import Desk

        try:
            self._take(Desk.open(shop, at_once=BACKUP_AT_ONCE))
        except ChargebenchError as refusal:
            self._show_trouble(shop, str(refusal))

    def _show_trouble(self, shop: Path, says: str) -> None:
        from chargebench.ui.trouble_page import TroublePage

        page = TroublePage(shop, says)
        page.again.connect(lambda: self._open_file(shop))
        page.restore_wanted.connect(lambda copy: self._restore(page, shop, copy))
        page.back_to_work.connect(lambda: self._window.show_area(2))
        if self._page is not None:
            self._page.finish()
            self._window.stack.removeWidget(self._page)
            self._page.deleteLater()
        self._page = page
        self._window.show_page(page)
        page.first.setFocus()

    def finish(self) -> None:
        """Wait for work on files, and close the shop that was opened here."""
        if self._page is not None:
            self._page.finish()
        if self.desk is not None and self.desk is not self._shop:
            self.desk.close()

    def _show_backups(self) -> None:
        assert self.desk is not None
        self._show_trouble(self.desk.path, "")

    def _restore(self, page: "TroublePage", shop: Path, copy: Path) -> None:
        """Go back to a copy of a shop; the present file is kept aside, the shop opened again."""
        from chargebench.ledger import restore

        page.finish()
        if self.desk is not None:
            self._window.flush()
            self.desk.close()
        try:
            aside = restore(shop, copy)
        except ChargebenchError as refusal:
            page.refuse(str(refusal))
            if self.desk is not None:
                self._open_file(shop)
                self._window.tell(str(refusal))
            return
        self._open_file(shop)
        kept = (
            say(" What was there before is kept as {aside}.", aside=aside)
            if aside is not None
            else ""
        )
        self._window.tell(
            say("{shop} is as it was in {copy}.{kept}", shop=shop, copy=copy.name, kept=kept)
        )

    def _take(self, desk: "Desk") -> None:
        self.desk = desk
        self._window.open_desk(desk)
        if desk.at_opening:
            self._window.tell(joined(" ", desk.at_opening))
        if desk.backup_waits:
            QTimer.singleShot(WARM_UP_MS, self._back_up)
        QTimer.singleShot(WARM_UP_MS, self._warm_up)

    def _backed_up(self, kept: Path | None) -> None:
        if kept is not None:
            self._window.say(say("Backed up: {kept}.", kept=kept))

    def _back_up(self) -> None:
        """Keep the backup of this opening, on a thread: the window does not wait for a copy."""
        from chargebench.ui.errand import Errand

        assert self.desk is not None
        errand = Errand(self.desk, lambda desk, _: desk.backup())
        errand.done.connect(self._backed_up)
        errand.refused.connect(self._window.tell)
        errand.begin()

    def _first_start(self, shop: Path) -> None:
        from chargebench.ui.firststart import FirstStart

        page = FirstStart(shop)
        page.made.connect(self._take)
        page.sample_wanted.connect(self._look_at_sample)
        self._window.show_page(page)
        page.make.setFocus()

    def _look_at_sample(self) -> None:
        self._window.waiting.setText(tr(SAMPLE))
        self._window.stack.setCurrentWidget(self._window.waiting)
        self._window.stack.repaint()
        QTimer.singleShot(PAINT_MS, self._open_sample)

    def _open_sample(self) -> None:
        from chargebench.desk import sample, where

        try:
            self._take(sample.open_or_build(where.sample_file()))
        except ChargebenchError as refusal:
            self._window.tell(str(refusal))

    def _warm_up(self) -> None:
        from chargebench import fluids
        from chargebench.ui import decay_plot

        fluids.warm_up()
        decay_plot.load()


def run(shop: "Shop" = None) -> int:
    """Show the window until it is closed.

    `shop` is an open desk, a shop, what opens one once the shell is shown, or None for this
    person's own shop.
    """
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    app.setApplicationName("chargebench")
    language.speak(language.chosen())
    theme.apply_chosen(app)
    window = MainWindow()
    theme.follow_system(app, window.restyle)
    start = _Start(window, shop)
    before = sys.excepthook
    sys.excepthook = trouble.hook(window.tell, trouble.default_log)
    try:
        window.show()
        return app.exec()
    finally:
        sys.excepthook = before
        start.finish()
