"""How time, memory and file size grow with the records: a plot.

Usage: python -m tests.benchmarks.growth OUT.svg SHOP... (made by tests.benchmarks.shops)
"""

import math
import sys
from collections.abc import Mapping, Sequence
from pathlib import Path

from chargebench.desk import Desk
from tests.benchmarks.measure import child, median

WIDTH, HEIGHT, LEFT, TOP, PLOT_W, PLOT_H = 760, 430, 62, 24, 420, 340
COLOURS = ("#1b6ca8", "#c2571a", "#3d7f3f", "#8a3c8f", "#8a6d1b", "#b0303a", "#555555", "#2a8a8a")
Point = tuple[float, float]


def measured(path: Path) -> dict[str, float]:
    """Milliseconds of what a person waits for, and MiB held and stored."""
    with Desk.open_reading(path) as desk:
        ledger = desk.reading
        busy = max(ledger.balances(), key=lambda held: held.mass_mg).place
        found = {
            "balances [ms]": median(ledger.balances) * 1e3,
            "usage page [ms]": median(lambda: ledger.usage(limit=200)) * 1e3,
            "totals of everything [ms]": median(ledger.usage_totals) * 1e3,
            "history page [ms]": median(lambda: ledger.history(busy)) * 1e3,
            "find a job [ms]": median(lambda: ledger.jobs(find="B-0042", limit=200)) * 1e3,
            "cylinders page [ms]": median(lambda: desk.cylinders(limit=200)) * 1e3,
        }
    found["memory, areas shown [MiB]"] = child(
        "tests.benchmarks.window", str(path), "areas", "idle", "2"
    )["rss"]
    found["file [MiB]"] = path.stat().st_size / 2**20
    return found


def svg(lines: Mapping[str, Sequence[Point]]) -> str:
    """The plot on two logarithmic scales, as text."""
    every = [point for line in lines.values() for point in line]
    x_least, x_most = (pick(math.log10(x) for x, _ in every) for pick in (min, max))
    y_least = math.floor(min(math.log10(y) for _, y in every))
    y_most = math.ceil(max(math.log10(y) for _, y in every))

    def at(x: float, y: float) -> str:
        across = (math.log10(x) - x_least) / (x_most - x_least)
        up = (math.log10(y) - y_least) / (y_most - y_least)
        return f"{LEFT + across * PLOT_W:.1f},{TOP + (1 - up) * PLOT_H:.1f}"

    parts = [
        (
            f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" '
            'font-family="sans-serif" font-size="12">'
        ),
        f'<rect width="{WIDTH}" height="{HEIGHT}" fill="#ffffff"/>',
    ]
    for power in range(y_least, y_most + 1):
        x, y = at(10**x_least, 10.0**power).split(",")
        parts.append(f'<path d="M{x} {y}h{PLOT_W}" stroke="#dddddd"/>')
        parts.append(f'<text x="{LEFT - 6}" y="{y}" text-anchor="end">{10.0**power:g}</text>')
    for size in sorted({x for x, _ in every}):
        x, _ = at(size, 10.0**y_least).split(",")
        parts.append(f'<text x="{x}" y="{TOP + PLOT_H + 18}" text-anchor="middle">{size:g}</text>')
    foot = TOP + PLOT_H + 40
    parts.append(f'<text x="{LEFT}" y="{foot}">entries in the shop; milliseconds or MiB</text>')
    for number, (name, line) in enumerate(lines.items()):
        colour, down = COLOURS[number % len(COLOURS)], TOP + 14 + 22 * number
        points = " ".join(at(*point) for point in sorted(line))
        parts.append(
            f'<polyline points="{points}" fill="none" stroke="{colour}" stroke-width="2"/>'
        )
        parts.append(f'<text x="{LEFT + PLOT_W + 20}" y="{down}" fill="{colour}">{name}</text>')
    return "\n".join([*parts, "</svg>"]) + "\n"


def main(arguments: Sequence[str]) -> None:
    """Measure each shop and write the plot."""
    lines: dict[str, list[Point]] = {}
    for path in map(Path, arguments[1:]):
        with Desk.open_reading(path) as desk:
            entries = desk.reading.head()[0]
        for name, value in measured(path).items():
            lines.setdefault(name, []).append((entries, value))
            print(f"{entries}\t{name}\t{value:.3g}", flush=True)
    Path(arguments[0]).write_text(svg(lines), encoding="utf-8")


if __name__ == "__main__":
    main(sys.argv[1:])
