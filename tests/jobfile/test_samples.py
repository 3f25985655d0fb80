"""The sample jobs: each is opened, stands as the program would write it, and tells its story."""

from collections.abc import Iterator
from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from chargebench import jobfile
from chargebench.calc.evacuation import judge
from chargebench.jobfile import JobFile, StepTyped
from chargebench.resource import sample_jobs
from chargebench.steps import STEPS, answer
from chargebench.steps.forms.stock import STOCK

SAMPLES = sorted(sample_jobs().glob("*.json"))
WRITTEN_ON = date(2026, 11, 25)


def _named(part: str) -> JobFile:
    (path,) = (path for path in SAMPLES if part in path.stem)
    return jobfile.read(path)


def _steps(file: JobFile, key: str) -> list[StepTyped]:
    assert file.job is not None
    return [step for step in file.job.steps if step.step == key]


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_that_a_sample_is_read_and_stands_as_it_would_be_written(path: Path) -> None:
    content = path.read_bytes()
    assert jobfile.write(jobfile.read(content)) == content


def test_that_the_first_file_has_the_shop_and_the_others_have_not() -> None:
    assert [jobfile.read(path).shop is not None for path in SAMPLES] == [
        True,
        *[False] * (len(SAMPLES) - 1),
    ]


def test_that_rows_are_the_same_in_every_file_that_brings_them() -> None:
    rows: dict[tuple[str, str], object] = {}
    for path in SAMPLES:
        for register, held in jobfile.read(path).register.items():
            for key, row in held.items():
                assert rows.setdefault((register, key), row) == row, f"{path.stem}: {key}"
    assert len(rows) > 30


def test_that_everything_happened_in_order_and_in_the_past() -> None:
    opened = [file.job.opened_at for file in map(jobfile.read, SAMPLES) if file.job is not None]
    assert opened == sorted(opened)
    assert datetime(2025, 1, 1, tzinfo=UTC) < opened[0]
    assert opened[-1].date() < WRITTEN_ON


def test_that_every_step_and_every_act_is_shown_at_work() -> None:
    files = [jobfile.read(path) for path in SAMPLES]
    done = {step.step for f in files if f.job for step in f.job.steps if not step.not_needed}
    assert done == set(STEPS)
    assert {act.act for f in files for act in f.stock} == set(STOCK)


def _mixed_units() -> Iterator[str]:
    for path in SAMPLES:
        text = path.read_text(encoding="utf-8")
        yield from (
            unit
            for unit in ("psig", "bar(g)", "micron", "°C", " F", " oz", " lb", " g", " kg", "inHg")
            if f'{unit}"' in text
        )


def test_that_units_are_mixed_as_people_type_them() -> None:
    assert len(set(_mixed_units())) >= 8


def test_that_the_bakery_freezer_leaked_at_its_process_valve_and_got_too_much() -> None:
    file = _named("bakery-freezer")
    (search,) = _steps(file, "leak_search")
    answers = answer(STEPS["leak_search"], search.typed)
    assert answers.text("method") == "bubbles"
    assert [leak.text("where") for leak in answers.lines("leaks")] == ["process valve core"]
    (weighed,) = _steps(file, "weigh_in")
    (line,) = answer(STEPS["weigh_in"], weighed.typed).lines("lines")
    start, end = line.mass_mg("start"), line.mass_mg("end")
    assert start is not None
    assert end is not None
    assert 2_000 < start - end - 85_049 < 5_000  # mg; 3.0 oz is 85 049 mg


def test_that_the_pastry_cabinet_was_wet_first_and_dry_then() -> None:
    words = []
    for step in _steps(_named("pastry-cabinet"), "evacuation"):
        lines = answer(STEPS["evacuation"], step.typed).lines("decay")
        at = [line.quantity("at").m_as("min") for line in lines]  # type: ignore[union-attr]
        pressures = [line.quantity("reading").m_as("Pa") for line in lines]  # type: ignore[union-attr]
        words.append(str(judge(at, pressures).word))
    assert words == ["moisture", "tight"]


def test_that_the_bottle_cooler_was_left_sealed() -> None:
    file = _named("bottle-cooler")
    opened = ("pressure_test", "recovery", "evacuation", "weigh_in")
    assert all(step.not_needed for key in opened for step in _steps(file, key))
    readings = [step.typed for key in ("as_found", "as_left") for step in _steps(file, key)]
    assert all(typed["tapped"] == "no" for typed in readings)
    read = {key for typed in readings for key in typed}
    assert not read & {"suction_pressure", "discharge_pressure", "refrigerant_found"}


def test_that_the_walk_in_is_visited_three_times_and_brought_to_full_charge_each_time() -> None:
    files = [jobfile.read(path) for path in SAMPLES if "walk-in" in path.stem]
    kinds = [_steps(file, "weigh_in")[0].typed["kind"] for file in files]
    assert kinds == ["brought to full charge"] * 3


def test_that_the_display_cabinet_ends_out_of_service_with_its_charge_recovered() -> None:
    file = _named("display-cabinet")
    assert _steps(file, "close")[0].typed["ends"] == "taken out of service"
    assert _steps(file, "recovery")[0].typed["how"] == "recovered"


def test_that_makers_figures_of_the_earlier_form_are_still_read() -> None:
    (path,) = (path for path in SAMPLES if "pastry-cabinet" in path.stem)
    text = path.read_text(encoding="utf-8")
    new = '"reading": "compressor current",'
    assert new in text
    file = jobfile.read(text.replace(new, "").encode())
    (support,) = _steps(file, "support")
    answers = answer(STEPS["support"], support.typed)
    assert (answers.refusals, answers.missing) == ({}, {})
    assert [line.text("what") for line in answers.lines("figures")] == [
        "at 22 °C room",
        "pull-down to 5 °C",
    ]
