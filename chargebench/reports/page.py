"""A PDF page: the embedded font, running head and foot, and the few ways text is set."""

from datetime import datetime
from typing import Self

from fpdf import FPDF
from fpdf.enums import XPos, YPos

from chargebench.resource import resource

FONT = "DejaVu"
BODY, SMALL, HEAD, TITLE = 9, 7, 11, 15  # points
MARGIN = 16  # mm
GREY, BLACK, RULE = 90, 0, 190  # grey levels
# What a font can not draw is shown as a box by the reader; control characters break lines apart.
_CONTROL = dict.fromkeys([*(set(range(0x20)) - {0x0A}), *range(0x7F, 0xA0)], " ")


class Page(FPDF):  # type: ignore[misc]  # the library is read without its types
    """A report's pages."""

    def __init__(self, *, title: str, head: str, foot: str, made_at: datetime, paper: str) -> None:
        super().__init__(format=paper)
        self._head, self._foot = head, foot
        self.set_margins(MARGIN, MARGIN)
        self.set_auto_page_break(auto=True, margin=22)
        self.add_font(FONT, "", resource("fonts", "DejaVuSans.ttf"))
        self.add_font(FONT, "B", resource("fonts", "DejaVuSans-Bold.ttf"))
        self.set_title(title)
        self.set_creation_date(made_at)
        self.set_lang("en")
        self.alias_nb_pages()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        """Close the font files, which the library leaves open for as long as the page lives."""
        for font in self.fonts.values():
            font.close()

    def header(self) -> None:
        """Running head."""
        self.face(SMALL, grey=GREY)
        self.cell(0, 4, plain(self._head), new_x=XPos.LMARGIN, new_y=YPos.NEXT)
        self.set_draw_color(RULE)
        self.line(self.l_margin, self.get_y() + 1, self.w - self.r_margin, self.get_y() + 1)
        self.ln(4)

    def footer(self) -> None:
        """Running foot with what this paper does not replace, and the page."""
        self.set_y(-17)
        self.face(SMALL, grey=GREY)
        self.set_draw_color(RULE)
        self.line(self.l_margin, self.get_y(), self.w - self.r_margin, self.get_y())
        self.ln(1.5)
        width = self.epw - 30
        self.multi_cell(width, 3.4, plain(self._foot), new_x=XPos.RIGHT, new_y=YPos.TOP, align="L")
        self.cell(30, 3.4, f"page {self.page_no()} of {{nb}}", align="R")

    def face(self, size: float, *, bold: bool = False, grey: int = BLACK) -> None:
        """Size, weight and grey of what follows."""
        self.set_font(FONT, "B" if bold else "", size)
        self.set_text_color(grey)

    def title_line(self, text: str) -> None:
        """A title."""
        self.face(TITLE, bold=True)
        self.paragraph(text, 7)

    def heading(self, text: str) -> None:
        """A heading that stays with what follows."""
        if self.get_y() > self.h - 50:
            self.add_page()
        self.ln(2.5)
        self.face(HEAD, bold=True)
        self.paragraph(text, 5.5)
        self.ln(0.5)
        self.face(BODY)

    def paragraph(self, text: str, height: float = 4.4) -> None:
        """Text over the whole width."""
        self.multi_cell(0, height, plain(text), new_x=XPos.LMARGIN, new_y=YPos.NEXT, align="L")

    def height_of(self, text: str, width: float, height: float) -> float:
        """Height a text takes in a width, in the face that is set."""
        taken = self.multi_cell(
            width, height, plain(text), align="L", dry_run=True, output="HEIGHT"
        )
        assert isinstance(taken, float | int)
        return float(taken)

    def block(self, x: float, y: float, width: float, text: str, height: float) -> float:
        """Text in a column; the y below it."""
        self.set_xy(x, y)
        self.multi_cell(width, height, plain(text), align="L", new_x=XPos.LMARGIN, new_y=YPos.NEXT)
        return float(self.get_y())


def plain(text: str) -> str:
    """Text without what can not be set in a line."""
    return text.translate(_CONTROL).encode("utf-8", "replace").decode()
