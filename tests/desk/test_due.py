"""What is due in a shop, from the entries it rests on to the entries that ended it."""

from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest

from chargebench.desk import Desk, DueLine, sample
from chargebench.errors import StepRefused
from tests.desk import shops
from tests.desk.shops import at
from tests.desk.test_records import FULL, add, rate, register

TIGHT = {"where": "flare at the receiver", "result": "tight"}


@pytest.fixture
def stocked(desk: Desk) -> Desk:
    """The shop with refrigerant for its walk-in of 20 lb, commercial: over at 20 %."""
    desk.act("receive", {"cylinder": "C-003", "mass": "200 lb"}, at("2026-01-05"))
    return desk


@pytest.fixture(scope="module")
def larkmoor(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Desk]:
    """The sample shop."""
    with sample.build(tmp_path_factory.mktemp("due") / "larkmoor") as built:
        yield built


def owed(desk: Desk, about: str = "equipment:E-002") -> dict[str, DueLine]:
    return {line.what: line for line in desk.due() if line.about == about}


def follow_up(desk: Desk, job: str, day: str, **typed: Any) -> int:
    return desk.sign(job, "follow_up", {"what": "look again", **typed}, at(day)).number


def test_that_tests_end_the_duties_of_an_addition_and_are_named(stocked: Desk) -> None:
    job = add(stocked, 5, "2026-03-02")
    added = next(step for step in stocked.job(job).steps if step.key == "weigh_in").number
    before = owed(stocked)
    assert before["repair"].on == date(2026, 4, 1)
    assert before["repair"].entries == (added,)
    assert (before["repair"].figure, before["repair"].source) == ("30 day", "40CFR84.106, (d)")
    assert rate(stocked).due
    tests = [
        TIGHT | {"kind": "initial", "on": "2026-03-03"},
        TIGHT | {"kind": "follow-up", "on": "2026-03-12"},
    ]
    number = follow_up(stocked, job, "2026-03-12", tests=tests)
    ended = owed(stocked)
    for what in ("repair", "initial verification test", "follow-up verification test"):
        assert ended[what].state == "done"
        assert ended[what].ended_by == (number,)
    assert ended["follow-up verification test"].on == date(2026, 3, 13)
    assert ended["retrofit or retirement plan, if not repaired"].how == "follow-up test tight"
    assert [flag.key for flag in stocked.all_flags() if "leak" in flag.key] == []
    line = rate(stocked)
    assert line.over  # it was over; nothing but the inspection is owed for it any more
    assert line.due == (("leak inspection", date(2027, 3, 12)),)


def test_that_a_test_taken_back_ends_nothing(stocked: Desk) -> None:
    job = add(stocked, 5, "2026-03-02")
    follow_up(stocked, job, "2026-03-03", tests=[TIGHT | {"kind": "initial", "on": "2026-03-03"}])
    assert owed(stocked)["repair"].done_on == date(2026, 3, 3)
    step = next(step for step in stocked.job(job).steps if step.key == "follow_up")
    stocked.reverse(step.entry, "another equipment")
    assert owed(stocked)["repair"].done_on is None


def test_that_a_good_follow_up_starts_the_rolling_average_anew(stocked: Desk) -> None:
    register(stocked, category="other")
    job = add(stocked, 3, "2026-03-02")
    tests = [TIGHT | {"kind": "follow-up", "on": "2026-03-12"}]
    follow_up(stocked, job, "2026-03-12", tests=tests)
    add(stocked, 1, "2026-06-01")
    newest = rate(stocked).computed[-1]
    # 82.152: since the last successful follow-up test, if shorter: 1 lb of 20 lb, not 4.
    assert newest.rolling_pct == pytest.approx(5, abs=1e-3)
    assert newest.rolling_from == date(2026, 3, 13)
    assert newest.rolling_entries == newest.entries


def test_that_more_time_moves_the_repair_and_names_its_entry(stocked: Desk) -> None:
    job = add(stocked, 5, "2026-03-02")
    number = follow_up(
        stocked,
        job,
        "2026-03-20",
        extensions=[
            {"asked": "2026-03-20", "ground": "parts not available in time", "until": "2026-06-30"}
        ],
    )
    repair = owed(stocked)["repair"]
    assert (repair.on, repair.extended_to) == (date(2026, 6, 30), date(2026, 6, 30))
    assert number in repair.entries


def test_that_a_chronic_leaker_is_reported_by_march(stocked: Desk) -> None:
    add(stocked, 13, "2026-02-02")
    job = add(stocked, 12, "2026-08-03")  # 25 of 20 lb: 125 % in the calendar year
    assert owed(stocked)["chronic leaker report"].on == date(2027, 3, 1)
    assert len(owed(stocked)["chronic leaker report"].entries) == 2
    sent = [{"what": "chronic leaker report", "on": "2026-12-01"}]
    follow_up(stocked, job, "2026-12-01", papers=sent)
    assert owed(stocked)["chronic leaker report"].state == "done"


def test_that_a_season_is_counted_only_beyond_what_was_taken_out(stocked: Desk) -> None:
    stocked.act("receive", {"cylinder": "C-009", "mass": "1 g"}, at("2026-02-01"))
    job = stocked.open_job("E-002", happened_at=at("2026-02-02", "08:00"))
    taken = shops.recovery(0, "C-009") | {"seasonal": "yes", "opening": "not opened"}
    taken["lines"][0] |= {"after": "6 lb"}
    stocked.sign(job, "recovery", taken, at("2026-02-02"))
    add(stocked, 7, "2026-05-04", not_counted="seasonal variance")
    line = rate(stocked)
    assert line.rate_pct == pytest.approx(5, abs=1e-3)  # 7 - 6 = 1 lb of 20 lb
    assert not line.over


def chosen(desk: Desk, method: str, why: str = "") -> None:
    row: dict[str, str] = {"name": "Bakery, Quay Street", "leak_method": method}
    desk.save_row("site", "L-001", row | ({"leak_method_why": why} if why else {}))


# One method for all appliances of a facility (82.152, 84.106): the site's decides.
@pytest.mark.parametrize(
    ("method", "counts", "over"),
    [("annualizing", 50, True), ("rolling average", 15, False)],
)
def test_that_the_method_of_the_site_decides(
    stocked: Desk, method: str, counts: float, *, over: bool
) -> None:
    chosen(stocked, method)
    add(stocked, 1, "2026-03-01")
    add(stocked, 2, "2026-05-13")  # 73 days later: 50 % by annualizing, 15 % by rolling average
    line = rate(stocked)
    assert (line.method, line.over) == (method, over)
    assert line.rate_pct == pytest.approx(counts, abs=1e-2)


def test_that_a_change_of_method_is_recorded_under_both(stocked: Desk) -> None:
    chosen(stocked, "annualizing")
    add(stocked, 2, "2026-03-01")
    with pytest.raises(StepRefused) as refusal:
        chosen(stocked, "rolling average")
    assert list(refusal.value.fields) == ["leak_method_why"]
    chosen(stocked, "rolling average", "facility bought, its former owner used the other")
    (entry,) = stocked.reading.entries(kind="leak-method-changed")
    assert entry.payload["from"] == "annualizing"
    assert entry.payload["to"] == "rolling average"
    assert entry.payload["results"] == [
        {"equipment": "E-002", "under": "84.106", "annualizing": "10.00 %",
         "rolling average": "10.00 %"}
    ]  # fmt: skip
    assert stocked.verify().ok


def test_that_the_method_stays_while_an_appliance_is_over_by_either(stocked: Desk) -> None:
    chosen(stocked, "rolling average")
    add(stocked, 1, "2026-03-01")
    add(stocked, 2, "2026-05-13")
    before = stocked.reading.head()
    with pytest.raises(StepRefused, match="Site") as refusal:
        chosen(stocked, "annualizing", "simpler")
    assert "over its threshold by the annualizing method" in refusal.value.fields["leak_method"]
    assert stocked.reading.head() == before


@pytest.mark.parametrize(("days", "state"), [(-1, "overdue"), (0, "open"), (1, "open")])
def test_that_dates_of_the_registers_are_due(desk: Desk, days: int, state: str) -> None:
    on = desk.today + timedelta(days=days)
    desk.save_row("instrument", "I-001", shops.SCALE | {"calibration_due": on.isoformat()})
    desk.save_row("person", "P-02", {"name": "L. Brandvold", "role": "technician",
                                     "certificate_until": on.isoformat()})  # fmt: skip
    number = desk.reading.head()[0]
    for about, what in (("instrument:I-001", "calibration"),
                        ("person:P-02", "renewal of the certificate")):  # fmt: skip
        line = owed(desk, about)[what]
        assert (line.on, line.state) == (on, state)
    assert owed(desk, "person:P-02")["renewal of the certificate"].entries == (number,)
    due = owed(desk, "cylinder:C-001")["requalification"]
    assert (due.on, due.source) == (date(2099, 12, 31), "49CFR173, 180.209, table 1")


# 82.157(l): three years; Regulation 2024/573, article 7(2): "for at least 5 years".
@pytest.mark.parametrize(
    ("rules", "until"), [("us-federal", date(2027, 2, 28)), ("eu-2024-573", date(2029, 2, 28))]
)
def test_that_records_are_kept_as_long_as_the_rule_set_says(
    desk: Desk, rules: str, until: date
) -> None:
    desk.save_row("shop", "shop", shops.SHOP | {"rule_set": rules})
    register(desk, retired="2024-02-29")
    job = desk.open_job("E-001", happened_at=at("2024-02-29", "07:00"))
    for step in desk.job(job).steps:
        if step.key != "follow_up":
            desk.not_needed(job, step.key, "nothing done", at("2024-02-29"))
    desk.close_job(job, happened_at=at("2024-02-29", "18:00"))
    kept = {(line.about, line.keep_until): line for line in desk.retention()}
    assert ("job:B-0001", until) in kept
    assert ("equipment:E-002", until) in kept
    assert ("equipment:E-001", None) in kept
    assert kept["job:B-0001", until].may_be_archived is (until < desk.today)
    (row,) = (line for line in desk.due() if line.about == "records:2024-02")
    assert (row.on, row.start) == (until, date(2024, 2, 29))


def test_that_the_sample_shop_shows_every_state(larkmoor: Desk) -> None:
    ended = owed(larkmoor, "equipment:E-003")
    assert ended["follow-up verification test"].state == "done"
    assert ended["leak inspection"].on == date(2027, 9, 16)
    extended = owed(larkmoor, "equipment:E-007")
    assert extended["repair"].extended_to == date(2027, 1, 31)
    assert extended["chronic leaker report"].on == date(2027, 3, 1)
    waiting = owed(larkmoor, "equipment:E-008")["repair"]
    assert (waiting.on, waiting.done_on) == (date(2026, 12, 24), None)


# Article 5: 40 kg of R448A at GWP 1386 are 55 t: every six months. Article 4(5): the flare of the
# walk-in repaired on 16 June is checked within a month; its follow-up of the 25th did so.
def test_that_the_sample_shop_under_european_rules_owes_leak_checks(tmp_path: Path) -> None:
    with sample.build(tmp_path / "larkmoor") as desk:
        desk.save_row("shop", "shop", desk.shop | {"rule_set": "eu-2024-573"})
        market = owed(desk, "equipment:E-008")["leak check"]
        assert (market.start, market.on) == (date(2017, 10, 2), date(2018, 4, 2))
        assert market.state == "overdue"
        checks = [
            (line.start, line.on, line.done_on)
            for line in desk.due()
            if line.about == "equipment:E-003" and line.what == "check after repair"
        ]
        assert (date(2026, 6, 16), date(2026, 7, 16), date(2026, 6, 25)) in checks
        assert "duty-overdue" in {flag.key for flag in desk.all_flags()}
        (line,) = (each for each in desk.leak_rates() if each.equipment_id == "E-008")
        assert line.co2e_t == pytest.approx(55.44, abs=0.01)


def test_that_a_detection_system_stands_in_for_inspections_and_is_checked(stocked: Desk) -> None:
    register(stocked, leak_detection="yes", detection_checked="2026-02-28")
    add(stocked, 5, "2026-03-02")
    found = owed(stocked)
    assert "leak inspection" not in found
    assert found["leak detection system check"].on == date(2027, 2, 28)


def test_that_a_large_charge_without_a_detection_system_is_flagged(stocked: Desk) -> None:
    for charge, flagged in (("1500 lb", True), ("1499 lb", False)):
        register(stocked, charge=charge)
        keys = [flag.key for flag in stocked.all_flags()]
        assert ("detection-missing" in keys) is flagged


def test_that_a_job_that_tops_up_is_read_with_its_search(stocked: Desk) -> None:
    job = stocked.open_job("E-002", happened_at=at("2026-03-02", "07:00"))
    search: Any = {"method": "bubbles", "all_accessible": "yes", "shutdown": "yes",
              "tests": [TIGHT | {"kind": "initial", "on": "2026-03-02"}]}  # fmt: skip
    number = stocked.sign(job, "leak_search", search, at("2026-03-02", "09:00")).number
    typed = shops.weigh_in(0, "C-003", FULL)
    typed["lines"][0] |= {"end": "-5 lb"}
    stocked.sign(job, "weigh_in", typed, at("2026-03-02"))
    repair = owed(stocked)["repair"]
    assert (repair.figure, repair.on) == ("120 day", date(2026, 6, 30))
    assert repair.ended_by == (number,)


# Article 6(1) and (3): a detection system from 500 t on, itself "checked at least once every 12
# months". 400 kg of R449A at GWP 1396 are 558 t.
def test_that_european_rules_ask_for_detection_from_500_tonnes(desk: Desk) -> None:
    desk.save_row("shop", "shop", shops.SHOP | {"rule_set": "eu-2024-573"})
    register(desk, charge="400 kg", installed="2026-08-31")
    assert "detection-missing" in {flag.key for flag in desk.all_flags()}
    assert owed(desk)["leak check"].on == date(2026, 11, 30)
    fitted = {"leak_detection": "yes", "detection_checked": "2026-09-30"}
    register(desk, charge="400 kg", installed="2026-08-31", **fitted)
    assert "detection-missing" not in {flag.key for flag in desk.all_flags()}
    assert owed(desk)["leak check"].on == date(2027, 2, 28)
    assert owed(desk)["leak detection system check"].on == date(2027, 9, 30)


# Records older than they are kept are not read again; a year more, for what clocks run from.
def test_that_what_is_older_than_its_records_sets_off_nothing(desk: Desk) -> None:
    register(desk, refrigerant="R22", charge="60 lb", installed="2010-01-04")
    desk.save_row("cylinder", "C-003", shops.SAFE | {"refrigerant": "R22", "contents": "new"})
    desk.act("receive", {"cylinder": "C-003", "mass": "200 lb"}, at("2021-01-05"))
    days = desk.rule_set.records.keep.quantity.m_as("day") + 365
    for age, counted in ((days + 2, 0), (days - 2, 1)):
        day = (desk.today - timedelta(days=age)).isoformat()
        job = add(desk, 20, day)
        for step in desk.job(job).steps:
            if step.state == "open" and step.key != "follow_up":
                desk.not_needed(job, step.key, "nothing done", at(day, "11:00"))
        desk.close_job(job, happened_at=at(day, "18:00"))
        assert len(rate(desk).computed) == counted
