"""The rules a shop's form chooses, in words: before they are saved and after."""

from pathlib import Path

from chargebench import rules
from chargebench.desk.opened import chosen_rules
from chargebench.errors import RuleSetRefused
from chargebench.rules import RuleSet
from chargebench.steps import Typed
from chargebench.words import say


def rules_said(typed: Typed, folder: Path) -> tuple[str, str]:
    """Why the rule file is refused, if it is there, and what the rules chosen are.

    A path that is still being typed is no refusal yet; saving refuses it.
    """
    file = str(typed.get("rule_file", "")).strip()
    try:
        if file and not (folder / Path(file).expanduser()).is_file():
            typed = {**typed, "rule_file": ""}
        return "", rules_words(chosen_rules(typed, folder))
    except (RuleSetRefused, RuntimeError, OSError) as refusal:
        return str(refusal), ""


def rules_words(rule_set: RuleSet) -> str:
    """Title, jurisdiction, edition, effective date, and how many figures are not verified."""
    figures = rules.figures(rule_set)
    unverified = sum(figure.unverified for figure in figures)
    return say(
        "{rule_set}. Jurisdiction: {jurisdiction}. Edition {edition}, in effect "
        "from {effective}. Of its {count} figures {unverified} are not checked "
        "at their source; they are marked so wherever they decide.",
        rule_set=rule_set.title,
        jurisdiction=rule_set.jurisdiction,
        edition=rule_set.edition,
        effective=rule_set.effective,
        count=len(figures),
        unverified=unverified,
    )


def file_to_type(path: Path, folder: Path) -> str:
    """How a rule file is written in the form: beside the shop's records by its name alone."""
    return path.name if path.parent.resolve() == folder.resolve() else str(path)
