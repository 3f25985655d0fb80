"""What is known of a job's photos: the entries that attached them, and what stands on them."""

from dataclasses import dataclass
from datetime import datetime

from chargebench.ledger import Entry

PICTURE = "picture"  # kind of the entry that attaches one


@dataclass(frozen=True, slots=True)
class PhotoLine:
    """A photo of a job."""

    entry: str
    number: int
    step: str
    caption: str
    picture: str  # hash it is kept under
    by: str
    at: datetime


def as_line(entry: Entry) -> PhotoLine:
    """The photo that an entry attached."""
    said = entry.payload
    return PhotoLine(
        entry=entry.id,
        number=entry.number,
        step=str(said["at_step"]),
        caption=str(said["caption"]),
        picture=str(said["picture"]),
        by=entry.by,
        at=entry.happened_at,
    )
