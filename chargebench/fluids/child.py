"""The property process: the only program text that imports CoolProp.

Run as a script it answers one request a line, JSON in and out, until its input ends; it imports
nothing of chargebench, so that it starts as fast as CoolProp allows. CoolProp takes 1.2 s to
import and holds the interpreter lock meanwhile, which is why it never enters the calling process.
"""

import itertools
import json
import math
import sys
from collections.abc import Sequence
from functools import cache
from typing import Any, TextIO

# No mixture data are published for isopentane with these; its homologue n-butane's fitted gammaT
# with the same partner stands in (CoolProp 8.0.0, Bell & Lemmon 2016), all other parameters 1.
BORROWED_GAMMA_T = {
    frozenset(("R32", "R601a")): 0.8699,
    frozenset(("R125", "R601a")): 0.90412,
    frozenset(("R134a", "R601a")): 0.89057,
}


@cache  # CoolProp keeps what it was told, and refuses to be told again
def _borrow_pair(one: str, other: str) -> None:
    import CoolProp.CoolProp as coolprop  # noqa: N813

    gamma_t = BORROWED_GAMMA_T[frozenset((one, other))]
    first, second = (coolprop.get_fluid_param_string(fluid, "CAS") for fluid in (one, other))
    coolprop.apply_simple_mixing_rule(first, second, "linear")
    for parameter, value in (("gammaT", gamma_t), ("betaT", 1.0), ("gammaV", 1.0), ("betaV", 1.0)):
        try:
            coolprop.set_mixture_binary_pair_data(first, second, parameter, value)
        except ValueError:  # kept in the other order; these four values are the same in both
            coolprop.set_mixture_binary_pair_data(second, first, parameter, value)


def equation_state(fluids: Sequence[str], mass_shares: Sequence[float]) -> Any:
    """CoolProp state object of a fluid or a mixture by mass shares.

    Parameters
    ----------
    fluids : sequence of str
        CoolProp names of one pure or pseudo-pure fluid, or of a mixture's components.
    mass_shares : sequence of float [1]
        Mass shares in the same order; they need not sum to one.

    Returns
    -------
    CoolProp.AbstractState
        With its composition set.

    Raises
    ------
    ValueError
        A fluid or pair CoolProp does not know.

    Source
    ------
    COOLPROP
    """
    import CoolProp.CoolProp as coolprop  # noqa: N813

    if len(fluids) == 1:
        return coolprop.AbstractState("HEOS", fluids[0])
    for pair in itertools.combinations(fluids, 2):
        if frozenset(pair) in BORROWED_GAMMA_T:
            _borrow_pair(*pair)
    state = coolprop.AbstractState("HEOS", "&".join(fluids))
    total = sum(mass_shares)
    state.set_mass_fractions([share / total for share in mass_shares])
    return state


@cache
def _gas_state(fluids: tuple[str, ...], mass_shares: tuple[float, ...]) -> Any:
    import CoolProp.CoolProp as coolprop  # noqa: N813

    state = equation_state(fluids, mass_shares)
    # Imposed: an open phase search takes up to 120 ms on a blend and may land on the liquid.
    state.specify_phase(coolprop.iphase_gas)
    return state


def gas_kgm3(
    fluids: Sequence[str], mass_shares: Sequence[float], kelvin: float, pascal: float
) -> float:
    """Density of a gas by its equation of state, the gas phase imposed.

    Parameters
    ----------
    fluids : sequence of str
        CoolProp names.
    mass_shares : sequence of float [1]
        Mass shares in the same order.
    kelvin : float [K]
        Temperature.
    pascal : float [Pa]
        Absolute pressure.

    Returns
    -------
    float [kg/m**3]
        Density.

    Raises
    ------
    ValueError
        A state without a gas density.

    Source
    ------
    COOLPROP
    """
    import CoolProp.CoolProp as coolprop  # noqa: N813

    state = _gas_state(tuple(fluids), tuple(mass_shares))
    state.update(coolprop.PT_INPUTS, pascal, kelvin)
    density = float(state.rhomass())
    if not (math.isfinite(density) and density > 0):
        raise ValueError(f"no gas density at {kelvin} K and {pascal} Pa")
    return density


def answer(line: str) -> str:
    """One line of answer to one line of request: a density, or why there is none.

    Parameters
    ----------
    line : str
        JSON list: fluids, mass shares, kelvin [K], pascal [Pa].

    Returns
    -------
    str
        JSON object with `density` [kg/m**3] or `refused`.

    Source
    ------
    COOLPROP
    """
    try:
        fluids, mass_shares, kelvin, pascal = json.loads(line)
        return json.dumps({"density": gas_kgm3(fluids, mass_shares, kelvin, pascal)})
    except (ValueError, TypeError, RuntimeError) as refusal:
        return json.dumps({"refused": str(refusal)})


def serve(requests: TextIO, answers: TextIO) -> None:
    """Import CoolProp, say so, then answer until the requests end.

    Parameters
    ----------
    requests, answers : text streams
        One JSON line each way.

    Source
    ------
    COOLPROP
    """
    import CoolProp.CoolProp as coolprop  # noqa: N813

    answers.write(json.dumps({"ready": coolprop.get_global_param_string("version")}) + "\n")
    answers.flush()
    for line in requests:
        answers.write(answer(line) + "\n")
        answers.flush()


if __name__ == "__main__":
    try:
        serve(sys.stdin, sys.stdout)
    except (KeyboardInterrupt, BrokenPipeError):
        sys.exit(0)  # the program that asked is gone
