"""A PDF read back: its text, and what ISO 19005-1 asks of a file that is to be kept."""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

from pypdf import PdfReader
from pypdf.generic import ContentStream, DictionaryObject, IndirectObject, NameObject

from chargebench.reports.drawn import POINT_MM, Words
from chargebench.reports.letters import width

# ISO 216: A4 is 210 x 297 mm. ANSI Y14.1: Letter is 8.5 x 11 in. A point is 1/72 in.
POINTS = {"A4": (595.28, 841.89), "Letter": (612.0, 792.0)}


def text_of(path: Path) -> str:
    """All text, with single spaces."""
    pages = (page.extract_text() for page in PdfReader(path).pages)
    return " ".join(" ".join(pages).split())


def boxes(path: Path) -> set[tuple[float, float]]:
    """Sizes of the pages in points."""
    found = (page.mediabox for page in PdfReader(path).pages)
    return {(float(box.width), float(box.height)) for box in found}


def overlaps(words: list[Words]) -> list[tuple[str, str]]:
    """Lines of text that lie over each other."""
    found = []
    shown = [each for each in words if each.text.strip()]
    for place, one in enumerate(shown):
        for other in shown[place + 1 :]:
            if abs(one.y - other.y) >= min(one.size, other.size) * POINT_MM * 0.95:
                continue
            if _end(one) > other.x + 0.01 and _end(other) > one.x + 0.01:
                found.append((one.text, other.text))
    return found


def _end(words: Words) -> float:
    return words.x + width(words.text, words.size, bold=words.bold)


def faults(path: Path) -> list[str]:
    """What is not as ISO 19005-1 (PDF/A-1), level B, asks, as far as it can be read with pypdf.

    The clauses are named from memory of the standard; a validator such as veraPDF looks at more
    (glyph widths, the fonts' own tables), and none is to be had from the package registries.
    """
    reader = PdfReader(path)
    content = path.read_bytes()
    return [
        *_file(reader, content),
        *_metadata(reader),
        *_colour(reader),
        *(fault for page in reader.pages for fault in _page(reader, page)),
        *_objects(reader),
    ]


def _file(reader: PdfReader, content: bytes) -> Iterator[str]:
    if not content.startswith(b"%PDF-1.4"):
        yield "6.1.2: the file's head is not %PDF-1.4"
    second = content.split(b"\n", 2)[1]
    if not (second.startswith(b"%") and sum(byte > 127 for byte in second[1:5]) == 4):
        yield "6.1.2: no comment of four bytes above 127 after the head"
    if len(reader.trailer.get("/ID", ())) != 2:
        yield "6.1.3: no file ID"
    if "/Encrypt" in reader.trailer:
        yield "6.1.3: encrypted"


def _metadata(reader: PdfReader) -> Iterator[str]:
    kept, head = reader.xmp_metadata, reader.metadata
    raw = reader.root_object.get("/Metadata")
    if kept is None or raw is None:
        yield "6.7.2: no metadata"
        return
    if "/Filter" in raw.get_object():
        yield "6.7.2: the metadata is compressed"
    said = raw.get_object().get_data().decode()
    for words in ("<pdfaid:part>1</pdfaid:part>", "<pdfaid:conformance>B</pdfaid:conformance>"):
        if words not in said:
            yield f"6.7.11: {words} is not said"
    if not (kept.dc_title or {}).get("x-default"):
        yield "6.7.2: the metadata has no title"
    if head is None:
        return  # it may be left out; where it is there, both must say the same
    pairs = {
        "title": (head.title, (kept.dc_title or {}).get("x-default")),
        "creator": (head.creator, kept.xmp_creator_tool),
        "producer": (head.producer, kept.pdf_producer),
    }
    for name, (one, other) in pairs.items():
        if one != other:
            yield f"6.7.3: {name} is {one!r} in the head and {other!r} in the metadata"
    made, described = head.creation_date, kept.xmp_create_date
    if made is None or described is None or made.timestamp() != described.timestamp():
        yield f"6.7.3: made {made} by the head, {described} by the metadata"


def _colour(reader: PdfReader) -> Iterator[str]:
    intents = reader.root_object.get("/OutputIntents", ())
    profiles = [
        each["/DestOutputProfile"].get_object()
        for each in (intent.get_object() for intent in intents)
        if each.get("/S") == "/GTS_PDFA1"
    ]
    if len(profiles) != 1:
        yield "6.2.2: not one output intent for PDF/A"
        return
    profile = profiles[0].get_data()
    # ICC.1, header: "acsp" at byte 36, class at 12, colour space at 16.
    if profile[36:40] != b"acsp" or profile[12:16] != b"mntr" or profile[16:20] != b"RGB ":
        yield "6.2.2: the profile is not one of a screen"
    if profiles[0]["/N"] != 3:
        yield "6.2.2: the profile's number of colours is wrong"


def _page(reader: PdfReader, page: DictionaryObject) -> Iterator[str]:
    group: Any = page.get("/Group", {})
    if group.get("/S") == "/Transparency":
        yield "6.4: a group with transparency"
    resources: Any = page["/Resources"]
    for font in resources.get("/Font", {}).values():
        yield from _font(font.get_object())
    for state in resources.get("/ExtGState", {}).values():
        given = state.get_object()
        if any(given.get(key, 1) != 1 for key in ("/CA", "/ca")) or "/SMask" in given:
            yield "6.4: transparency"
    used = {operator for _, operator in ContentStream(page["/Contents"], reader).operations}
    for operator in (b"k", b"K"):
        if operator in used:
            yield "6.2.3: a colour of print beside a profile of a screen"


def _font(font: Any) -> Iterator[str]:
    name = font["/BaseFont"]
    inner = font.get("/DescendantFonts", [font])[0].get_object()
    described = inner.get("/FontDescriptor", DictionaryObject()).get_object()
    if "/FontFile2" not in described:
        yield f"6.3.4: {name} is not inside the file"
    if "/CIDSet" not in described:
        yield f"6.3.5: {name} is a part of a font and does not say which"
    if inner.get("/CIDToGIDMap") is None:
        yield f"6.3.3: {name} does not say which glyph is which"
    if "/ToUnicode" not in font:
        yield f"{name} can not be searched"


def _objects(reader: PdfReader) -> Iterator[str]:
    forbidden = {"/JavaScript", "/Launch", "/Movie", "/Sound", "/ResetForm", "/ImportData"}
    for number in range(1, len(reader.xref.get(0, {})) + 1):
        try:
            found = reader.get_object(IndirectObject(number, 0, reader))
        except KeyError:
            continue
        if not isinstance(found, DictionaryObject):
            continue
        if found.get("/S") in forbidden or "/AA" in found:
            yield f"6.6.1: an action in object {number}"
        if found.get("/Subtype") == NameObject("/Image"):
            if "/SMask" in found:
                yield f"6.4: a picture with transparency, object {number}"
            if found.get("/Interpolate"):
                yield f"6.2.4: an interpolated picture, object {number}"
        if found.get("/Filter") == "/LZWDecode" or ("/F" in found and "/Length" in found):
            yield f"6.1.7: object {number} is packed as PDF/A does not allow"
