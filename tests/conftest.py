"""What every test stands on: no window shown, a home of its own, hypothesis profiles.

Set before anything of ours is imported, because Qt, pint and the folders of the program read their
surroundings once.
"""

import os
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

import hypothesis
import pytest

_HOME = tempfile.TemporaryDirectory(prefix="chargebench-tests-", ignore_cleanup_errors=True)


def _own_home() -> None:
    """Point every place where a person's files would be to a folder that is thrown away."""
    home = Path(_HOME.name)
    if os.environ.get("DISPLAY"):
        os.environ.setdefault("XAUTHORITY", str(Path.home() / ".Xauthority"))
    names = {
        "HOME": "",
        "USERPROFILE": "",
        "XDG_CACHE_HOME": "cache",
        "XDG_CONFIG_HOME": "config",
        "XDG_DATA_HOME": "data",
        "XDG_STATE_HOME": "state",
        "XDG_DOCUMENTS_DIR": "documents",
        "WIN_PD_OVERRIDE_APPDATA": "roaming",
        "WIN_PD_OVERRIDE_LOCAL_APPDATA": "local",
        "WIN_PD_OVERRIDE_PERSONAL": "documents",
    }
    for name, folder in names.items():
        place = home / folder
        place.mkdir(exist_ok=True)
        os.environ[name] = str(place)


def _own_screen() -> None:
    """Show no window unless a real one was asked for and there is a screen for it."""
    asked = os.environ.get("CHARGEBENCH_REAL_WINDOW") == "1"
    screen = sys.platform in ("win32", "darwin") or bool(os.environ.get("DISPLAY"))
    if not (asked and screen):
        os.environ["QT_QPA_PLATFORM"] = "offscreen"


_own_home()
_own_screen()

hypothesis.settings.register_profile("desk", deadline=None, max_examples=50)
hypothesis.settings.register_profile(
    "ci", deadline=None, max_examples=300, derandomize=True, database=None, print_blob=True
)
hypothesis.settings.load_profile("ci" if os.environ.get("CI") == "true" else "desk")


@pytest.fixture(scope="session")
def sample_shop(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The sample shop's file, built once; copy it before changing anything."""
    from chargebench.desk import sample

    path = tmp_path_factory.mktemp("sample") / "sample.chargebench"
    sample.build(path).close()
    return path


@pytest.fixture(scope="session")
def postgres() -> Iterator[str]:
    """Address of the superuser of a real PostgreSQL, started for this session."""
    from tests.postgres import server

    with server.started() as admin:
        yield admin


def pytest_unconfigure() -> None:
    """Throw the home of this test process away."""
    _HOME.cleanup()
