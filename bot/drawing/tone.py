"""How a figure stands: for every kind of drawing."""

from enum import Enum

__all__ = [
    "Tone",
]


class Tone(Enum):
    """How a figure stands; always told in words too."""

    PLAIN = "neither good nor bad"
    GOOD = "as wanted"
    DOUBTFUL = "possible, with care"
    BAD = "not to be used"
