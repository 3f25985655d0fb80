"""The fault report: `python -m tests.faults [--short]`; ends with 1 where anything was not so.

The control acknowledges an entry before it is recorded: the report must find the loss.
"""

import sys

from tests.faults import disk

SHORT_STEP = 31


def main(arguments: list[str]) -> int:
    step = SHORT_STEP if "--short" in arguments else 1
    outcomes = disk.every_call(step)
    if not outcomes:
        print("not done: a failing disk takes Linux and gcc")
        return 1
    control = disk.every_call(7, "early", at_most=40)
    print("kind\ttried\tacknowledged and lost\taltered unseen\tnot opened again")
    for each in (*outcomes, *control):
        name = each.kind if each in outcomes else f"CONTROL (acknowledged early): {each.kind}"
        print(name, each.tried, each.lost, each.altered, each.closed, sep="\t")
    caught = any(each.lost for each in control)
    print("the control's loss was caught" if caught else "the control's loss was NOT caught")
    return 0 if caught and all(each.ok for each in outcomes) else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
