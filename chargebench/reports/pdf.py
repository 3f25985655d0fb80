"""A drawn paper as a PDF file that can be kept: PDF/A-1b, everything it needs inside.

The library embeds the fonts and the colour profile sRGB2014 of the International Color Consortium,
which may be copied, embedded and sold without restriction; what is checked is in the tests.
"""

import os
from datetime import UTC
from functools import singledispatch
from html import escape
from io import BytesIO
from pathlib import Path

from fpdf import FPDF
from fpdf.enums import DocumentCompliance

from chargebench.errors import ExportRefused
from chargebench.reports.drawn import Box, Drawn, Image, Ring, Stroke, Words
from chargebench.reports.letters import FACES, FONT
from chargebench.resource import resource

KEPT_AS = DocumentCompliance.PDFA_1B


def as_pdf(drawn: Drawn) -> bytes:
    """The file's bytes; the same paper makes the same bytes."""
    pdf = FPDF(format=(drawn.width, drawn.height), enforce_compliance=KEPT_AS)
    try:
        pdf.set_auto_page_break(auto=False)
        pdf.set_margin(0)
        for bold, file in FACES.items():
            pdf.add_font(FONT, "B" if bold else "", resource("fonts", file))
        pdf.set_title(drawn.title)
        pdf.set_creator(drawn.program)
        pdf.set_producer(drawn.program)
        pdf.set_creation_date(drawn.made_at)
        pdf.set_lang("en")
        pdf.set_xmp_metadata(_described(drawn))
        for marks in drawn.pages:
            pdf.add_page()
            for mark in marks:
                _draw(mark, pdf)
        return bytes(pdf.output())
    finally:
        for font in pdf.fonts.values():
            font.close()  # the library leaves font files open for as long as it lives


def write(drawn: Drawn, path: Path) -> Path:
    """Write a paper as PDF: whole, or not at all.

    Raises
    ------
    ExportRefused
        It could not be written; then there is no file, or the one before.
    """
    part = path.with_name(f".{path.name}.part")
    try:
        with part.open("wb") as file:
            file.write(as_pdf(drawn))
            file.flush()
            os.fsync(file.fileno())
        part.replace(path)
    except OSError as refusal:
        reason = refusal.strerror or str(refusal)
        raise ExportRefused(f"{drawn.title} could not be written to {path}: {reason}.") from None
    finally:
        part.unlink(missing_ok=True)
    return path


def _described(drawn: Drawn) -> str:
    """The description inside the file, which PDF/A wants to say what the file's own head says."""
    made = drawn.made_at.astimezone(UTC).isoformat(timespec="seconds")
    title, program = escape(drawn.title), escape(drawn.program)
    return f"""<x:xmpmeta xmlns:x="adobe:ns:meta/">
  <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
    <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
        xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
        xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
      <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
      <xmp:CreatorTool>{program}</xmp:CreatorTool>
      <xmp:CreateDate>{made}</xmp:CreateDate>
      <pdf:Producer>{program}</pdf:Producer>
      <pdfaid:part>{KEPT_AS.part}</pdfaid:part>
      <pdfaid:conformance>{KEPT_AS.conformance}</pdfaid:conformance>
    </rdf:Description>
  </rdf:RDF>
</x:xmpmeta>"""


@singledispatch
def _draw(mark: object, _: FPDF) -> None:
    raise TypeError(mark)


@_draw.register
def _(mark: Words, pdf: FPDF) -> None:
    pdf.set_font(FONT, "B" if mark.bold else "", mark.size)
    pdf.set_text_color(mark.grey)
    pdf.text(mark.x, mark.y, mark.text)


@_draw.register
def _(mark: Stroke, pdf: FPDF) -> None:
    pdf.set_line_width(mark.width)
    pdf.set_draw_color(mark.grey)
    pdf.set_dash_pattern(mark.dash, mark.dash)
    pdf.polyline(mark.points)


@_draw.register
def _(mark: Box, pdf: FPDF) -> None:
    pdf.set_fill_color(mark.grey)
    pdf.rect(mark.x, mark.y, mark.width, mark.height, style="F")


@_draw.register
def _(mark: Ring, pdf: FPDF) -> None:
    pdf.set_line_width(0.25)
    pdf.set_draw_color(mark.grey)
    pdf.set_dash_pattern(0, 0)
    pdf.circle(mark.x, mark.y, mark.radius)


@_draw.register
def _(mark: Image, pdf: FPDF) -> None:
    pdf.image(BytesIO(mark.jpeg), mark.x, mark.y, mark.width, mark.height)
