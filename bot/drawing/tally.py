"""How often things were counted: a bar for each, and the course over the weeks."""

from dataclasses import dataclass

__all__ = ["Course", "Tally", "TallyGroup", "TallyRow"]


@dataclass(frozen=True, slots=True)
class TallyRow:
    """One thing that was counted: its name, how often, and the figure as it is written.

    ``beside`` is a second count of the same thing, drawn as an outline; None where there is none.
    """

    label: str
    times: int
    text: str
    beside: int | None = None


@dataclass(frozen=True, slots=True)
class TallyGroup:
    """What was counted of one kind, under a heading; ``shown`` says how much of it has a row.

    ``fill`` is the number of its fill, the same wherever the kind is drawn.
    """

    heading: str
    rows: tuple[TallyRow, ...]
    explained: str = ""
    shown: str = ""
    fill: int = 0


@dataclass(frozen=True, slots=True)
class Course:
    """The counts of one kind week by week, the oldest first."""

    label: str
    times: tuple[int, ...]
    fill: int = 0


@dataclass(frozen=True, slots=True)
class Tally:
    """Groups of bars below a course with a column for each of the ``weeks``, the oldest first.

    ``unfinished`` says that the last of the weeks is not over.
    """

    title: str
    subtitle: str
    weeks: tuple[str, ...]
    unfinished: bool
    courses: tuple[Course, ...]
    groups: tuple[TallyGroup, ...]
    note: str = ""
