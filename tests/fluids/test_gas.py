"""Gas densities through the property process, and what becomes of it when it dies or hangs."""

import gc
import io
import json
import os
import subprocess
import sys
import textwrap
from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench import fluids
from chargebench.errors import OutsideDomain, PropertiesUnavailable, UnknownRefrigerant
from chargebench.fluids import NITROGEN, child, gas, gas_density, names, refrigerant, saturation
from chargebench.units import Q

# R290 at 20 °C: 8.36 bar (Lemmon, McLinden & Wagner 2009; NIST WebBook, MEMORY).
ABOVE_DEW = (
    "Expected an absolute pressure above zero and up to the dew pressure of R290, "
    "8.36 bar(a) at 20.0 °C; above it there is liquid."
)
QUESTION = [["Nitrogen"], [1.0], 300.0, 101_325.0]


@pytest.fixture(autouse=True, scope="module")
def _ended() -> Iterator[None]:
    """Share one process in this file; an unclosed pipe shows as the warning it is."""
    yield
    fluids.close()
    gc.collect()


# Span et al., J. Phys. Chem. Ref. Data 29 (2000) 1361, table of the single phase at 0.101325 MPa
# and 300 K: 1.1380 kg/m³; NIST WebBook gives 1.138 there. MEMORY.
def test_that_nitrogen_at_one_atmosphere_has_its_printed_density() -> None:
    found = gas_density(NITROGEN, temperature=Q(300, "K"), pressure=Q(101_325, "Pa"))
    assert found.m_as("kg/m**3") == pytest.approx(1.138, abs=5e-4)


# At low pressure every gas is ideal: rho = p M / (R T), CODATA R = 8.314 462 618 J/(mol K).
@pytest.mark.parametrize("name", names())
def test_that_thin_vapour_is_an_ideal_gas(name: str) -> None:
    found = gas_density(name, temperature=Q(60, "degC"), pressure=Q(1, "kPa"))
    ideal = 1_000 * refrigerant(name).molar_mass.m_as("kg/mol") / (8.314_462_618 * 333.15)
    assert found.m_as("kg/m**3") == pytest.approx(ideal, rel=5e-4)


@pytest.mark.parametrize("name", names())
def test_that_vapour_at_its_dew_point_has_the_density_of_the_saturation_curve(name: str) -> None:
    at = Q(10, "degC")
    lines = saturation(name)
    found = gas_density(name, temperature=at, pressure=lines.dew_pressure(at))
    assert found.m_as("g/L") == pytest.approx(lines.vapour_density(at).m_as("g/L"), rel=2e-6)


@pytest.mark.parametrize(
    ("name", "celsius", "bar", "said"),
    [
        (
            "R290", 20, 20, ABOVE_DEW,
        ),
        (
            "R290", 20, 0, ABOVE_DEW,
        ),
        (
            "R134a", 200, 1,
            "Expected a temperature between −70 °C and 150 °C for the density of R134a gas.",
        ),
        (
            "nitrogen", 20, 301,
            "Expected an absolute pressure above zero and up to 300 bar for nitrogen.",
        ),
        (
            "R454B", -68, 0.1,
            ("R454B saturation is known here from −65.0 °C (−85.0 °F) to 70.7 °C (159.2 °F); "
            "got −68.0 °C (−90.4 °F)."),
        ),
    ],
)  # fmt: skip
def test_that_a_state_without_gas_is_refused(
    name: str, celsius: float, bar: float, said: str
) -> None:
    with pytest.raises(OutsideDomain) as refusal:
        gas_density(name, temperature=Q(celsius, "degC"), pressure=Q(bar, "bar"))
    assert str(refusal.value) == said


def test_that_gas_of_an_unknown_refrigerant_is_refused() -> None:
    with pytest.raises(UnknownRefrigerant, match="R-290"):
        gas_density("R-290", temperature=Q(20, "degC"), pressure=Q(1, "bar"))


def test_that_an_equation_without_an_answer_is_a_refusal() -> None:
    process = gas.PropertyProcess()
    try:
        assert "refused" in process.ask([["Unobtainium"], [1.0], 300.0, 1e5])
        assert "refused" in process.ask(["too short"])
        assert process.ask(QUESTION)["density"] == pytest.approx(1.138, abs=5e-4)
    finally:
        process.close()


def test_that_the_process_is_ready_after_an_answer_and_not_after_its_end() -> None:
    process = gas.PropertyProcess()
    assert not process.ready
    process.ask(QUESTION)
    assert process.ready
    process.close()
    assert not process.ready


def test_that_starting_does_not_wait_and_an_early_end_leaves_nothing() -> None:
    process = gas.PropertyProcess()
    process.start()
    assert not process.ready  # importing CoolProp takes a second
    child = process._process
    assert child is not None
    process.close()
    assert child.poll() is not None


def test_that_the_shared_process_can_be_started_ahead_and_says_when_it_is_ready() -> None:
    fluids.close()
    assert not fluids.gas_density_ready()
    fluids.warm_up()
    first = gas._properties._process
    gas_density(NITROGEN, temperature=Q(23, "degC"), pressure=Q(7, "bar"))
    assert fluids.gas_density_ready()
    assert gas._properties._process is first


def test_that_the_child_answers_line_by_line_until_its_input_ends() -> None:
    answers = io.StringIO()
    child.serve(io.StringIO(f"{json.dumps(QUESTION)}\nnonsense\n"), answers)
    ready, density, refused = map(json.loads, answers.getvalue().splitlines())
    assert ready["ready"].startswith("8.")
    assert density["density"] == pytest.approx(1.138, abs=5e-4)
    assert "refused" in refused


def test_that_a_process_that_was_killed_is_started_again() -> None:
    process = gas.PropertyProcess()
    try:
        first = process.ask(QUESTION)
        child = process._process
        assert child is not None
        child.kill()
        child.wait()
        assert process.ask(QUESTION) == first
        assert process._process is not child
    finally:
        process.close()


def _stand_in(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, text: str) -> gas.PropertyProcess:
    script = tmp_path / "child.py"
    script.write_text(textwrap.dedent(text), encoding="utf-8")
    monkeypatch.setattr(gas, "_CHILD", script)
    return gas.PropertyProcess(start_seconds=5, answer_seconds=0.2)


def test_that_a_process_that_hangs_is_given_up_and_ended(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    process = _stand_in(
        tmp_path, monkeypatch, "import sys\nprint('{}', flush=True)\nfor _ in sys.stdin: pass\n"
    )
    with pytest.raises(PropertiesUnavailable) as refusal:
        process.ask(QUESTION)
    assert str(refusal.value) == "The property process did not answer within 0.2 s; try again."
    assert process._process is None


def test_that_a_process_that_never_starts_is_given_up(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    _stand_in(tmp_path, monkeypatch, "import sys\nsys.stdin.read()\n")
    process = gas.PropertyProcess(start_seconds=0.2)
    with pytest.raises(PropertiesUnavailable) as refusal:
        process.ask(QUESTION)
    assert str(refusal.value) == "The property process did not start within 0.2 s."
    assert process._process is None


def test_that_a_process_that_dies_twice_is_given_up(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    process = _stand_in(
        tmp_path, monkeypatch, "import sys\nprint('{}', flush=True)\nsys.stdin.readline()\n"
    )
    with pytest.raises(PropertiesUnavailable) as refusal:
        process.ask(QUESTION)
    assert str(refusal.value) == (
        "The property process ended twice without an answer; gas densities are not available."
    )
    assert process._process is None


def test_that_a_program_that_can_not_be_started_is_a_refusal(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys, "executable", str(tmp_path / "no python here"))
    with pytest.raises(PropertiesUnavailable, match="could not be started"):
        gas.PropertyProcess().ask(QUESTION)


WITHOUT = """
import sys
for name in ("CoolProp", "numpy"):
    sys.modules[name] = None  # importing it fails from here on
from chargebench.fluids import gas_density, names, refrigerant, saturation, water
from chargebench.units import Q
for name in names():
    lines, known = saturation(name), refrigerant(name)
    assert lines.dew_temperature(lines.dew_pressure(Q(0, "degC"))).m_as("degC") < 1e-3
    assert known.pressure_class and known.gwp
water.boiling_temperature(Q(500, "micron_Hg"))
print(gas_density("R290", temperature=Q(20, "degC"), pressure=Q(3, "bar")).m_as("kg/m**3"))
assert not any(name.split(".")[0] == "CoolProp" for name in sys.modules if sys.modules[name])
"""


# Propane at 20 °C and 3 bar: 5.72 kg/m³ by an ideal gas of compressibility 0.949, NIST WebBook
# table, MEMORY; the point is that the calling process has neither CoolProp nor numpy to use, and
# that its end closes the property process without a warning.
def test_that_the_calling_process_needs_neither_coolprop_nor_numpy() -> None:
    done = subprocess.run(
        [sys.executable, "-X", "dev", "-W", "error", "-c", WITHOUT],
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
        env={**os.environ, "PYTHONPATH": str(Path(__file__).resolve().parents[2])},
    )
    assert done.stderr == ""
    assert done.returncode == 0
    assert float(done.stdout) == pytest.approx(5.72, rel=0.01)


def test_that_waiting_starts_a_process_that_was_ended() -> None:
    fluids.gas_density(fluids.NITROGEN, temperature=Q(20, "degC"), pressure=Q(1, "bar"))
    fluids.close()
    assert not fluids.gas_density_ready()
    fluids.await_gas_density()
    assert fluids.gas_density_ready()
