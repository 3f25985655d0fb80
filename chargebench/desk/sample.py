"""The sample shop: an invented business, built by taking in the sample job files."""

from pathlib import Path

from chargebench import jobfile
from chargebench.desk.export import Desk
from chargebench.errors import JobFileRefused
from chargebench.resource import sample_jobs
from chargebench.words import say


def open_or_build(path: Path) -> Desk:
    """The sample shop as it was left, or made now."""
    return Desk.open(path) if path.exists() else build(path)


def build(path: Path) -> Desk:
    """Make a new shop file from the sample job files, in the order of their names.

    Raises
    ------
    ShopFileRefused
        There is a file already, or none can be written there.
    """
    first, *others = sorted(sample_jobs().glob("*.json"))
    content = jobfile.read(first)
    people = content.register.get("person", {})
    if content.shop is None or not people:
        raise JobFileRefused(
            say("{first}: expected the shop and its people in the first file.", first=first.name)
        )
    person_id, person = next(iter(people.items()))
    desk = Desk.create(path, content.shop, person, person_id=person_id)
    try:
        for each in (first, *others):
            desk.take_in(each)
    except BaseException:
        desk.close()
        remove(path)  # half made it would be taken for the whole next time
        raise
    return desk


def remove(path: Path) -> None:
    """Remove a sample shop, with what SQLite keeps beside it."""
    for each in (path, Path(f"{path}-wal"), Path(f"{path}-shm")):
        each.unlink(missing_ok=True)
