"""What records of a leak prove and what of them counts, at the edges; reckoned by hand."""

from datetime import date

from chargebench.calc.leak_rate import (
    Addition,
    Extension,
    Paper,
    Removal,
    VerificationTest,
    merged,
    without_seasonal,
)
from chargebench.calc.leak_rate.verifying import Proof, good_follow_ups, proof
from chargebench.units import Q
from tests.calc.leaks import american

SEASONAL = "seasonal variance"
Row = tuple[date, float, str]


def put_back(additions: list[Addition], removals: list[Removal]) -> list[Row]:
    found = without_seasonal(additions, removals, american().seasonal_within)
    return [(one.on, round(one.mass.m_as("g"), 6), one.not_counted) for one in found]


def kg(on: date, kilograms: float, not_counted: str = SEASONAL) -> Addition:
    return Addition(on, Q(kilograms, "kg"), not_counted)


OUT = Removal(date(2025, 11, 30), Q(10, "kg"))
APRIL, MAY, JUNE = date(2026, 4, 1), date(2026, 5, 1), date(2026, 6, 1)


# 82.152 (seasonal variance): no more than was removed, within 12 months.
def test_that_only_what_is_called_seasonal_is_put_back() -> None:
    assert put_back([kg(APRIL, 3, ""), kg(MAY, 8)], [OUT]) == [
        (APRIL, 3000, ""),
        (MAY, 8000, SEASONAL),
    ]


def test_that_a_removal_used_up_lets_nothing_more_through() -> None:
    assert put_back([kg(APRIL, 6), kg(MAY, 6), kg(JUNE, 1)], [OUT]) == [
        (APRIL, 6000, SEASONAL),
        (MAY, 4000, SEASONAL),
        (MAY, 2000, ""),
        (JUNE, 1000, ""),
    ]


def test_that_what_is_put_back_on_the_day_of_removal_is_put_back() -> None:
    assert put_back([kg(OUT.on, 2)], [OUT]) == [(OUT.on, 2000, SEASONAL)]


def test_that_the_removal_that_runs_out_first_is_used_first() -> None:
    late, early = Removal(date(2026, 2, 1), Q(5, "kg")), Removal(date(2025, 11, 30), Q(5, "kg"))
    after_the_first = date(2026, 12, 15)
    assert put_back([kg(MAY, 5), kg(after_the_first, 5)], [late, early]) == [
        (MAY, 5000, SEASONAL),
        (after_the_first, 5000, SEASONAL),
    ]


def test_that_a_milligram_more_counts() -> None:
    assert put_back([kg(MAY, 10.000_001)], [OUT])[1] == (MAY, 0.001, "")


def test_that_an_addition_counts_and_names_no_entry_unless_it_is_said() -> None:
    plain = Addition(APRIL, Q(1, "kg"))
    assert (plain.not_counted, plain.entries) == ("", ())
    assert put_back([plain], [OUT]) == [(APRIL, 1000, "")]


def test_that_merged_additions_keep_the_entries_of_both() -> None:
    both = [Addition(APRIL, Q(1, "kg"), "", (3,)), Addition(APRIL, Q(1, "kg"), "", (4,))]
    assert [one.entries for one in merged(both, american().merge_window)] == [(3, 4)]


def test_that_records_without_an_entry_have_none() -> None:
    assert Removal(APRIL, Q(1, "kg")).entry == 0
    assert VerificationTest(APRIL, "initial", tight=True).entry == 0
    assert Paper("plan", APRIL).entry == 0
    waiting = Extension(APRIL, MAY, "parts")
    assert (waiting.delivered, waiting.entry) == (None, 0)
    assert proof([], APRIL) == Proof(None, None) == Proof()


def shown(
    on: date, kind: str = "follow-up", *, tight: bool = True, entry: int = 0
) -> VerificationTest:
    return VerificationTest(on, kind, tight, entry)


# 82.152 (rolling average): since "the last successful follow-up verification test" of every leak.
def test_that_good_follow_ups_are_those_tight_in_all_leaks_of_a_day() -> None:
    tests = [
        shown(JUNE),
        shown(APRIL),
        shown(MAY),
        shown(MAY, tight=False),
        shown(date(2026, 4, 2), "initial"),
    ]
    assert good_follow_ups(tests) == (APRIL, JUNE)


def test_that_tests_of_two_kinds_on_a_day_are_judged_apart() -> None:
    found = proof([shown(MAY, entry=2), shown(MAY, "initial", entry=1)], APRIL)
    assert found.initial is not None
    assert found.follow_up is not None
    assert (found.initial.entry, found.follow_up.entry) == (1, 2)
    of_a_day = proof([shown(MAY, "initial", entry=8), shown(MAY, "initial", entry=9)], APRIL)
    assert of_a_day.initial is not None
    assert of_a_day.initial.entry == 9
