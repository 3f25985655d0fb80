"""Stock-takes: many cylinders against the ledger, signed all or none; doubts of both sides."""

import math

import pytest

from chargebench.desk import Desk
from chargebench.desk.stocktake import TypedStockTake
from chargebench.errors import Overdrawn, StepRefused
from chargebench.steps.stocktake import Word
from tests.desk import shops
from tests.desk.shops import held


def line(cylinder: str, gross: str, **more: str) -> dict[str, str]:
    return {"cylinder": cylinder, "gross": gross, **more}


def typed(*lines: dict[str, str]) -> TypedStockTake:
    return TypedStockTake("I-001", lines)


@pytest.fixture
def stocked(desk: Desk) -> Desk:
    """400 g of R290 in a cylinder of 3600 g, 2 kg of R449A in one of 6 kg."""
    shops.receive(desk, "400 g")
    shops.receive(desk, "2 kg", "C-003")
    return desk


def words(desk: Desk, *lines: dict[str, str]) -> dict[str, Word]:
    found = desk.look_stocktake(typed(*lines))
    return {each.cylinder: each.word for each in (*found.lines, *found.open)}


def test_that_each_cylinder_stands_by_a_word(stocked: Desk) -> None:
    found = words(
        stocked,
        line("C-001", "3990 g"),
        line("C-003", "7.7 kg"),
        line("C-002 R600a", "8 kg"),
        line("X-99", "5 kg"),
    )
    assert found == {
        "C-001": Word.AGREES,
        "C-003": Word.DIFFERS,
        "C-002": Word.OTHER,
        "X-99": Word.STRANGE,
        "C-009": Word.OPEN,
    }


def test_that_a_cylinder_weighed_again_counts_as_weighed_last(stocked: Desk) -> None:
    found = stocked.look_stocktake(typed(line("C-001", "3 kg"), line("C-001", "4000 g")))
    (counted,) = found.lines
    assert (counted.word, counted.gross) == (Word.AGREES, "4000 g")


def test_that_it_is_signed_as_an_entry_for_each_cylinder_and_one_for_all(stocked: Desk) -> None:
    before = stocked.reading.head()[0]
    entries = stocked.sign_stocktake(
        typed(
            line("C-001", "3990 g"),
            line("C-003", "7.7 kg", accept="yes", reason="valve left open"),
            line("X-99", "5 kg"),
        )
    )
    assert [entry.kind for entry in entries] == ["weighed", "weighed", "stock-take"]
    assert stocked.reading.head()[0] == before + 3
    assert held(stocked, "cylinder:C-001") == 400_000  # within: left as it is
    assert held(stocked, "cylinder:C-003", "R449A") == 1_700_000
    assert held(stocked, "difference", "R449A") == 300_000
    summary = entries[-1].payload
    assert summary["entries"] == [entry.id for entry in entries[:2]]
    assert summary["not_counted"] == ["C-002", "C-009"]
    assert "Not in the register: X-99." in summary["said"]
    assert "Not counted yet: C-002, C-009." in summary["said"]
    assert "C-003: 300.0 g less than the ledger says, booked: valve left open." in summary["said"]
    assert {c.id: c.last_weighed != "" for c in stocked.cylinders()}["C-003"]
    assert stocked.verify().ok


@pytest.mark.parametrize(
    ("bad", "says"),
    [
        (line("C-003", "7.7 kg"), "Book the difference with a reason, or leave it"),
        (line("C-003", "7.7 kg", accept="yes"), "Expected the reason"),
        (line("C-003", "5 kg"), "less than the tare"),
        (line("C-003", ""), "Expected its weight"),
        (line("C-003", "7.7 furlong"), "furlong"),
    ],
)
def test_that_one_unsettled_line_leaves_all_unsigned(
    stocked: Desk, bad: dict[str, str], says: str
) -> None:
    before = stocked.reading.head()
    with pytest.raises(StepRefused, match=says) as refusal:
        stocked.sign_stocktake(typed(line("C-001", "3990 g"), bad))
    assert set(refusal.value.fields) == {"C-003"}
    assert stocked.reading.head() == before


def test_that_a_difference_may_be_left_to_be_found_out(stocked: Desk) -> None:
    stocked.sign_stocktake(typed(line("C-003", "7.7 kg", accept="no")))
    assert held(stocked, "cylinder:C-003", "R449A") == 2_000_000
    (shown,) = stocked.cylinders("C-003")
    assert "unaccounted-mass" in {flag.key for flag in shown.flags}


def test_that_what_the_ledger_refuses_in_the_middle_leaves_nothing(
    stocked: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = stocked.reading.head()
    monkeypatch.setattr("chargebench.steps.stock.overdraw_allowed_mg", lambda *_: {})
    stocked.save_row("cylinder", "C-003", shops.CYLINDERS["C-003"] | {"tare": "9 kg"})
    both = typed(
        line("C-001", "3990 g"), line("C-003", "8.99 kg", accept="yes", reason="wrong tare")
    )
    with pytest.raises(Overdrawn):
        stocked.sign_stocktake(both)
    assert stocked.reading.head()[0] == before[0] + 1  # the register's change alone


def test_that_it_needs_a_scale_and_a_cylinder(stocked: Desk) -> None:
    with pytest.raises(StepRefused) as refusal:
        stocked.sign_stocktake(TypedStockTake("I-9"))
    assert set(refusal.value.fields) == {"scale", "lines"}


def test_that_what_is_typed_outlives_the_program_until_it_is_signed(stocked: Desk) -> None:
    begun = typed(line("C-001", "3990 g"), line("C-003", "7.7"))
    stocked.keep_stocktake(begun)
    with Desk.open(stocked.path) as again:  # the first is still open, as after a crash
        assert again.stocktake_typed() == begun
        again.sign_stocktake(begun.without("C-003"))
        assert again.stocktake_typed() == TypedStockTake()


def doubt(desk: Desk, cylinder: str = "C-001", gross: str = "4000 g") -> tuple[int, int, int]:
    """Tolerance in milligrams, and what of it is the scale's and the ledger's."""
    (counted,) = desk.look_stocktake(typed(line(cylinder, gross))).lines
    assert counted.weighing is not None
    return counted.weighing.tolerance_mg, counted.weighing.scale_mg, counted.weighing.ledger_mg


# JCGM 100:2008, 4.3.7 and 5.1.2, worked by hand. The scale: 0.5 % of 4000 g on it (HVACLAB).
# The ledger: 400 g as invoiced, 0.5 % of it as a rectangular half-width, k = 2: 2 * 2 / sqrt(3).
def test_that_the_tolerance_comes_from_scale_and_ledger_in_quadrature(stocked: Desk) -> None:
    tolerance, scale, ledger = doubt(stocked)
    assert scale == 20_000
    assert ledger == pytest.approx(1_000 * 4 / math.sqrt(3), abs=1)
    assert tolerance == pytest.approx(math.hypot(scale, ledger), abs=1)


# Two readings of 0.1 g: u = 0.1 / sqrt(6) each time it was decanted from (JCGM 100, 4.3.7).
def test_that_every_movement_adds_to_the_ledgers_doubt_and_a_booked_weighing_ends_it(
    stocked: Desk,
) -> None:
    invoiced = 2 / math.sqrt(3)
    for after in ("3950 g", "3900 g", "3850 g"):
        stocked.act(
            "decant",
            {"source": "C-001", "target": "C-002", "scale": "I-001", "weighed": "from",
             "before": f"{int(after[:4]) + 50} g", "after": after},
        )  # fmt: skip
    one = 0.1 / math.sqrt(6)
    expected = 2 * math.sqrt(invoiced**2 + 3 * one**2)
    assert doubt(stocked, gross="3850 g")[2] == pytest.approx(1_000 * expected, abs=1)
    weigh = {"cylinder": "C-001", "scale": "I-001", "gross": "3840 g"}
    stocked.act("weigh", weigh)  # looked at only: the ledger stands as it stood
    assert doubt(stocked, gross="3850 g")[2] == pytest.approx(1_000 * expected, abs=1)
    stocked.act("weigh", weigh | {"accept": "yes", "reason": "hose"})
    assert doubt(stocked, gross="3840 g")[2] == 19_200  # 0.5 % of 3840 g: the scale it was set by


def test_that_a_weighing_shows_what_each_side_adds_to_its_tolerance(stocked: Desk) -> None:
    look = stocked.look_stock("weigh", {"cylinder": "C-001", "scale": "I-001", "gross": "4000 g"})
    figures = {figure.key: figure for figure in look.worked.figures}
    of_scale, of_ledger = figures["of-scale"].value, figures["of-ledger"].value
    limit = figures["difference"].limit
    assert not isinstance(of_scale, str)
    assert not isinstance(of_ledger, str)
    assert limit is not None
    assert not isinstance(limit, str)
    assert of_scale.m_as("g") == 20
    assert of_ledger.m_as("g") == pytest.approx(4 / math.sqrt(3), abs=1e-3)
    assert limit.m_as("g") == pytest.approx(math.hypot(20, 4 / math.sqrt(3)), abs=1e-3)
