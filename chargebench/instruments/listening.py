"""A thread that listens at a serial port, keeps the newest reading, and finds a lost port again."""

import os
import threading
import time
from collections import deque
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

import serial
from serial.tools import list_ports

from chargebench.errors import ReadingRefused
from chargebench.instruments.framing import Lines
from chargebench.instruments.resting import Resting
from chargebench.instruments.settings import LineSettings
from chargebench.instruments.speech import Heard, printable, seems_seven_bits, understand
from chargebench.units import RULES, Kind, Quantity
from chargebench.units.tables import fold
from chargebench.words import say

FRESH_S = 3.0  # an older reading is not the instrument's any more
RETRY_S = 0.5
ASK_S = 0.3
LINES_KEPT = 8  # shown in the preview
_READ_S = 0.1
_GATHER_S = 0.005  # so that a fast line comes in handfuls
_CHUNK = 4096
_UNDERSTOOD_MOST = 20  # newest lines of a handful that are looked at; a babbling port costs no more


class State(StrEnum):
    """How it stands with a line."""

    OPENING = "opening"
    LIVE = "live"
    SILENT = "silent"
    GARBLED = "not understood"
    LOST = "lost"


@dataclass(frozen=True, slots=True)
class Port:
    """A serial port of this computer."""

    name: str
    says: str
    identity: str  # of the adapter, which may come back under another name


@dataclass(frozen=True, slots=True)
class Live:
    """What a listener knows at one moment."""

    state: State
    says: str
    heard: Heard | None = None  # only while it is fresh
    steady: bool = False
    at: float = 0.0  # when it was heard, on the monotonic clock
    lines: tuple[str, ...] = ()  # the newest, as they came
    refusal: str = ""  # why the newest line was not understood
    count: int = 0


NOTHING_HEARD = Live(State.OPENING, "Opening the port.")


def ports() -> list[Port]:
    """The serial ports there are."""
    found = (
        Port(
            each.device,
            each.description if each.description not in ("n/a", "") else each.device,
            each.hwid if each.hwid not in ("n/a", "") else "",
        )
        for each in list_ports.comports()
    )
    return sorted(found, key=lambda port: port.name)


def where_now(port: str, identity: str) -> str:
    """Name a port has now: another one where its adapter came back under another."""
    if not identity or os.path.exists(port):  # noqa: PTH110 - COM3 is a name, not a path
        return port
    same = [each.name for each in ports() if each.identity == identity]
    return same[0] if len(same) == 1 else port


class Listener:
    """Listens at one port on a thread of its own until it is stopped."""

    def __init__(
        self,
        port: str,
        settings: LineSettings,
        kind: Kind,
        *,
        resolution: Quantity | None = None,
        identity: str = "",
    ) -> None:
        self.port = port
        self.settings = settings
        self._kind = kind
        self._resolution = resolution
        self._identity = identity
        self._lock = threading.Lock()
        self._stopping = threading.Event()
        self._state, self._says = State.OPENING, say("Opening {port}.", port=port)
        self._newest: Heard | None = None
        self._steady = False
        self._at = 0.0
        self._any_at = self._opened_at = 0.0
        self._refusal = ""
        self._lines: deque[str] = deque(maxlen=LINES_KEPT)
        self._count = 0
        self._resting = Resting()
        self._steps: dict[str, Decimal] = {}
        self._thread = threading.Thread(target=self._run, name=f"listen {port}", daemon=True)
        self._thread.start()

    def stop(self, *, wait: bool = False) -> None:
        """Let go of the port; where asked, wait until it is free."""
        self._stopping.set()
        if wait:
            self._thread.join(2.0)

    def live(self) -> Live:
        """What is known now; returns at once."""
        now = time.monotonic()
        with self._lock:
            fresh = self._newest is not None and now - self._at <= FRESH_S
            state, says = self._state, self._says
            if state is State.LIVE and not fresh:
                state = self._unheard(now)
                says = self._quiet(state)
            live = state is State.LIVE
            return Live(
                state,
                says,
                self._newest if live else None,
                self._steady and live,
                self._at,
                tuple(self._lines),
                self._refusal,
                self._count,
            )

    def _unheard(self, now: float) -> State:
        if now - self._any_at <= FRESH_S:
            return State.GARBLED
        return State.OPENING if now - self._opened_at <= FRESH_S else State.SILENT

    def _quiet(self, state: State) -> str:
        if state is State.OPENING:
            return self._says
        if state is State.GARBLED:
            return say(
                "Lines come from {port} but are not understood. {refusal}",
                port=self.port,
                refusal=self._refusal,
            ).strip()
        return say(
            "Nothing comes from {port}; is the instrument on, and set to send by itself?",
            port=self.port,
        )

    def _run(self) -> None:
        while not self._stopping.is_set():
            try:
                self._listen()
            except (serial.SerialException, OSError, ValueError) as trouble:
                self._lose(trouble)
            self._stopping.wait(RETRY_S)

    def _lose(self, trouble: Exception) -> None:
        with self._lock:
            self._state = State.LOST
            self._says = say(
                "{port} can not be listened to ({why}); trying again until it is back.",
                port=self.port,
                why=_short(trouble),
            )
            self._newest, self._steady = None, False
            self._resting = Resting()

    def _listen(self) -> None:
        port = where_now(self.port, self._identity)
        with serial.Serial(
            port,
            baudrate=self.settings.baud,
            bytesize=self.settings.bits,
            parity=self.settings.parity,
            stopbits=float(self.settings.stop),
            timeout=_READ_S,
            write_timeout=_READ_S,
            exclusive=True if os.name == "posix" else None,
        ) as line:
            opened = time.monotonic()
            with self._lock:
                self.port = port
                self._state, self._says = State.LIVE, say("Listening at {port}.", port=port)
                self._any_at, self._opened_at = 0.0, opened
            lines = Lines(opened)
            asked_at = opened - ASK_S
            while not self._stopping.is_set():
                now = time.monotonic()
                if self.settings.asked and now - asked_at >= ASK_S:
                    line.write(self.settings.asked.encode() + b"\r\n")
                    asked_at = now
                chunk = line.read(min(max(line.in_waiting, 1), _CHUNK))
                if chunk:
                    self._take(lines.feed(chunk, time.monotonic()))
                    self._stopping.wait(_GATHER_S)

    def _take(self, whole: list[bytes]) -> None:
        now = time.monotonic()
        for line in whole[-_UNDERSTOOD_MOST:]:
            refusal = ""
            heard: Heard | None = None
            try:
                heard = understand(line, self.settings, self._kind)
            except ReadingRefused as refused:
                refusal = str(refused)
                if seems_seven_bits(line):
                    refusal = "This looks like seven data bits; try 7 bits with even or odd parity."
            with self._lock:
                self._keep(line, heard, refusal, now)
        with self._lock:
            self._count += len(whole)

    def _keep(self, line: bytes, heard: Heard | None, refusal: str, now: float) -> None:
        self._any_at = now
        self._refusal = refusal
        self._lines.append(printable(line))
        if heard is None:
            return
        step = max(heard.step, self._resolution_in(heard.unit))
        rests = self._resting.add(heard.value, heard.unit, step, now)
        self._newest, self._at = heard, now
        self._steady = rests if heard.steady is None else heard.steady

    def _resolution_in(self, unit: str) -> Decimal:
        if unit not in self._steps:
            known = RULES[self._kind].units[fold(unit)].pint
            size = 0.0 if self._resolution is None else float(self._resolution.m_as(known))
            self._steps[unit] = Decimal(f"{size:.6g}")
        return self._steps[unit]


def _short(trouble: Exception) -> str:
    said = trouble.strerror if isinstance(trouble, OSError) and trouble.strerror else str(trouble)
    return said.partition(":")[0][:60] if said.startswith("[Errno") else said[:80]
