"""Nothing that can be typed brings a form down: it is worked out at every keystroke."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chargebench import flags, fluids, rules, steps
from chargebench.steps import REGISTERS, STEPS, STOCK, Case, Form, answer, stock
from tests.steps import cases
from tests.steps.anything import REFRIGERANTS, typed

ALL: dict[str, Form] = {**REGISTERS, **STEPS, **STOCK}
FEWER = settings(max_examples=max(25, settings().max_examples // 5))  # each is a whole case
RULE_SETS = st.sampled_from(rules.names())


@pytest.mark.parametrize("key", ALL)
@given(data=st.data())
def test_that_any_text_is_understood_or_refused_by_field(key: str, data: st.DataObject) -> None:
    form = ALL[key]
    answers = answer(form, data.draw(typed(form)))
    for path, sentence in {**answers.refusals, **answers.missing}.items():
        assert path.split("[")[0] in {each.key for each in form.fields}
        assert sentence
    assert not {*answers.refusals} & {*answers.missing}


def _any_case(data: st.DataObject, rule_set: str, *typed_in: str) -> Case:
    """A job in which these steps and the registers hold whatever was typed."""
    return cases.case(
        {step: data.draw(typed(STEPS[step])) for step in dict.fromkeys(typed_in)},
        rule_set=rule_set,
        equipment=data.draw(typed(REGISTERS["equipment"])),
        site=data.draw(typed(REGISTERS["site"])),
        cylinders={"C-014": data.draw(typed(REGISTERS["cylinder"]))},
        instruments={"S-1": data.draw(typed(REGISTERS["instrument"]))},
        equipment_content_mg=data.draw(st.integers(-10, 10**9)),
        signed=data.draw(st.sampled_from(((), typed_in))),
    )


def _check_look(case: Case, step: str) -> None:
    """All that a keystroke asks for, and what signing would ask for."""
    worked = steps.work_out(case, step)
    assert all(each.label for each in worked.figures)
    assert all(worked.sentences)
    assert all(flag.says for flag in flags.of_step(case, step, worked))
    refused, typed_so_far = steps.refusals(case, step), case.step(step)
    if not (refused or typed_so_far.refusals or typed_so_far.missing):
        assert all(line.mass_mg >= 0 for line in steps.movements(case, step))
        assert all(most >= 0 for most in steps.overdraw_allowed_mg(case, step).values())


@pytest.mark.parametrize("step", STEPS)
@FEWER
@given(data=st.data(), rule_set=RULE_SETS)
def test_that_any_text_in_a_step_is_worked_out(
    step: str, data: st.DataObject, rule_set: str
) -> None:
    _check_look(_any_case(data, rule_set, step, "nameplate", "recovery"), step)


@pytest.mark.parametrize("step", ["pressure_test", "weigh_in"])
@FEWER
@given(data=st.data())
def test_that_any_text_is_worked_out_with_gas_densities_at_hand(
    step: str, data: st.DataObject
) -> None:
    fluids.await_gas_density()
    assert fluids.gas_density_ready()
    _check_look(_any_case(data, "us-federal", step, "nameplate"), step)


@given(data=st.data(), rule_set=RULE_SETS)
def test_that_any_text_in_a_whole_job_raises_whole_sentences(
    data: st.DataObject, rule_set: str
) -> None:
    case = _any_case(data, rule_set, *STEPS)
    worked = {step: steps.work_out(case, step) for step in STEPS}
    raised = flags.of_job(case, worked)
    assert all(
        flag.key and flag.says and flag.about.startswith(("step:", "cyl")) for flag in raised
    )


@given(data=st.data(), rule_set=RULE_SETS, held=st.integers(-(10**6), 10**8))
@pytest.mark.parametrize("act", STOCK)
def test_that_any_text_in_stock_work_is_worked_out(
    act: str, data: st.DataObject, rule_set: str, held: int
) -> None:
    # A register takes no row without its refrigerant.
    row = data.draw(typed(REGISTERS["cylinder"])) | {"refrigerant": "R290"}
    cylinder = answer(REGISTERS["cylinder"], row)
    usual = {key: cases.row("cylinder", row) for key, row in cases.CYLINDERS.items()}
    shelf = stock.Shelf(
        cylinders={**usual, "C-014": cylinder},
        contents_mg={"C-014": {data.draw(st.sampled_from(REFRIGERANTS)): held}},
        instruments={key: cases.row("instrument", row) for key, row in cases.INSTRUMENTS.items()},
        rule_set=cases.rule_set_of(rule_set),
    )
    answers = answer(STOCK[act], data.draw(typed(STOCK[act])))
    worked = stock.work_out(act, answers, shelf)
    assert all(flag.says for flag in flags.of_stock(act, answers, shelf, worked))
    ready = not (answers.refusals or answers.missing)
    if ready and not stock.refusals(act, answers, shelf):
        assert all(line.mass_mg > 0 for line in stock.movements(act, answers, shelf))
        assert stock.places(act, answers)
        assert all(most >= 0 for most in stock.overdraw_allowed_mg(act, answers, shelf).values())
