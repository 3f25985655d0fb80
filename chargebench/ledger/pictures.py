"""Pictures kept under the SHA-256 of their content: entries name the hash, so a change shows."""

import hashlib
from dataclasses import dataclass

from sqlalchemy import Connection, select

from chargebench.ledger import schema
from chargebench.ledger.entry import now_text


@dataclass(frozen=True, slots=True)
class Picture:
    """A picture as it is kept."""

    media: str  # image/jpeg
    content: bytes

    @property
    def hash(self) -> str:
        """What it is kept and named under."""
        return hashlib.sha256(self.content).hexdigest()


def keep(connection: Connection, picture: Picture) -> None:
    """Keep a picture once, however often it is attached."""
    table, name = schema.picture, picture.hash
    known = select(table.c.hash).where(table.c.hash == name)
    if connection.execute(known).first() is None:
        row = {"hash": name, "media": picture.media, "content": picture.content}
        connection.execute(table.insert(), {**row, "kept_at": now_text()})


def find(connection: Connection, name: str) -> Picture | None:
    """The picture of a hash, or None: those of other benches stay there."""
    table = schema.picture
    row = connection.execute(
        select(table.c.media, table.c.content).where(table.c.hash == name)
    ).first()
    return None if row is None else Picture(*row)
