"""What unlocks a person's signature: hashes, and the wait that grows with wrong tries.

Neither passphrase nor hash goes into an entry: a hash of four digits in every export could be
guessed at leisure. What is chained is that somebody set one, for whom and when.
"""

import unicodedata
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta

from sqlalchemy import Connection, select, update

from chargebench.errors import PassphraseRefused
from chargebench.ledger import dialect, schema
from chargebench.ledger.entry import moment_text
from chargebench.words import say

SET = "passphrase-set"  # kind of the entry that says one was set
SHORTEST, LONGEST = 4, 200
TRIES_FREE = 3  # wrong tries before a wait; people mistype with gloves on
# Doubling from five seconds to a quarter of an hour, four digits take a hundred days to try out,
# and a prank does not cost a bench its day.
WAIT_SECONDS, WAIT_SECONDS_MOST = 5, 900

_PUT = dialect.put(schema.passphrase)


@dataclass(frozen=True, slots=True, repr=False)
class Kept:
    """A person's row: the hash, when it was set, and the wrong tries since the last right one."""

    person: str
    hash: str
    set_at: str
    failures: int = 0
    failed_at: str | None = None


def read(connection: Connection, person: str) -> Kept | None:
    """A person's row, or None where no passphrase was set."""
    table = schema.passphrase
    row = connection.execute(select(table).where(table.c.person == person)).first()
    return None if row is None else Kept(*row)


def holders(connection: Connection) -> frozenset[str]:
    """People who have set a passphrase."""
    return frozenset(connection.execute(select(schema.passphrase.c.person)).scalars())


def put(connection: Connection, kept: Kept) -> None:
    """Write a person's row."""
    connection.execute(
        _PUT,
        {
            "person": kept.person,
            "hash": kept.hash,
            "set_at": kept.set_at,
            "failures": kept.failures,
            "failed_at": kept.failed_at,
        },
    )


def begin_try(connection: Connection, person: str, at: datetime) -> tuple[Kept | None, int]:
    """A person's row and the seconds still to wait; where there are none, the try counts as wrong.

    It is counted before it is looked at, so that ending the program spares nobody the wait.
    """
    kept = read(connection, person)
    if kept is None:
        return None, 0
    left = seconds_left(kept, at)
    failed_at = moment_text(at.astimezone(UTC))
    if not left:
        kept = replace(kept, failures=kept.failures + 1, failed_at=failed_at)
        put(connection, kept)
    elif datetime.fromisoformat(str(kept.failed_at)) > at:  # the clock was put back since
        put(connection, replace(kept, failed_at=failed_at))
    return kept, left


def forget_tries(connection: Connection, kept: Kept) -> None:
    """Count from nothing after a right try; a passphrase set anew meanwhile stays as it is."""
    table = schema.passphrase
    same = (table.c.person == kept.person, table.c.hash == kept.hash)
    connection.execute(update(table).where(*same).values(failures=0, failed_at=None))


def wait_seconds(failures: int) -> int:
    """How long to wait after so many wrong tries in a row."""
    if failures < TRIES_FREE:
        return 0
    doubled: int = WAIT_SECONDS * 2 ** min(failures - TRIES_FREE, 20)
    return min(doubled, WAIT_SECONDS_MOST)


def seconds_left(kept: Kept, at: datetime) -> int:
    """Whole seconds until the next try is looked at; 0 where there is no wait."""
    if kept.failed_at is None:
        return 0
    since = max(at - datetime.fromisoformat(kept.failed_at), timedelta())
    left = wait_seconds(kept.failures) - since.total_seconds()
    return max(0, int(-(-left // 1)))


def wait_words(seconds: int) -> str:
    """Why a try is not looked at, and for how long."""
    if seconds == 1:
        return "Too many wrong tries. Try again in 1 second."
    return say("Too many wrong tries. Try again in {seconds} seconds.", seconds=seconds)


def hashed(passphrase: str) -> str:
    """Argon2id hash with the library's own parameters, which are kept in it.

    Raises
    ------
    PassphraseRefused
        Too short or too long to be one.
    """
    from argon2 import PasswordHasher  # 17 ms that only an unlocking bench needs

    plain = _plain(passphrase)
    if not SHORTEST <= len(plain) <= LONGEST:
        raise PassphraseRefused(
            say(
                "Expected a PIN or passphrase of {shortest} to {longest} characters.",
                shortest=SHORTEST,
                longest=LONGEST,
            )
        )
    return PasswordHasher().hash(plain)


def matches(kept: Kept, passphrase: str) -> bool:
    """Whether this is the passphrase that was set; takes about a tenth of a second."""
    from argon2 import PasswordHasher
    from argon2.exceptions import InvalidHashError, VerificationError

    try:
        return PasswordHasher().verify(kept.hash, _plain(passphrase))
    except (InvalidHashError, VerificationError):
        return False


def _plain(passphrase: str) -> str:
    """One writing of a text: keyboards differ in how they put an accent on a letter."""
    return unicodedata.normalize("NFC", passphrase)[: LONGEST + 1]
