"""The language the window speaks: texts, dates and decimal marks. What is recorded stays English.

Every visible text goes through `tr` at the one place where it is shown. Lower layers know no
language: their sentences come with template and values (`words.say`), which are looked up here.
"""

from dataclasses import dataclass
from datetime import date, datetime
from functools import lru_cache

from PySide6.QtCore import (
    QCoreApplication,
    QDate,
    QLibraryInfo,
    QLocale,
    QTranslator,
)

from chargebench.resource import resource
from chargebench.ui.kept import kept
from chargebench.words import translated

CONTEXT = "chargebench"
SYSTEM = ""
LANGUAGES = {SYSTEM: "As the system", "en": "English", "de": "Deutsch", "es": "Español"}
_KEY = "language"
_REMEMBERED = 8_192  # texts looked up lately; looking one up again costs a tenth of asking Qt


@dataclass
class _Spoken:
    code: str
    locale: QLocale
    translators: tuple[QTranslator, ...] = ()

    @property
    def decimal_mark(self) -> str:
        return str(self.locale.decimalPoint())


_spoken = _Spoken("en", QLocale(QLocale.Language.English))


def chosen() -> str:
    """Code of the language this bench chose; empty: as the system."""
    code = str(kept().value(_KEY, SYSTEM))
    return code if code in LANGUAGES else SYSTEM


def choose(code: str) -> None:
    """Remember a language for this bench and speak it from now on."""
    keep(code)
    speak(code)


def keep(code: str) -> None:
    """Remember a language for this bench."""
    assert code in LANGUAGES, code
    kept().setValue(_KEY, code)


def speak(code: str = SYSTEM, qm: str = "") -> None:
    """Speak a language, else the system's where it is one of ours; `qm` names another file."""
    app = QCoreApplication.instance()
    assert app is not None
    for old in _spoken.translators:
        app.removeTranslator(old)
    _looked_up.cache_clear()
    system = QLocale.system()
    mine = QLocale.languageToCode(system.language())
    spoken = code or (mine if mine in LANGUAGES else "en")
    _spoken.code = spoken
    _spoken.locale = system if mine == spoken else QLocale(spoken)
    _spoken.translators = ()
    if spoken == "en" and not qm:
        return
    own = qm or str(resource("translations", f"chargebench_{spoken}.qm"))
    of_qt = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    files = (f"{of_qt}/qtbase_{spoken}.qm", own)  # asked from the last to the first
    _spoken.translators = tuple(_installed(app, each) for each in files)


def _installed(app: QCoreApplication, file: str) -> QTranslator:
    translator = QTranslator(app)
    if translator.load(file):  # without Qt's own file its few standard buttons stay English
        app.installTranslator(translator)
    return translator


def spoken() -> str:
    """Code of the language spoken now."""
    return _spoken.code


@lru_cache(_REMEMBERED)
def _looked_up(text: str) -> str:
    return QCoreApplication.translate(CONTEXT, text) if text else ""


def tr(text: str) -> str:
    """A text as the window shows it."""
    if not _spoken.translators and _spoken.locale.decimalPoint() == ".":
        return text
    return translated(text, _looked_up, _spoken.decimal_mark)


def day(when: date) -> str:
    """A day with its month in letters, so that no order of numbers can be misread."""
    return _spoken.locale.toString(QDate(when.year, when.month, when.day), "d MMM yyyy")


def moment(when: datetime) -> str:
    """A moment on this computer's wall clock."""
    return f"{day(local := when.astimezone())} {local:%H:%M}"


def weekday(when: date) -> str:
    """The day of the week in short, and the day of the month with its name."""
    return _spoken.locale.toString(QDate(when.year, when.month, when.day), "ddd d MMM")


def month_letter(month: int) -> str:
    """The letter a month begins with."""
    return _spoken.locale.standaloneMonthName(month, QLocale.FormatType.NarrowFormat)
