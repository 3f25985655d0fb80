"""Put a backup in the place of a shop file; the present file is kept aside."""

from pathlib import Path

from chargebench.errors import ShopFileRefused
from chargebench.ledger import backup, dialect
from chargebench.ledger.migrations import STEPS
from chargebench.ledger.shopfile import refusing


def restore(path: Path | str, copy: Path | str) -> Path | None:
    """Restore a copy; gives back where the present file went, or None if there was none.

    Nobody may have the shop file open.
    """
    path, copy = Path(path), Path(copy)
    dialect.check_header(copy)
    half = path.with_name(path.name + ".new")
    try:
        backup.remove(half)
        _copy_sound(copy, half)
        if path.exists() and not dialect.alone(path):
            raise ShopFileRefused(
                f"{path} is open in another window. Close it there, then restore again."
            )
        aside = _set_aside(path)
        half.replace(path)
        backup.settle_folder(path.parent)
    except OSError as problem:
        raise ShopFileRefused(
            f"{copy} could not be restored: {problem.strerror}. The present file is kept as "
            f"{path} or beside it under a name with “aside”."
        ) from problem
    finally:
        backup.remove(half)
    return aside


def _copy_sound(copy: Path, half: Path) -> None:
    """Copy a backup that this program can open and whose pages are sound."""
    engine = dialect.engine(copy, writing=False)
    try:
        with refusing(copy), engine.connect() as connection:
            with connection.begin():
                version = dialect.pragma(connection, "user_version")
                damage = dialect.damage(connection)
            if version > len(STEPS):
                raise ShopFileRefused(
                    f"{copy} was made by a newer chargebench. Install the newer program."
                )
            if damage:
                raise ShopFileRefused(f"{copy} is damaged ({damage[0]}). Choose another backup.")
            dialect.copy_into(connection, half)
    finally:
        engine.dispose()
    backup.settle(half)


def _set_aside(path: Path) -> Path | None:
    if not path.exists():
        return None
    aside = path.with_name(f"{path.name}-aside-{backup.stamp()}")
    for ending in backup.BESIDE:
        part = path.with_name(path.name + ending)
        if part.exists():
            part.rename(aside.with_name(aside.name + ending))
    return aside
