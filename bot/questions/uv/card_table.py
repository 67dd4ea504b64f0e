"""What the table of distances holds: every lamp under every screen, and where it goes."""

from dataclasses import dataclass
from datetime import date
from enum import Enum, auto

from bot.facts import (
    Bound,
    Length,
    Share,
    Uvi,
    metres,
    share,
    uvi,
)
from bot.preferences import Context
from bot.queries.card import CardQuery
from bot.questions.owned import OwnLampTold, lamp_told
from bot.questions.uv.lamp_asked import classes_of, own_lamp, screen_asked, wanted_asked
from bot.questions.uv.length_asked import length_asked
from bot.questions.uv.shared import Between, Wish, WishedFor, between_told, wish_told
from bot.questions.uv.tubes import ByGroup, Tube, by_group, tube_told
from calc.uv.as_read import as_read
from calc.uv.lamp import Fixture, Lamp, OwnPoint, of_length
from calc.uv.lengths import DARK_ENDS_M
from calc.uv.placement import COMFORTABLE_MINIMUM_M, Placement, Spot, Verdict, place
from calc.uv.screen import FlatScreen, NoScreen, Screen, open_area

__all__ = ["Card", "CardRow", "Cell", "Fits", "card"]

_MOST_OWN = 6


class Fits(Enum):
    """How many of the set-ups have a place."""

    NONE = auto()
    SOME = auto()
    ALL = auto()


@dataclass(frozen=True, slots=True)
class Cell:
    """Where a lamp goes under one screen, if it can; ``key`` is its name in JSON."""

    verdict: Verdict
    away: Length | None
    key: str


@dataclass(frozen=True, slots=True)
class CardRow:
    """A lamp of the table; ``own`` is what the group calls a lamp of its own.

    ``group``: what its keepers read of the class takes the place of our figure.
    """

    own: str | None
    group: ByGroup | None
    strength: Share
    fixture: Fixture
    tube_long: Length | None
    any_length: bool
    cells: tuple[Cell, ...]

    @property
    def keepers(self) -> int:
        """Return how many keepers of the group read tubes of the class."""
        return self.group.keepers if self.group else 0

    @property
    def newest(self) -> date | None:
        """Return when they read one last."""
        return self.group.newest if self.group else None


@dataclass(frozen=True, slots=True)
class Card(WishedFor):
    """The table; ``sure`` is how strong the UV may be in the middle of a range."""

    wish: Wish
    screens: tuple[Between, ...]
    rows: tuple[CardRow, ...]
    found: Fits
    fits: int
    asked: int
    tube: Tube
    sure: Uvi | None
    nearest: Length
    own: tuple[OwnLampTold, ...]

    @property
    def by_group(self) -> tuple[CardRow, ...]:
        """Return the classes that go by what the group's keepers read."""
        return tuple(row for row in self.rows if row.group is not None)

    @property
    def any_length(self) -> bool:
        """Say whether the tubes may be of any length."""
        return self.tube.any_length

    @property
    def long(self) -> Length:
        """Return the length of the tubes."""
        return self.tube.long


def card(query: CardQuery, context: Context) -> Card:
    """Work out the distance of every lamp under every screen, or why there is none."""
    wanted = wanted_asked(query.animal, query.uvi, context)
    between = {screen_asked(screen): screen for screen in query.screens}
    screens = tuple(between)
    strengths = sorted({tube.percent for tube in query.tubes}, reverse=True)
    long = length_asked(query.length)
    groups = classes_of(context.own)
    classes = [
        as_read(of_length(Lamp(percent, fixture), long), groups)
        for percent in strengths
        for fixture in Fixture
    ]
    own = context.own.lamps[:_MOST_OWN]
    named = [*((lamp, "") for lamp in classes), *((own_lamp(kept), kept.name) for kept in own)]
    placed = [[place(lamp, s, wanted.low, wanted.high) for s in screens] for lamp, _ in named]
    rows = tuple(
        _row(lamp, name, screens, places)
        for (lamp, name), places in zip(named, placed, strict=True)
    )
    ends = [placement.ends for places in placed for placement in places if placement.ends]
    asked = len(rows) * len(screens)
    return Card(
        wish=wish_told(wanted, context),
        screens=tuple(between_told(typed, screen) for screen, typed in between.items()),
        rows=rows,
        found=Fits.ALL if len(ends) == asked else Fits.SOME if ends else Fits.NONE,
        fits=len(ends),
        asked=asked,
        tube=tube_told(classes[0], query.tubes[0]),
        sure=_sure(ends),
        nearest=metres(COMFORTABLE_MINIMUM_M),
        own=tuple(map(lamp_told, own)),
    )


def _row(lamp: Lamp, name: str, screens: tuple[Screen, ...], places: list[Placement]) -> CardRow:
    key, small = _lamp_key(lamp, name), isinstance(lamp.own, OwnPoint)
    cells = (
        Cell(placement.verdict, _away(placement), f"distance_{key}_{_screen_key(screen)}")
        for screen, placement in zip(screens, places, strict=True)
    )
    return CardRow(
        own=name or None,
        group=by_group(lamp),
        strength=share(lamp.strength_percent / 100.0),
        fixture=lamp.fixture,
        tube_long=None if small else metres(lamp.lit_length_m + DARK_ENDS_M),
        any_length=bool(lamp.may_be),
        cells=tuple(cells),
    )


def _away(placement: Placement) -> Length | None:
    if placement.ends is None:
        return None
    near, start, far = placement.ends
    return metres(start.distance_m, (near.distance_m, far.distance_m), Bound.INWARD)


def _lamp_key(lamp: Lamp, name: str) -> str:
    if name:
        return "own_" + "_".join(name.lower().split())
    return f"{lamp.strength_percent:g}_{lamp.fixture.name.lower()}"


def _screen_key(screen: Screen) -> str:
    match screen:
        case NoScreen():
            return "bare"
        case FlatScreen(passed):
            return f"blocks_{round(100 * (1.0 - passed))}"
        case _:
            return f"mesh_{round(100 * open_area(screen))}_open"


def _sure(ends: list[tuple[Spot, Spot, Spot]]) -> Uvi | None:
    starts = [start.uvi for _, start, _ in ends]
    if not starts:
        return None
    low, high = min(e.low for e in starts), max(e.high for e in starts)
    return uvi(starts[0].best, (round(low, 1), round(high, 1)))
