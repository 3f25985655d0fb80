"""Photos as they are set on paper: upright, not larger than print needs, without transparency."""

from collections.abc import Sequence
from dataclasses import dataclass
from io import BytesIO

from PIL import Image as Pixels
from PIL import ImageOps

from chargebench.errors import PictureRefused
from chargebench.reports.drawn import Image
from chargebench.reports.page import GREY, Page

_FORMATS = ("JPEG", "PNG", "WEBP", "TIFF", "GIF")  # decoders that many programs rely on
_KEPT_PX = 1600  # longer side: a nameplate stays readable, a job's photos stay under a megabyte
_MOST_PX = 1100  # longer side: 300 dots an inch at 90 mm
_TALL, _GAP = 52.0, 4.0  # mm


@dataclass(frozen=True, slots=True)
class Photo:
    """A picture of a job: what it shows, its media type, the file."""

    caption: str
    media: str
    content: bytes


def prepared(content: bytes) -> tuple[str, bytes]:
    """A photo as it is kept: media type and file, upright, of print size, no camera notes in it.

    Raises
    ------
    PictureRefused
        It is no picture that can be read.
    """
    made = _jpeg(content, _KEPT_PX)
    if made is None:
        raise PictureRefused("Expected a photo as JPEG, PNG, WebP, TIFF or GIF; this is none.")
    return "image/jpeg", made[0]


def draw_photos(page: Page, photos: Sequence[Photo]) -> None:
    """Photos two beside each other, each with its caption; what is none is said."""
    room = (page.across - _GAP) / 2
    for first in range(0, len(photos), 2):
        row = [(photo, _jpeg(photo.content, _MOST_PX)) for photo in photos[first : first + 2]]
        pictures = [made for _, made in row if made is not None]
        tall = max((min(_TALL, room * high / wide) for _, wide, high in pictures), default=0.0)
        words = max(page.height_of(photo.caption, room, page.small) for photo, _ in row)
        page.need(tall + words + 2)
        top = page.y
        for place, (photo, made) in enumerate(row):
            x = page.left + place * (room + _GAP)
            says = photo.caption
            if made is None:
                says += f" (no picture that can be printed: {photo.media})"
            else:
                jpeg, wide, high = made
                scale = min(room / wide, _TALL / high)
                page.mark(Image(x, top, wide * scale, high * scale, jpeg))
            below = page.block(x, top + tall + 0.6, room, says, page.small, grey=GREY)
            page.y = max(page.y, below)
        page.y += 1.5


def _jpeg(content: bytes, most_px: int) -> tuple[bytes, int, int] | None:
    """A picture as JPEG with its size in pixels; None where it can not be read."""
    try:
        with Pixels.open(BytesIO(content), formats=_FORMATS) as opened:
            upright = ImageOps.exif_transpose(opened)
            upright.thumbnail((most_px, most_px))
            paper = Pixels.new("RGB", upright.size, "white")
            paper.paste(upright, mask=upright if upright.mode in ("RGBA", "LA") else None)
    except (OSError, ValueError, SyntaxError, Pixels.DecompressionBombError):
        return None
    jpeg = BytesIO()
    paper.save(jpeg, "JPEG", quality=85)
    return jpeg.getvalue(), paper.width, paper.height
