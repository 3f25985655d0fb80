"""A window killed at any moment loses no signed entry and no text older than two seconds.

`CHARGEBENCH_KILLS` sets how many kills; the long series has 200.
"""

import json
import logging
import os
import random
import subprocess
import sys
import threading
import time
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest

from chargebench.desk import Desk

KILLS = int(os.environ.get("CHARGEBENCH_KILLS", "6"))
ROOT = Path(__file__).resolve().parents[2]
KEPT_AFTER_S = 2.0
LONGEST_S = 7.0
START_S = 60

log = logging.getLogger(__name__)


@dataclass
class Told:
    """What a window said before it was killed, and when that was."""

    signed: dict[str, str] = field(default_factory=dict)  # step -> entry
    typed: dict[str, list[tuple[float, Any]]] = field(default_factory=dict)  # step -> at, text
    killed_at: float = 0.0

    def hear(self, line: bytes) -> None:
        said = json.loads(line)
        if "signed" in said:
            self.signed[said["step"]] = said["signed"]
        else:
            self.typed.setdefault(said["step"], []).append((said["at"], said["typed"]))

    def long_typed(self, step: str) -> Any:
        """What stood in a step more than two seconds before the kill; None if it was not begun."""
        old = [typed for at, typed in self.typed[step] if at <= self.killed_at - KEPT_AFTER_S]
        return old[-1] if old else None


def _killed(shop: Path, job: str, after_s: float) -> Told:
    """What a window told that was killed a while after its first key."""
    told, began = Told(), threading.Event()
    with subprocess.Popen(
        [sys.executable, "-m", "tests.walks.typist", str(shop), job],
        stdout=subprocess.PIPE,
        cwd=ROOT,
        env=os.environ | {"QT_QPA_PLATFORM": "offscreen"},
    ) as child:
        assert child.stdout is not None
        pipe = child.stdout

        def listen() -> None:
            for line in pipe:
                if line.endswith(b"\n"):
                    told.hear(line)
                    began.set()

        ear = threading.Thread(target=listen)
        ear.start()
        assert began.wait(START_S)
        with pytest.raises(subprocess.TimeoutExpired):
            child.wait(timeout=after_s)
        told.killed_at = time.monotonic()
        child.kill()
        ear.join()
    return told


def _flat(typed: Any, path: str = "") -> dict[str, str]:
    """Each typed text by its path."""
    if isinstance(typed, str):
        return {path: typed}
    parts = typed.items() if isinstance(typed, Mapping) else enumerate(typed)
    return {key: text for at, part in parts for key, text in _flat(part, f"{path}/{at}").items()}


def _check(told: Told, shop: Path, job: str) -> int:
    """The shop opens and has all it should; how many open steps had text old enough to look for."""
    old_enough = 0
    with Desk.open(shop) as desk:
        assert desk.verify().problems == ()
        assert set(told.signed.values()) <= {entry.id for entry in desk.ledger.entries(job=job)}
        states = {step.key: step.state for step in desk.job(job).steps}
        for step in told.typed:
            kept = _flat(desk.typed(job, step))
            if step in told.signed:
                assert states[step] == "signed"
                assert kept == _flat(told.typed[step][-1][1])
            elif (old := told.long_typed(step)) is not None:
                old_enough += 1
                for path, text in _flat(old).items():
                    # Text here only grows, so what is kept begins with what stood there.
                    assert kept.get(path, "").startswith(text), (step, path)
    return old_enough


@pytest.mark.slow
def test_that_a_killed_window_loses_nothing_signed_and_no_text_of_two_seconds_ago(
    desk: Desk, tmp_path: Path
) -> None:
    shop, moment = tmp_path / "shop.chargebench", random.Random(290)  # noqa: S311
    desk.close()
    signed = looked_for = keys = 0
    for kill in range(KILLS):
        with Desk.open(shop) as opened:
            job = opened.open_job("E-203", f"kill {kill}")
        told = _killed(shop, job, LONGEST_S * (kill + moment.random()) / KILLS)
        looked_for += _check(told, shop, job)
        signed += len(told.signed)
        keys += sum(map(len, told.typed.values()))
        log.info("kill %d: %d signed, %d keys so far", kill + 1, signed, keys)
    log.info(
        "%d kills, %d keys, %d entries signed, %d open steps with text older than %g s",
        KILLS,
        keys,
        signed,
        looked_for,
        KEPT_AFTER_S,
    )
    assert signed > 0
    assert looked_for > 0
