"""A reading that was given to a group, as every question tells it. Words: ``offer.ftl``."""

from dataclasses import dataclass
from datetime import date

from bot.facts import Length, Number, Say, Share, Uvi, metres, plain_number, share, uvi
from bot.language.uv_lamps import UvLamp
from bot.pooled import screen_of
from bot.questions.uv.shared import Between, Net
from bot.saved.pool import PooledReading
from calc.uv.lamp import Fixture
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave, open_area

__all__ = ["PooledTold", "between_of", "kind_said", "pooled_told"]

_MONTH_DAYS = 30.44


@dataclass(frozen=True, slots=True)
class _Kind:
    """A kind of UV lamp."""

    kind: UvLamp


def kind_said(kind: UvLamp) -> Say:
    """Return the name of a kind of lamp."""
    return Say.by("read-uv", kind, _Kind(kind))


@dataclass(frozen=True, slots=True)
class PooledTold:
    """A reading as it is kept: of a lamp of the group's own its name, of others their class."""

    day: date
    own: str | None
    kind: Say | None
    strength: Share | None
    fixture: Fixture | None
    long: Length | None
    months: Number | None
    between: Say
    read: Uvi
    at: Length

    @property
    def lamp(self) -> Say:
        """Return the lamp under which it was read."""
        if self.own is not None:
            return Say("offer-lamp-own", self)
        return Say("offer-lamp", self) if self.kind is None else self.kind


def pooled_told(kept: PooledReading) -> PooledTold:
    """Return a reading as facts."""
    return PooledTold(
        day=kept.day,
        own=kept.own_lamp,
        kind=None if kept.lamp is UvLamp.T5_HO else kind_said(kept.lamp),
        strength=None if kept.percent is None else share(kept.percent / 100.0),
        fixture=None if kept.reflector is None else Fixture[kept.reflector.upper()],
        long=None if kept.tube_length_m is None else metres(kept.tube_length_m),
        months=None if kept.age_days is None else plain_number(round(kept.age_days / _MONTH_DAYS)),
        between=between_of(screen_of(kept.screen)),
        read=uvi(kept.uvi),
        at=metres(kept.distance_m),
    )


def between_of(screen: Screen) -> Say:
    """Return what is between by name."""
    match screen:
        case FlatScreen(passes):
            told = Between(Net.FLAT, share(1.0 - passes), None)
        case Weave():
            is_open = open_area(screen)
            told = Between(Net.WEAVE, share(1.0 - is_open), share(is_open))
        case NoScreen():
            told = Between(Net.NONE, share(0.0), None)
    return Say("between-name", told)
