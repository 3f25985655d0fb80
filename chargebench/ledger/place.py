"""Where a shop is: a file, or an address on a PostgreSQL server whose password is never shown."""

from dataclasses import dataclass, field
from pathlib import Path
from urllib.parse import parse_qs, quote, unquote, urlsplit

from chargebench.errors import ShopFileRefused
from chargebench.words import say

SCHEMES = ("postgresql", "postgres")
_EXPECTED = "An address such as postgresql://login@server/database was expected"


@dataclass(frozen=True, slots=True)
class Address:
    """A shop on a server; as text it is who, where and which, and nothing else of the address."""

    full: str = field(repr=False)
    login: str
    host: str
    database: str

    @classmethod
    def of(cls, text: str) -> "Address":
        """Take an address apart; what is shown of it later has no password.

        Raises
        ------
        ShopFileRefused
            It names no database, or can not be taken apart.
        """
        try:
            parts = urlsplit(text)
            port = f":{parts.port}" if parts.port else ""
        except ValueError as problem:
            raise ShopFileRefused(
                say("{expected}; this one can not be read.", expected=_EXPECTED)
            ) from problem
        database = unquote(parts.path.removeprefix("/"))
        if not database or "/" in database:
            raise ShopFileRefused(
                say("{expected}; this one names no database.", expected=_EXPECTED)
            )
        named = {key: values[-1] for key, values in parse_qs(parts.query).items()}
        host = unquote(parts.hostname or "") or named.get("host", "this computer")
        login = unquote(parts.username or "") or named.get("user", "")
        return cls(text, login, f"{host}{port}", database)

    def __str__(self) -> str:
        who = f"{self.login}@" if self.login else ""
        return f"postgresql://{who}{self.host}/{self.database}"

    def of_login(self, login: str) -> str:
        """The address of the same shop for another login, to be shown."""
        return f"postgresql://{quote(login)}@{self.host}/{quote(self.database)}"


Place = Path | Address


def place_of(text: "Place | str") -> Place:
    """A file's path, or the address of a shop on a server, from what was typed."""
    if not isinstance(text, str):
        return text
    if text.partition("://")[0].lower() in SCHEMES and "://" in text:
        return Address.of(text)
    return Path(text)
