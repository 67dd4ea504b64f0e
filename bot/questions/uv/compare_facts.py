"""Two set-ups under a UV tube beside each other, as facts.

The second is as the first but for what is told of it. Words: ``compare.ftl``.
"""

from dataclasses import dataclass
from datetime import date
from enum import Enum, auto

from bot.facts import Bound, Digits, Length, Number, Say, Uvi, metres, plain_number
from bot.language.errors import NotUnderstoodError
from bot.preferences import Context
from bot.queries.compare import CompareQuery
from bot.questions.uv.tubes import ByGroup, LongKnown, Tube
from bot.questions.uv.uvi import Expected, expected
from bot.questions.uv.uvi import Facts as OfOne
from bot.reply import Alarm
from calc.judgement import Verdict
from calc.uv.placement import COMFORTABLE_MINIMUM_M

__all__ = ["Lead", "Side", "SideBySide", "Stronger", "compare"]

# Less than this is no difference that anybody reads off a meter.
_SAME = 1.05
_MONTH_S = 365.25 / 12.0 * 86_400.0


class Lead(Enum):
    """What matters most between two set-ups."""

    NEAR_FIRST = auto()
    NEAR_SECOND = auto()
    NEAR_BOTH = auto()
    FIRST = auto()
    SECOND = auto()
    BOTH = auto()
    NEITHER = auto()


class Stronger(Enum):
    """Which of two gives more UV."""

    FIRST = auto()
    SECOND = auto()
    ALIKE = auto()


@dataclass(frozen=True, slots=True)
class Side:
    """One of two set-ups: the UVI there, how it stands, and where it hangs, if that is known."""

    there: Uvi
    at: Length
    judgement: Verdict
    near: bool
    tube: Tube
    between: Say
    months: Number | None
    hangs: Length | None

    @property
    def lamp(self) -> Say:
        """Return the tube by name."""
        return Say("tubes-name", self.tube)

    @property
    def group(self) -> ByGroup | None:
        """Return by how many keepers of the group its class goes, if it does."""
        return self.tube.group

    @property
    def keepers(self) -> int:
        """Return how many they are."""
        return self.group.keepers if self.group else 0

    @property
    def newest(self) -> date | None:
        """Return when they read one last."""
        return self.group.newest if self.group else None

    @property
    def long(self) -> Length:
        """Return how long the tube is."""
        return self.tube.long

    @property
    def long_known(self) -> LongKnown:
        """Return how its length is known."""
        return self.tube.long_known

    @property
    def is_fine(self) -> bool:
        """Say whether it is right as it is."""
        return self.judgement is Verdict.FINE and not self.near

    @property
    def judged(self) -> Say:
        """Return how it is judged, in a word or two."""
        return Say("tube-too-near") if self.near else Say.by("verdict", self.judgement)


@dataclass(frozen=True, slots=True)
class SideBySide:
    """Two set-ups; ``unsure``: they are two lamps, and either may give more than the other."""

    one: Expected
    other: Expected
    first: Side
    second: Side
    stronger: Stronger
    times: Digits
    unsure: bool

    @property
    def wanted(self) -> Uvi:
        """Return the UVI to aim at."""
        return self.one.wanted

    @property
    def near(self) -> bool:
        """Say whether one hangs where none may, whatever its UVI."""
        return self.first.near or self.second.near

    @property
    def nearest(self) -> Length:
        """Return how near any tube may hang."""
        return metres(COMFORTABLE_MINIMUM_M, bound=Bound.AT_LEAST)

    @property
    def lead(self) -> Lead:
        """Return what matters most."""
        if self.near:
            if self.first.near and self.second.near:
                return Lead.NEAR_BOTH
            return Lead.NEAR_FIRST if self.first.near else Lead.NEAR_SECOND
        if self.first.is_fine and self.second.is_fine:
            return Lead.BOTH
        if self.first.is_fine or self.second.is_fine:
            return Lead.FIRST if self.first.is_fine else Lead.SECOND
        return Lead.NEITHER

    @property
    def alarms(self) -> tuple[Alarm, ...]:
        """Return what cannot wait of either, once."""
        found = {alarm.key: alarm for alarm in (*self.other.alarms, *self.one.alarms)}
        return tuple(found.values())


Facts = SideBySide | OfOne


def compare(query: CompareQuery, context: Context) -> Facts:
    """Work out both; one without figures is told alone."""
    if not query.other_told:
        raise NotUnderstoodError("", Say("wanted-other-set-up"), "with_tube:6%", "with_tube")
    one, other = (expected(each, context) for each in query.both)
    if not isinstance(one, Expected):
        return one
    if not isinstance(other, Expected):
        return other
    first, second = _side(one), _side(other)
    ratio = first.there.best / second.there.best if second.there.best > 0.0 else 1.0
    stronger = Stronger.FIRST if ratio > 1.0 else Stronger.SECOND
    if max(ratio, 1.0 / ratio) < _SAME:
        stronger = Stronger.ALIKE
    return SideBySide(
        one=one,
        other=other,
        first=first,
        second=second,
        stronger=stronger,
        times=Digits(max(ratio, 1.0 / ratio), 1),
        unsure=one.asked.lamp != other.asked.lamp
        and first.there.low < second.there.high
        and second.there.low < first.there.high,
    )


def _side(one: Expected) -> Side:
    asked = one.asked
    age_s = asked.lamp.age_s
    return Side(
        there=one.here,
        at=one.at,
        judgement=one.judgement,
        near=one.too_near,
        tube=asked.tube,
        between=Say("between-name", asked.between(one.check.here.screen_transmission)),
        months=None if age_s is None else plain_number(age_s / _MONTH_S),
        hangs=one.span,
    )
