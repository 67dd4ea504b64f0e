"""The parts of an answer that open when they are asked for, by their names."""

from enum import StrEnum
from typing import Literal

__all__ = ["LABELLED", "PartName", "part_label"]


class PartName(StrEnum):
    """A part that opens when it is asked for, in the order in which they are told."""

    STEPS = "steps"
    NUMBERS = "numbers"
    WHY = "why"
    CARE = "care"
    SOURCES = "sources"


LABELLED = (*PartName, "sheet")
"""What has a label: the parts, then the care sheet."""


def part_label(name: PartName | Literal["sheet"]) -> str:
    """Return what a part is called where it is opened.

    >>> part_label(PartName.CARE)
    'Care'
    """
    return str(name).capitalize()
