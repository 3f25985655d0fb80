"""Where this person's shop and the sample shop are kept when no file is named."""

from pathlib import Path

import platformdirs

SUFFIX = ".chargebench"


def shop_file() -> Path:
    """The shop opened when none is named."""
    return folder() / f"shop{SUFFIX}"


def sample_file() -> Path:
    """The sample shop, kept as it was left."""
    return folder() / f"sample{SUFFIX}"


def bench_key() -> Path:
    """The key this bench signs its exports with."""
    return folder() / "bench-key.pem"


def folder() -> Path:
    """The folder of the program that is this person's own."""
    return platformdirs.user_data_path("chargebench", appauthor=False, ensure_exists=True)
