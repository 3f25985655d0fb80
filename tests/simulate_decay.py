"""Hit rates of the decay verdict on simulated tests; run it by hand, it takes a minute or two.

    python -m tests.simulate_decay [tests per cell] [minutes between readings]

The truths are drawn as described in tests/checkdata/vacuum_decay_confusion.csv: starting pressure
150 to 500 micron, a reading a minute shown to 1 micron, gauge gain within 10 %. They are
simulations, not field data: no drift, no change of temperature, no lag of the gauge.
"""

import sys
from collections import Counter
from collections.abc import Callable

import numpy as np

from chargebench.calc.evacuation import MICRON_PA, judge

Rng = np.random.Generator
WORDS = ("tight", "moisture", "leak", "not yet decided")


def _wet(rng: Rng) -> tuple[float, float]:
    return float(np.exp(rng.uniform(np.log(400), np.log(8_000)))), float(rng.uniform(1, 8))


def _leak(rng: Rng) -> float:
    return float(np.exp(rng.uniform(np.log(20), np.log(500))))


def _tight(rng: Rng, _length: float) -> tuple[float, float, float, float, float]:
    return float(rng.uniform(0, 1)), float(rng.uniform(0, 80)), float(rng.uniform(1, 8)), 0, 1


# Each truth: slope a, size b and time tau of the exponential, size c and knee t0 of the log rise.
TRUTHS: dict[str, Callable[[Rng, float], tuple[float, float, float, float, float]]] = {
    "tight": _tight,
    "moisture": lambda rng, _: (0, *_wet(rng), 0, 1),
    "leak": lambda rng, _: (_leak(rng), 0, 1, 0, 1),
    "leak+moisture": lambda rng, _: (_leak(rng), *_wet(rng), 0, 1),
    "small leak": lambda rng, _: (float(rng.uniform(5, 20)), 0, 1, 0, 1),
    "log outgassing": lambda rng, length: (
        0, 0, 1, float(rng.uniform(300, 1_500)), float(rng.uniform(0.02, 0.25) * length),
    ),
}  # fmt: skip


def readings(
    rng: Rng, truth: str, length: float, noise: float, step: float = 1.0
) -> tuple[list[float], list[float]]:
    """One simulated test: minutes and pascals as a gauge of 1 micron resolution shows them."""
    slope, size, tau, log_size, knee = TRUTHS[truth](rng, length)
    times = np.arange(0, length + step / 2, step)
    rise = slope * times - size * np.expm1(-times / tau)
    rise += log_size * np.log1p(times / knee) / np.log1p(length / knee)
    true = (rng.uniform(150, 500) + rise) * rng.uniform(0.9, 1.1)
    shown = np.maximum(np.round(true * (1 + noise * rng.standard_normal(len(times)))), 1)
    return times.tolist(), (shown * MICRON_PA).tolist()


def hit_rates(
    truth: str, length: float, noise: float, tests: int, step: float = 1.0
) -> list[float]:
    """Per cent of the tests called tight, moisture, leak and not yet decided."""
    rng = np.random.default_rng([round(length), round(noise * 1_000), len(truth), tests])
    words = Counter(judge(*readings(rng, truth, length, noise, step)).word for _ in range(tests))
    return [100 * words[word] / tests for word in WORDS]  # type: ignore[index]


def main(tests: int = 500, step: float = 1.0) -> None:
    """Print the table."""
    print("minutes  noise  truth            " + "  ".join(WORDS))  # noqa: T201
    for length in (10, 20):
        for noise in (0.01, 0.02, 0.05):
            for truth in TRUTHS:
                rates = "  ".join(f"{r:5.1f}" for r in hit_rates(truth, length, noise, tests, step))
                print(f"{length:7}  {noise:5}  {truth:15}  {rates}")  # noqa: T201


if __name__ == "__main__":
    main(*(kind(given) for kind, given in zip((int, float), sys.argv[1:], strict=False)))
