"""Older job files brought to today's format, one step a version; none is older yet."""

from collections.abc import Callable
from typing import Any

# From the version named to the next. A format that changes adds its step here, and a file of the
# old version to the tests.
UPGRADES: dict[int, Callable[[dict[str, Any]], dict[str, Any]]] = {}
