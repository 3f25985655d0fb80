"""Where the files shipped beside the code are: in a checkout and in an installed wheel."""

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent


def _shipped(folder: str) -> Path:
    inside = _PACKAGE / folder
    return inside if inside.is_dir() else _PACKAGE.parent / folder


def resource(*parts: str) -> Path:
    """Path of a file in resources/, packed inside the wheel or beside the package in a checkout."""
    return _shipped("resources").joinpath(*parts)


def sample_jobs() -> Path:
    """Folder of the sample job files."""
    return _shipped("sample_jobs")
