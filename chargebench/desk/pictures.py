"""Photos of a job: nameplate, leak, label. Kept by their hash, named by an entry each."""

import hashlib
from pathlib import Path

from chargebench.desk.handover import HandOver
from chargebench.desk.photos import PICTURE, PhotoLine, as_line
from chargebench.errors import ChargebenchError, PictureRefused
from chargebench.ledger import Entry, Picture
from chargebench.words import say

FILE_MOST = 60_000_000  # bytes: above any camera's JPEG
CAPTION_MOST = 300  # letters


class Pictures(HandOver):
    """Attaches photos to the steps of a job and gives them back."""

    def attach_file(self, job: str, step: str, path: Path, caption: str) -> Entry:
        """Attach a photo from a file.

        Raises
        ------
        PictureRefused
            It can not be read, or is no photo.
        """
        try:
            if path.stat().st_size > FILE_MOST:
                raise PictureRefused(
                    say(
                        "{name} is larger than any photo; a picture of at most {most} MB was "
                        "expected.",
                        name=path.name,
                        most=FILE_MOST // 1_000_000,
                    )
                )
            content = path.read_bytes()
        except OSError as problem:
            raise PictureRefused(
                say("{name} can not be read ({why}).", name=path.name, why=str(problem.strerror))
            ) from problem
        return self.attach(job, step, content, caption, name=path.name)

    def attach(self, job: str, step: str, content: bytes, caption: str, *, name: str = "") -> Entry:
        """Attach a photo; what is kept is upright, of print size, and without the camera's notes.

        The entry names the hash of what is kept and of the file as it came.

        Raises
        ------
        PictureRefused
            No photo, or a caption is missing.
        PostingRefused
            The job is closed.
        """
        from chargebench.reports.photos import prepared  # brings an image library

        words = caption.strip()
        if not words or len(words) > CAPTION_MOST:
            raise PictureRefused(
                say(
                    "Expected what the photo shows, in at most {most} letters, such as: Nameplate.",
                    most=CAPTION_MOST,
                )
            )
        media, kept = prepared(content)
        picture = Picture(media, kept)
        payload = {
            "at_step": step,
            "caption": words,
            "picture": picture.hash,
            "media": media,
            "bytes": len(kept),
            "file": Path(name).name[:200],
            "file_sha256": hashlib.sha256(content).hexdigest(),
        }
        entry = self._post(PICTURE, payload, job=job, picture=picture)
        self._changed(job)
        return entry

    def photos(self, job: str) -> list[PhotoLine]:
        """The photos of a job in the order they were attached; those taken back are left out."""
        lines = [as_line(entry) for entry in self.reading.entries(job=job, kind=PICTURE)]
        gone = self.reading.reversals_of([line.entry for line in lines])
        return [line for line in lines if line.entry not in gone]

    def photo(self, line: PhotoLine) -> bytes:
        """The file of a photo.

        Raises
        ------
        ChargebenchError
            It was kept at another bench.
        """
        found = self.reading.picture(line.picture)
        if found is None:
            raise ChargebenchError(
                say(
                    "The photo of entry {number} is kept at the bench that attached it; its hash "
                    "is on record here.",
                    number=line.number,
                )
            )
        return found.content
