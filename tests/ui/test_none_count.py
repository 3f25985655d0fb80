"""Keep watch on a fault of the Qt binding that ends the program after some thousand calls."""

import sys
from importlib.metadata import version

import pytest
from PySide6.QtCore import QObject

CALLS = 5_000


def test_that_the_binding_stays_below_the_release_that_loses_none() -> None:
    assert tuple(int(part) for part in version("PySide6-Essentials").split(".")[:2]) < (6, 12)


# PySide6 6.12.0 gives up one reference to None at each call of a method that returns nothing, and
# Python 3.11 aborts when none is left. From Python 3.12 on None is not counted.
@pytest.mark.skipif(sys.version_info >= (3, 12), reason="None is not counted from Python 3.12 on")
def test_that_calls_returning_nothing_keep_the_count_of_none() -> None:
    thing = QObject()
    before = sys.getrefcount(None)
    for number in range(CALLS):
        thing.setObjectName(str(number % 10))
    assert sys.getrefcount(None) > before - CALLS / 10
