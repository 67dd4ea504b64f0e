"""A UV tube as facts: what it is, how long, and how that is known. Words: ``tubes.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from enum import Enum, auto
from typing import Protocol

from bot.facts import Figure, Length, Power, Say, Share, metres, share, watts
from bot.language.errors import NotUnderstoodError
from bot.language.lamps import OtherLamp, TubeStrength
from bot.language.quantities import Measure
from bot.language.uv_lamps import UvLamp
from bot.layered import Row
from bot.queries.options import OwnTube
from bot.questions.animals import GROUPS_OWN
from calc.uv.lamp import Fixture, Lamp, OwnPoint, side_by_side
from calc.uv.lengths import DARK_ENDS_M, LengthKnown
from calc.uv.tube import STANDARD_T5_HO

__all__ = [
    "Assumed",
    "ByGroup",
    "LongKnown",
    "NamedByTube",
    "Tube",
    "Whose",
    "all_together",
    "by_group",
    "group_differs",
    "group_rows",
    "group_short",
    "group_sources",
    "length_sources",
    "length_steps",
    "length_value",
    "tube_assumed",
    "tube_rows",
    "tube_told",
]

_SHORTEST = STANDARD_T5_HO[0]
# The tube of the watts that the example names.
_EXAMPLE = STANDARD_T5_HO[1]


class _Several(Protocol):
    """What a question tells of tubes side by side."""

    @property
    def tubes(self) -> int: ...

    @property
    def gap(self) -> Measure | None: ...


def all_together(lamp: Lamp, told: _Several) -> Lamp:
    """Return a lamp as one of so many, with the space between them where it was told.

    A small lamp that is kept is one: how the light of several adds up is not modelled.
    """
    if told.tubes > 1 and isinstance(lamp.own, OwnPoint):
        raise NotUnderstoodError(str(told.tubes), Say("wanted-one-lamp"), "tubes:1", "tubes")
    gap_m = told.gap.low if told.gap and told.tubes > 1 else 0.0
    return side_by_side(lamp, told.tubes, gap_m)


class Whose(Enum):
    """Whether a lamp answers by its class or by readings, and whose."""

    CLASS = auto()
    YOURS = auto()
    GROUPS = auto()


class LongKnown(Enum):
    """How the length of a tube is known."""

    TOLD = auto()
    FROM_WATTS = auto()
    FROM_BOX = auto()
    AS_READ = auto()
    SHORTEST = auto()
    UNKNOWN = auto()


class Assumed(Enum):
    """What was assumed of a tube that changes the answer."""

    NOTHING = auto()
    KIND = auto()
    LENGTH = auto()
    BOTH = auto()


@dataclass(frozen=True, slots=True)
class ByGroup:
    """By how many keepers of the group the class was read, when last, and how much tubes differ."""

    keepers: int
    newest: date
    differ: Share


@dataclass(frozen=True, slots=True)
class Tube:
    """A tube in its fixture; ``long`` from the shortest to the longest that it may be.

    ``kind_told``: it was said to be a T5 HO tube. ``older`` is the label that was read as the
    older scale. ``point``: a small lamp, which has no length. ``to_buy``: advised, so its strength
    is the most that may be taken. ``group``: what its keepers read takes the place of our figure.
    """

    whose: Whose
    strength: Share
    fixture: Fixture
    count: int
    gap: Length | None
    kind_told: bool
    older: str | None
    age_told: bool
    point: bool
    long: Length
    lit: Length
    long_known: LongKnown
    watts: Power | None
    shortest: Length
    shorter: bool
    example: Length
    example_watts: Power
    to_buy: bool = False
    group: ByGroup | None = None

    @property
    def assumed(self) -> Assumed:
        """Return what was assumed that changes the answer."""
        kind = self.whose is Whose.CLASS and not self.kind_told
        if self.any_length:
            return Assumed.BOTH if kind else Assumed.LENGTH
        return Assumed.KIND if kind else Assumed.NOTHING

    @property
    def any_length(self) -> bool:
        """Say whether the tube may be longer than it is taken to be."""
        return self.long_known is LongKnown.UNKNOWN


class NamedByTube:
    """What is told of one tube, which it names."""

    __slots__ = ()
    tube: Tube

    @property
    def lamp(self) -> Say:
        """Return the tube by name."""
        return Say("tubes-name", self.tube)

    @property
    def lamp_short(self) -> Say:
        """Return the tube's name in the few words of a brief."""
        return Say("tubes-short", self.tube)


def tube_told(
    lamp: Lamp,
    tube: TubeStrength | OtherLamp | None,
    kind: UvLamp | None = None,
    *,
    to_buy: bool = False,
) -> Tube:
    """Return a lamp as facts; ``kind`` is what it was told to be, if it was."""
    whose = Whose.CLASS
    if lamp.own is not None:
        whose = Whose.GROUPS if lamp.own.doubt.source == GROUPS_OWN else Whose.YOURS
    kept, known = isinstance(tube, OwnTube), _known(lamp)
    lit = [lamp.lit_length_m, *(other.lit_length_m for other in lamp.may_be)]
    ends = (min(lit) + DARK_ENDS_M, max(lit) + DARK_ENDS_M)
    from_watts = (t.power_w for t in STANDARD_T5_HO if t.lit_length_m == lamp.lit_length_m)
    power_w = next(from_watts, None) if known is LongKnown.FROM_WATTS else None
    given = lamp.length_known is LengthKnown.TOLD and not kept
    return Tube(
        whose=whose,
        strength=share(lamp.strength_percent / 100.0),
        fixture=lamp.fixture,
        count=lamp.count,
        gap=metres(lamp.gap_m) if lamp.gap_m else None,
        kind_told=bool(kind) or (isinstance(tube, TubeStrength) and tube.is_told),
        older=tube.text if isinstance(tube, TubeStrength) and tube.older_scale else None,
        age_told=lamp.age_s is not None,
        point=isinstance(lamp.own, OwnPoint),
        long=metres(lit[0] + DARK_ENDS_M, ends),
        lit=metres(lamp.lit_length_m),
        long_known=LongKnown.AS_READ if kept else known,
        watts=None if power_w is None else watts(power_w),
        shortest=metres(_SHORTEST.face_to_face_m),
        shorter=given and lamp.lit_length_m < _SHORTEST.lit_length_m,
        example=metres(_EXAMPLE.face_to_face_m),
        example_watts=watts(_EXAMPLE.power_w),
        to_buy=to_buy,
        group=by_group(lamp) if whose is Whose.CLASS else None,
    )


def by_group(lamp: Lamp) -> ByGroup | None:
    """Return by how many keepers a lamp's class goes; None where it goes by our figure."""
    read = lamp.group
    if read is None:
        return None
    return ByGroup(read.keepers, date.fromordinal(read.newest), share(read.spread - 1.0))


def _known(lamp: Lamp) -> LongKnown:
    match lamp.length_known:
        case LengthKnown.TOLD:
            return LongKnown.TOLD
        case LengthKnown.FROM_WATTS:
            return LongKnown.FROM_WATTS
        case LengthKnown.FROM_BOX:
            return LongKnown.FROM_BOX
        case LengthKnown.UNKNOWN:
            return LongKnown.UNKNOWN if lamp.may_be else LongKnown.SHORTEST


def tube_rows(tube: Tube) -> Iterator[Row]:
    """Yield what the tube is, what was assumed of it, how long it is and how that is known."""
    yield Row(Say("tubes-label-lamp" if tube.point else "tubes-label"), Say("tubes-name", tube))
    yield from group_rows(tube)
    if tube.whose is Whose.CLASS and not tube.kind_told:
        yield Row(Say("tubes-kind-label"), Say("tubes-kind"))
    if tube.whose is not Whose.CLASS:
        yield Row(Say("tubes-held-label"), Say("tubes-held", tube))
    if tube.count > 1:
        yield Row(Say("tubes-together-label"), Say("tubes-together", tube))
    if tube.older is not None:
        yield Row(Say("tubes-older-label"), Say("tubes-older", tube))
    if tube.point:
        return
    yield Row(Say("tubes-long-label"), Say("tubes-long", tube))
    if tube.shorter:
        yield Row(Say("tubes-shorter-label"), Say("tubes-shorter", tube))
    if tube.whose is Whose.CLASS and not tube.age_told:
        yield Row(Say("tubes-age-label"), Say("tubes-age"))


def group_rows(tube: Tube) -> Iterator[Row]:
    """Yield by how many keepers of the group a tube goes, if it does."""
    if tube.group is not None:
        yield Row(Say("tubes-group-label"), Say("tubes-group", tube.group))


def group_short(tube: Tube) -> tuple[Say, ...]:
    """Return that a tube goes by the group, in brief."""
    return () if tube.group is None else (Say("tubes-group-short", tube.group),)


def group_differs(tube: Tube) -> tuple[Say, ...]:
    """Return by how much tubes of its class differ in the group, where that is known."""
    return () if tube.group is None else (Say("tubes-group-differ", tube.group),)


def group_sources(tube: Tube) -> tuple[str, ...]:
    """Return the source of what a group read, where the tube goes by it."""
    return () if tube.group is None else ("group_readings",)


def tube_assumed(tube: Tube) -> tuple[Say, ...]:
    """Return what was assumed of a tube, in brief."""
    group = group_short(tube)
    if tube.assumed is Assumed.NOTHING:
        return group
    return (Say.by("tubes-assumed", tube.assumed, tube), *group)


def length_steps(tube: Tube) -> tuple[Say, ...]:
    """Return what to find out where the length of the tube is not known."""
    return (Say("tubes-ask-length", tube),) if tube.any_length else ()


def length_value(tube: Tube) -> tuple[str, Figure | None]:
    """Return the length of the tube, by its name in JSON; a small lamp that was read has none."""
    return "length", None if tube.point else tube.long


def length_sources(tube: Tube) -> tuple[str, ...]:
    """Return where a length comes from that was inferred from watts or from an enclosure."""
    inferred = tube.long_known in (LongKnown.FROM_WATTS, LongKnown.FROM_BOX)
    return ("t5_lengths",) if inferred else ()
