"""The same balances by other means: a spreadsheet, a plain-text ledger, a columnar engine.

Peers are optional. `CHARGEBENCH_PEERS` names a Python with beancount and duckdb; a peer that is
not there is passed over with a word. The spreadsheet and the plain-text ledger get the newest
100 000 mass lines only, for they take minutes for all.

Usage: python -m tests.benchmarks.peers beancount | duckdb FILE (by the other Python)
"""

import json
import os
import shutil
import sqlite3
import subprocess
import sys
import time
from collections.abc import Iterator, Sequence
from pathlib import Path

from tests.benchmarks.measure import Row, child, median

LINES_MOST = 100_000
SUMIFS = 500  # cells; the time for each cylinder's is then known

Line = tuple[str, str, str, int, str]


def _lines(shop: Path) -> list[Line]:
    tool = sqlite3.connect(f"{shop.as_uri()}?mode=ro", uri=True)
    rows = tool.execute(
        "SELECT source, target, refrigerant, mass_mg, substr(happened_at, 1, 10) FROM transfer "
        "JOIN entry ON position = entry ORDER BY entry DESC, line DESC LIMIT ?",
        (LINES_MOST,),
    ).fetchall()
    tool.close()
    return rows


def _ours(lines: Sequence[Line], folder: Path) -> float:
    """Running totals of the same lines, read through the program."""
    from chargebench.ledger import Ledger

    path = folder / "peer.chargebench"
    Ledger.create(path).close()
    sums: dict[tuple[str, str], int] = {}
    for source, target, refrigerant, mass_mg, _ in lines:
        for place, gain in ((source, -mass_mg), (target, mass_mg)):
            sums[place, refrigerant] = sums.get((place, refrigerant), 0) + gain
    tool = sqlite3.connect(path)
    tool.executemany("INSERT INTO balance VALUES (?,?,?)", [(*key, mg) for key, mg in sums.items()])
    tool.commit()
    tool.close()
    with Ledger.open(path, backups=0) as ledger:
        return median(lambda: ledger.balances(""))


def _sheet(lines: Sequence[Line], folder: Path) -> float:
    """Seconds of LibreOffice for every SUMIFS: those of a file with some, less one with none."""
    from openpyxl import Workbook

    took = []
    for count in (0, SUMIFS):
        book = Workbook(write_only=True)
        data, totals = book.create_sheet("Lines"), book.create_sheet("Totals")
        for source, target, _, mass_mg, _ in lines:
            data.append([source, target, mass_mg])
        places = sorted({line[1] for line in lines})
        for place in (places * SUMIFS)[:count]:
            totals.append([f'=SUMIFS(Lines!C:C,Lines!B:B,"{place}")'])
        path = folder / f"sums{count}.xlsx"
        book.save(path)
        profile = f"-env:UserInstallation={(folder / 'profile').as_uri()}"
        began = time.perf_counter()
        subprocess.run(
            ["soffice", profile, "--headless", "--convert-to", "ods", "--outdir", str(folder),
             str(path)],
            check=True, capture_output=True,
        )  # fmt: skip
        took.append(time.perf_counter() - began)
    return max(took[1] - took[0], 0.0) / SUMIFS * len({line[1] for line in lines})


def _account(place: str) -> str:
    kind, _, name = place.partition(":")
    return f"Assets:{kind.title()}" + (f":X{name.replace('-', '')}" if name else "")


def _plain_text(lines: Sequence[Line], path: Path) -> None:
    places = sorted({end for line in lines for end in line[:2]})
    with path.open("w", encoding="utf-8") as file:
        file.writelines(f"1970-01-01 open {_account(place)}\n" for place in places)
        for source, target, refrigerant, mass_mg, day in lines:
            file.write(
                f'{day} * "x"\n  {_account(source)}  -{mass_mg} {refrigerant.upper()}\n'
                f"  {_account(target)}  {mass_mg} {refrigerant.upper()}\n\n"
            )


def rows(shop: Path, folder: Path) -> Iterator[Row]:
    """Each peer that is at hand, beside the program on the same lines."""
    lines = _lines(shop)
    ours = _ours(lines, folder) * 1e3
    what = f"every balance of {len(lines)} lines"
    if shutil.which("soffice"):
        yield Row(what, ours, "ms", "LibreOffice SUMIFS", _sheet(lines, folder) * 1e3, runs=1)
    python = os.environ.get("CHARGEBENCH_PEERS")
    if not python:
        print("no other peers: CHARGEBENCH_PEERS names a Python with beancount and duckdb")
        return
    _plain_text(lines, folder / "lines.beancount")
    (folder / "lines.json").write_text(json.dumps(lines), encoding="utf-8")
    for peer, file in (("duckdb", "lines.json"), ("beancount", "lines.beancount")):
        try:
            said = child("tests.benchmarks.peers", peer, str(folder / file), python=python)
        except RuntimeError as problem:
            print(f"{peer} is left out: {str(problem)[-200:]}")
            continue
        yield Row(what, ours, "ms", peer, said["took"] * 1e3, runs=said["runs"])


def _duckdb(path: Path) -> tuple[float, int]:
    import duckdb  # type: ignore[import-not-found]

    engine = duckdb.connect()
    lines = json.loads(path.read_text(encoding="utf-8"))
    engine.execute("CREATE TABLE line (source TEXT, target TEXT, of TEXT, mg BIGINT, day TEXT)")
    csv = path.with_suffix(".csv")
    csv.write_text("".join(",".join(map(str, line)) + "\n" for line in lines), encoding="utf-8")
    engine.execute(f"INSERT INTO line SELECT * FROM read_csv('{csv}', header=false)")  # noqa: S608
    query = (
        "SELECT place, of, sum(mg) FROM (SELECT target place, of, mg FROM line UNION ALL "
        "SELECT source, of, -mg FROM line) GROUP BY ALL"
    )
    return median(lambda: engine.execute(query).fetchall()), 5


def _beancount(path: Path) -> tuple[float, int]:
    from beancount import loader  # type: ignore[import-not-found]
    from beancount.core import realization  # type: ignore[import-not-found]

    began = time.perf_counter()
    entries, errors, _ = loader._load([(str(path), True)], None, None, None)
    assert not errors, errors[:2]
    realization.realize(entries)
    return time.perf_counter() - began, 1


if __name__ == "__main__":
    work = {"duckdb": _duckdb, "beancount": _beancount}[sys.argv[1]]
    took_s, times = work(Path(sys.argv[2]))
    print(json.dumps({"took": took_s, "runs": times}))
