"""Laying out a paper: running head and foot, columns, tables, and where a page ends."""

from collections.abc import Callable, Iterable, Sequence
from datetime import datetime

from chargebench.reports.drawn import POINT_MM, Box, Drawn, Mark, Stroke, Words
from chargebench.reports.letters import lines, plain, step, width

PAPERS = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}  # mm: ISO 216; 8.5 x 11 in
BODY, SMALL, HEAD, TITLE = 9.0, 7.0, 11.0, 15.0  # points
MARGIN, FOOT_MM = 16.0, 20.0  # mm
GREY, BLACK, RULE, TINT = 90, 0, 190, 238  # grey levels
Fact = tuple[str, str, str]  # label, value, more about it
_LEAST = 6.4  # points: nothing is set smaller
_KEPT_MM = 60.0  # so much of a row is kept on one page; a longer one goes on over its end
_CELL_MM = 0.8  # above and below the words of a cell, together
_ASCENT = 1.08  # baseline below the top of a line, by the size of the letters


class Page:
    """The pages of a paper while they are laid out; `y` is where the next thing goes."""

    def __init__(self, *, paper: str, head: str, foot: str = "", body: float = BODY) -> None:
        self.wide, self.high = PAPERS[paper]
        self._head, self._foot = head, foot
        self.body = body
        self.small = max(SMALL * body / BODY, _LEAST)
        self.left, self.right = MARGIN, self.wide - MARGIN
        self._pages: list[list[Mark]] = []
        self.y = 0.0
        self.add_page()

    @property
    def across(self) -> float:
        """Width between the margins [mm]."""
        return self.right - self.left

    @property
    def bottom(self) -> float:
        """Where the foot begins [mm]."""
        return self.high - FOOT_MM

    @property
    def count(self) -> int:
        """How many pages there are."""
        return len(self._pages)

    def add_page(self) -> None:
        """Go on, on a new page."""
        self._pages.append([])
        self.y = MARGIN + 8

    def need(self, height: float) -> None:
        """Go on, on a new page where less than a height is left."""
        if self.y + height > self.bottom:
            self.add_page()

    def mark(self, *marks: Mark) -> None:
        """Put marks on the page."""
        self._pages[-1].extend(marks)

    def block(
        self,
        x: float,
        y: float,
        room: float,
        text: str,
        size: float = 0.0,
        *,
        bold: bool = False,
        grey: int = BLACK,
        right: bool = False,
    ) -> float:
        """Text in a column; the y below it."""
        size = size or self.body
        for line in lines(text, room, size, bold=bold):
            at = x + room - width(line, size, bold=bold) if right else x
            self.mark(Words(at, y + size * POINT_MM * _ASCENT, line, size, bold, grey))
            y += step(size)
        return y

    def height_of(self, text: str, room: float, size: float = 0.0, *, bold: bool = False) -> float:
        """Height a text takes in a column."""
        size = size or self.body
        return len(lines(text, room, size, bold=bold)) * step(size)

    def paragraph(
        self, text: str, size: float = 0.0, *, bold: bool = False, grey: int = BLACK
    ) -> None:
        """Text over the whole width, going on over the page's end."""
        size = size or self.body
        for line in lines(text, self.across, size, bold=bold):
            self.need(step(size))
            self.y = self.block(
                self.left, self.y, self.across + 1, line, size, bold=bold, grey=grey
            )

    def title_line(self, text: str) -> None:
        """A title."""
        self.paragraph(text, TITLE, bold=True)

    def heading(self, text: str, *, keep: float = 16.0) -> None:
        """A heading that stays with what follows."""
        self.need(keep)
        self.y += 1.8
        self.paragraph(text, HEAD * self.body / BODY, bold=True)
        self.y += 0.4

    def bullet(self, sentence: str) -> None:
        """A sentence of a list."""
        self.need(self.height_of(sentence, self.across - 5))
        self.block(self.left, self.y, 5, "•")
        self.y = self.block(self.left + 5, self.y, self.across - 5, sentence) + 0.5

    def facts(self, rows: Sequence[Fact], *, label: float = 54.0) -> None:
        """Rows of label, value, and more about it in small type."""
        room = self.across - label - 2
        for name, value, more in rows:
            parts = [(line, self.body, BLACK) for line in lines(value, room, self.body)]
            if more:
                parts += [(line, self.small, GREY) for line in lines(more, room, self.small)]
            self.need(min(sum(step(size) for _, size, _ in parts), _KEPT_MM))
            below = self.block(self.left, self.y, label, name, grey=GREY)
            here = self.count
            for line, size, grey in parts:  # a long text goes on over the page's end
                self.need(step(size))
                self.y = self.block(self.left + label + 2, self.y, room + 1, line, size, grey=grey)
            self.y = (max(below, self.y) if here == self.count else self.y) + 0.7

    def facts_beside(self, one: Sequence[Fact], other: Sequence[Fact], *, label: float) -> None:
        """Two columns of facts; below each other where they are long."""
        half = self.across / 2 - 3
        room = half - label - 2
        tall = max(
            sum(max(self.height_of(value, room), step(self.body)) + 0.7 for _, value, _ in rows)
            for rows in (one, other)
        )
        if tall > self.bottom - self.y - 30:
            self.facts((*one, *other))
            return
        top, lowest = self.y, self.y
        for x, rows in ((self.left, one), (self.left + half + 6, other)):
            y = top
            for name, value, _ in rows:
                below = self.block(x, y, label, name, grey=GREY)
                y = max(below, self.block(x + label + 2, y, room, value)) + 0.7
            lowest = max(lowest, y)
        self.y = lowest

    def table(
        self,
        heads: Sequence[str],
        rows: Sequence[Sequence[str]],
        shares: Sequence[float],
        *,
        right: Sequence[int] = (),
        size: float = 0.0,
    ) -> None:
        """Rows under heads; the heads again on each page. Shares are of the width."""
        size = size or self.body - 1
        widths = [self.across * share / sum(shares) for share in shares]
        top = _broken(heads, widths, size, bold=True)
        self._row(top, widths, right, size, bold=True)
        for row in rows:
            cells = _broken(row, widths, size, bold=False)
            if self.y + min(_tall(cells, size), _KEPT_MM) > self.bottom:
                self.add_page()
                self._row(top, widths, right, size, bold=True)
            while True:  # a cell taller than a page goes on over its end
                fits = max(int((self.bottom - self.y - _CELL_MM) / step(size) + 1e-6), 1)
                self._row([cell[:fits] for cell in cells], widths, right, size, bold=False)
                cells = [cell[fits:] for cell in cells]
                if not any(cells):
                    break
                self.add_page()
                self._row(top, widths, right, size, bold=True)
        self.y += 0.8

    def _row(
        self,
        cells: Sequence[Sequence[str]],
        widths: Sequence[float],
        right: Sequence[int],
        size: float,
        *,
        bold: bool,
    ) -> None:
        tall = _tall(cells, size)
        if bold:
            self.mark(Box(self.left, self.y, self.across, tall, TINT))
        x = self.left
        for place, (cell, room) in enumerate(zip(cells, widths, strict=True)):
            says, at_right = "\n".join(cell), place in right
            self.block(x + 1, self.y + 0.4, room - 2, says, size, bold=bold, right=at_right)
            x += room
        self.y += tall
        self.rule(self.left, self.right, self.y)

    def rule(self, x: float, to: float, y: float, grey: int = RULE) -> None:
        """A thin line across."""
        self.mark(Stroke(((x, y), (to, y)), 0.15, grey))

    def sign_here(self, *whom: str) -> None:
        """Lines to sign on, beside each other."""
        self.need(15)
        self.y += 9
        room = self.across / len(whom)
        for place, words in enumerate(whom):
            x = self.left + place * room
            self.rule(x, x + room - 6, self.y, BLACK)
            self.block(x, self.y + 0.5, room - 6, words, self.small, grey=GREY)
        self.y += 5

    def finish(self, title: str, made_at: datetime, program: str) -> Drawn:
        """The paper, with head and foot on each page."""
        pages = tuple(
            (*self._top(), *marks, *self._bottom(number))
            for number, marks in enumerate(self._pages, 1)
        )
        return Drawn(plain(title), self.wide, self.high, pages, made_at, program)

    def _top(self) -> tuple[Mark, ...]:
        head = lines(self._head, self.across, SMALL)[0]
        rule = Stroke(((self.left, MARGIN + 4.5), (self.right, MARGIN + 4.5)), 0.15, RULE)
        return Words(self.left, MARGIN + 2.6, head, SMALL, grey=GREY), rule

    def _bottom(self, number: int) -> tuple[Mark, ...]:
        y = self.high - 17
        says = f"page {number} of {self.count}"
        marks: list[Mark] = [Stroke(((self.left, y), (self.right, y)), 0.15, RULE)]
        for place, line in enumerate(lines(self._foot, self.across - 30, SMALL)):
            at = y + 4 + place * step(SMALL)
            marks.append(Words(self.left, at, line, SMALL, grey=GREY))
        x = self.right - width(says, SMALL)
        return (*marks, Words(x, y + 4, says, SMALL, grey=GREY))


def _broken(
    cells: Sequence[str], widths: Sequence[float], size: float, *, bold: bool
) -> list[list[str]]:
    """The lines of each cell."""
    return [
        lines(cell, room - 2, size, bold=bold) for cell, room in zip(cells, widths, strict=True)
    ]


def _tall(cells: Sequence[Sequence[str]], size: float) -> float:
    return _CELL_MM + max(len(cell) for cell in cells) * step(size)


def fewest(lay_out: Callable[[float], Page], sizes: Iterable[float]) -> Page:
    """A paper in the first of some sizes of text, or in a later one where that saves a page."""
    page: Page | None = None
    for size in sizes:
        if page is None or page.count > 1:
            tried = lay_out(size)
            page = tried if page is None or tried.count < page.count else page
    assert page is not None
    return page
