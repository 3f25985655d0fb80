"""The exception tree: refusals a user can act on; a bug is an assert and is logged."""

from collections.abc import Mapping

from chargebench.words import joined, say


class ChargebenchError(Exception):
    """A refusal: its text says what was expected and, where it helps, what to do next."""

    def __str__(self) -> str:
        """The text as it was said, so that the window can translate it."""
        says = self.args[0] if self.args else ""
        return says if isinstance(says, str) else super().__str__()


class ReadingRefused(ChargebenchError):
    """Typed text that is not the reading asked for."""


class SeriesRefused(ReadingRefused):
    """Pasted or filed text that is not two columns of time and reading; names the line."""


class UnknownRefrigerant(ChargebenchError):
    """A refrigerant that is not in the catalogue."""


class OutsideDomain(ChargebenchError):
    """A state outside the limits within which a property curve or formula holds."""


class PropertiesUnavailable(ChargebenchError):
    """The property process did not answer; what can be said without it is said."""


class RuleSetRefused(ChargebenchError):
    """A rule-set file that can not be used; names the file and the place in it."""


class ShopFileRefused(ChargebenchError):
    """A shop file that can not be opened as one: newer, damaged, locked, or something else."""


class PostingRefused(ChargebenchError):
    """An entry the ledger does not take; nothing was recorded."""


class Overdrawn(PostingRefused):
    """More taken from a cylinder than it holds."""


class WrongRefrigerant(PostingRefused):
    """A refrigerant put into a cylinder that holds another."""


class Overfilled(PostingRefused):
    """A cylinder filled above its limit without a reasoned override."""


class JobClosed(PostingRefused):
    """An entry for a job that is closed."""


class UnknownJob(PostingRefused):
    """An entry for a job that the ledger does not know, or that does not fit the job's state."""


class AlreadyRecorded(PostingRefused):
    """An id that already stands for a different entry."""


class NotReversible(PostingRefused):
    """A reversal of what is not there, is already reversed, or is corrected in another way."""


class StorageRefused(PostingRefused):
    """The disk or the file did not take it: full, locked, read-only; nothing was recorded."""


class ServerGone(StorageRefused, ShopFileRefused):
    """The server of the shop does not answer; says whether what was asked of it is recorded."""


class StepRefused(ChargebenchError):
    """A form that can not be signed yet; `fields` has a sentence for each field's path."""

    def __init__(self, title: str, fields: Mapping[str, str]) -> None:
        self.fields = dict(fields)
        super().__init__(say("{title}: {fields}", title=title, fields=joined(" ", fields.values())))


class NotAllowed(ChargebenchError):
    """An act that the role of the person who works does not have; says who may do it."""


class SignatureLocked(ChargebenchError):
    """A signature that takes the person's passphrase first; nothing was recorded."""


class PassphraseRefused(ChargebenchError):
    """A passphrase that is not the person's, or can not be one; `wait_seconds` until the next."""

    def __init__(self, says: str, wait_seconds: int = 0) -> None:
        self.wait_seconds = wait_seconds
        super().__init__(says)


class JobFileRefused(ChargebenchError):
    """A job file that can not be taken in; names the place in it."""


class ChainFileRefused(ChargebenchError):
    """A chain file that can not be taken in, whole; nothing of it was."""


class ChainFileWaits(ChainFileRefused):
    """A chain file that goes on from entries not known here; the file with them comes first."""


class PictureRefused(ChargebenchError):
    """What was to be attached is no photo, or has no caption."""


class ExportRefused(ChargebenchError):
    """An export that could not be written, or was cancelled."""


class PressureTooHigh(ChargebenchError):
    """A test pressure above the lowest design pressure of the equipment, or with none known."""
