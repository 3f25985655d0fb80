"""Gas densities that stored curves cannot give, asked of CoolProp in one process of its own."""

import atexit
import contextlib
import json
import os
import queue
import subprocess
import sys
import threading
from functools import lru_cache
from pathlib import Path
from typing import Any

from chargebench.errors import OutsideDomain, PropertiesUnavailable
from chargebench.fluids.catalogue import refrigerant
from chargebench.fluids.saturated import saturation
from chargebench.units import Q, Quantity, dimensions, show
from chargebench.words import say

NITROGEN = "nitrogen"
_NOT_STARTED = "The property process did not start within {seconds:g} s."
_NO_ANSWER = "The property process did not answer within {seconds:g} s; try again."
_COLDEST, _HOTTEST = 203.15, 423.15  # K: a bench and a hot compressor's discharge, with room
_NITROGEN_MOST = 30e6  # Pa: above the filling pressure of any cylinder in use
_CHILD = Path(__file__).with_name("child.py")


class PropertyProcess:
    """The child process and the pipe to it; started at need, started again when it has died."""

    def __init__(self, *, start_seconds: float = 30, answer_seconds: float = 10) -> None:
        self._start_seconds, self._answer_seconds = start_seconds, answer_seconds
        self._lock = threading.Lock()
        self._process: subprocess.Popen[str] | None = None
        self._lines: queue.SimpleQueue[str] = queue.SimpleQueue()
        self._ready = threading.Event()
        self._collector: threading.Thread | None = None

    @property
    def ready(self) -> bool:
        """Whether a question would be answered at once."""
        process = self._process
        return process is not None and process.poll() is None and self._ready.is_set()

    def start(self) -> None:
        """Start the process where none runs, without waiting for it."""
        if self._lock.acquire(blocking=False):  # who holds it is starting the process, or more
            try:
                self._start()
            finally:
                self._lock.release()

    def ask(self, question: list[Any]) -> dict[str, Any]:
        """Answer to a question; starts the process where none runs, once more where it died."""
        line = json.dumps(question)
        with self._lock:
            for _ in range(2):
                self._start()
                try:
                    return self._exchange(line)
                except (OSError, EOFError):
                    self._stop()
                except BaseException:
                    self._stop()  # or its late answer would be taken for the next question's
                    raise
        raise PropertiesUnavailable(
            "The property process ended twice without an answer; gas densities are not available."
        )

    def close(self) -> None:
        """End the process; a later question starts another."""
        with self._lock:
            self._stop()

    def _start(self) -> None:
        if self._process is not None and self._process.poll() is None:
            return
        self._stop()
        self._lines, self._ready = queue.SimpleQueue(), threading.Event()
        try:
            self._process = subprocess.Popen(  # noqa: S603 - our own file, no shell
                # -P: the script's folder must not shadow the modules CoolProp imports.
                [sys.executable, "-P", str(_CHILD)],
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                stderr=subprocess.DEVNULL,
                text=True,
                encoding="ascii",
                bufsize=1,
                creationflags=getattr(subprocess, "CREATE_NO_WINDOW", 0),
                env={**os.environ, "PYTHONIOENCODING": "ascii"},
            )
        except OSError as reason:
            raise PropertiesUnavailable(
                say("The property process could not be started ({reason}).", reason=reason)
            ) from reason
        self._collector = threading.Thread(
            target=_collect,
            args=(self._process, self._lines, self._ready),
            name="properties",
            daemon=True,
        )
        self._collector.start()

    def _exchange(self, line: str) -> dict[str, Any]:
        process = self._process
        assert process is not None
        assert process.stdin is not None
        if not self._ready.wait(self._start_seconds):
            raise PropertiesUnavailable(say(_NOT_STARTED, seconds=self._start_seconds))
        process.stdin.write(line + "\n")
        process.stdin.flush()
        try:
            answer = self._lines.get(timeout=self._answer_seconds)
        except queue.Empty:
            raise PropertiesUnavailable(say(_NO_ANSWER, seconds=self._answer_seconds)) from None
        if not answer:
            raise EOFError
        found: dict[str, Any] = json.loads(answer)
        return found

    def _stop(self) -> None:
        process, self._process = self._process, None
        if process is None:
            return
        assert process.stdin is not None
        with contextlib.suppress(OSError):  # it is gone already
            process.stdin.close()  # the child ends at the end of its input
        if not self._ready.is_set():
            process.kill()  # still importing: it would not look at its input for a second
        try:
            process.wait(2)
        except subprocess.TimeoutExpired:
            process.kill()
            process.wait()
        if self._collector is not None:
            self._collector.join()  # it closes the answers' pipe


def _collect(
    process: "subprocess.Popen[str]", lines: "queue.SimpleQueue[str]", ready: threading.Event
) -> None:
    """Pass the process's lines on; an empty one says it has ended."""
    assert process.stdout is not None
    with process.stdout as answers:
        if answers.readline():
            ready.set()
            for line in answers:
                lines.put(line)
    lines.put("")
    ready.set()  # whoever waits for the start is let through to the empty line


_properties = PropertyProcess()
atexit.register(_properties.close)


def warm_up() -> None:
    """Start the property process now, so that the first gas density is not waited for.

    Raises
    ------
    PropertiesUnavailable
        The process could not be started.

    Source
    ------
    COOLPROP
    """
    _properties.start()


def await_gas_density() -> None:
    """Wait until gas densities are at hand, starting the property process where none runs.

    Raises
    ------
    PropertiesUnavailable
        The process did not start or did not answer in time.

    Source
    ------
    COOLPROP
    """
    # A question of its own: one asked before would be answered from memory, process or not.
    _properties.ask([["Nitrogen"], [1.0], 300.0, 1e5])


def close() -> None:
    """End the property process; it is started again at need, and ended at exit by itself.

    Source
    ------
    COOLPROP
    """
    _properties.close()


def gas_density_ready() -> bool:
    """Whether `gas_density` would answer at once.

    Returns
    -------
    bool
        False before the process has started, about a second after `warm_up`.

    Source
    ------
    COOLPROP
    """
    return _properties.ready


@dimensions(temperature="[temperature]", pressure="[pressure]")
def gas_density(name: str, *, temperature: Quantity, pressure: Quantity) -> Quantity:
    """Density of nitrogen, or of a refrigerant's vapour at or above its dew temperature.

    Waits for the property process, at the first call for about a second.

    Parameters
    ----------
    name : str
        "nitrogen" or a refrigerant of the catalogue.
    temperature : Quantity [K]
        Temperature, -70 °C to 150 °C.
    pressure : Quantity [Pa]
        Absolute pressure; of nitrogen to 300 bar, of a refrigerant to its dew pressure.

    Returns
    -------
    Quantity [kg/m**3]
        Density of the gas phase.

    Raises
    ------
    OutsideDomain
        A state outside those limits, or one where the refrigerant would be liquid.
    PropertiesUnavailable
        The property process did not start or did not answer in time.
    UnknownRefrigerant
        A name that is neither nitrogen nor in the catalogue.

    Notes
    -----
    The full equation of state with the gas phase imposed. Above the highest temperature of the
    stored curves the dew pressure there is the limit.

    Source
    ------
    COOLPROP; nitrogen: Span et al., J. Phys. Chem. Ref. Data 29 (2000) 1361.
    """
    kelvin, pascal = float(temperature.m_as("K")), float(pressure.m_as("Pa"))
    _refuse_outside(name, kelvin, pascal)
    return Q(_density(name, kelvin, pascal), "kg/m**3")


def _refuse_outside(name: str, kelvin: float, pascal: float) -> None:
    if not _COLDEST <= kelvin <= _HOTTEST:
        raise OutsideDomain(
            say(
                "Expected a temperature between −70 °C and 150 °C for the density of {name} gas.",
                name=name,
            )
        )
    if name == NITROGEN:
        if not 0 < pascal <= _NITROGEN_MOST:
            raise OutsideDomain(
                "Expected an absolute pressure above zero and up to 300 bar for nitrogen."
            )
        return
    refrigerant(name)  # an unknown name is refused before its curves are
    lines = saturation(name)
    dew = lines.dew_pa(min(kelvin, lines.axis.high))
    if not 0 < pascal <= dew * (1 + 1e-9):
        celsius = show(Q(min(kelvin, lines.axis.high), "K"), "degC", 1)
        raise OutsideDomain(
            say(
                "Expected an absolute pressure above zero and up to the dew pressure of "
                "{name}, {dew} at {celsius}; above it there is liquid.",
                name=name,
                dew=show(Q(dew, "Pa"), "bar", 2),
                celsius=celsius,
            )
        )


@lru_cache(1024)
def _density(name: str, kelvin: float, pascal: float) -> float:
    if name == NITROGEN:
        fluids, shares = ["Nitrogen"], [1.0]
    else:
        known = refrigerant(name)
        fluids, shares = list(known.equation), list(known.equation_shares)
    answer = _properties.ask([fluids, shares, kelvin, pascal])
    if "density" not in answer:
        raise OutsideDomain(
            say("No gas density of {name} there: {refused}.", name=name, refused=answer["refused"])
        )
    return float(answer["density"])
