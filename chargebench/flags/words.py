"""Words that flags and heads share."""

from chargebench.words import say

_CLASSES = {
    "1": "not flammable",
    "2L": "mildly flammable",
    "2": "flammable",
    "3": "highly flammable",
}


def class_words(safety_class: str) -> str:
    """A safety class with what it means: A3 highly flammable.

    The second part of the class is its flammability, B before it means toxic (ISO817).
    """
    toxic = "toxic, " if safety_class.startswith("B") else ""
    return say(
        "{safety_class} {toxic}{flammability}",
        safety_class=safety_class,
        toxic=toxic,
        flammability=_CLASSES[safety_class[1:]],
    )
