"""What questions about UV share: whose range, what is between, how sure, which cautions."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Name, Say, Share, Uvi, share, uvi
from bot.language import screens as typed
from bot.layered import Care, Row, Weight
from bot.preferences import Context
from bot.questions.animals import GROUPS_OWN
from bot.questions.shared import animal_name, known_by, others_say
from bot.questions.uv.lamp_asked import Wanted
from calc.animal import Subject
from calc.states import gets_less_uv
from calc.uncertainty import Estimate
from calc.unknowns import Whole, combine
from calc.uv.lamp_unknowns import Cause, screen_effects
from calc.uv.placement import Spot
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave, open_area

__all__ = [
    "EYES_CARE",
    "SHADE_CARE",
    "UV_CARE",
    "Between",
    "Net",
    "Settled",
    "Through",
    "Wish",
    "Wished",
    "WishedFor",
    "between_row",
    "between_told",
    "doubts_told",
    "passing_estimate",
    "settled_by",
    "wish_assumed",
    "wish_rows",
    "wish_told",
]

_ABOUT = (Subject.ZONE, Subject.UVI)
_BY_GROUP = (GROUPS_OWN, "group_readings")
EYES_CARE = Care(Say("care-eyes"), Say("care-eyes-short"), Weight.STEP)
SHADE_CARE = Care(Say("care-shade"), Say("care-shade-short"))
UV_CARE = (EYES_CARE, SHADE_CARE, Care(Say("care-uv-meter")))


@dataclass(frozen=True, slots=True)
class Wish:
    """The UVI range to aim at: an animal's, or as it was given; ``about`` where that was one.

    ``unchecked``: from memory alone.
    """

    animal: Name | None
    wanted: Uvi
    about: Uvi | None
    known: Say | None
    others: tuple[Say, ...]
    sources: tuple[str, ...]
    unchecked: bool = False


class Wished:
    """What has a wish, and so a UV index to aim for."""

    __slots__ = ()
    wish: Wish

    @property
    def wanted(self) -> Uvi:
        """Return the UV index to aim for."""
        return self.wish.wanted


class WishedFor(Wished):
    """What has the wish of an animal, or a range that somebody named."""

    __slots__ = ()

    @property
    def animal(self) -> Name | None:
        """Return whose range it is, where it is an animal's."""
        return self.wish.animal


def wish_told(wanted: Wanted, context: Context) -> Wish:
    """Return a wanted range as facts."""
    middle = (wanted.low + wanted.high) / 2.0
    span = uvi(middle, (wanted.low, wanted.high))
    kept = wanted.animal
    if kept is None or kept.uvi is None:
        one = wanted.given is not None and wanted.given[0] == wanted.given[1]
        return Wish(
            None, span, uvi(wanted.given[0]) if one and wanted.given else None, None, (), ()
        )
    return Wish(
        animal=animal_name(kept),
        wanted=span,
        about=None,
        known=Say("wish-tender")
        if gets_less_uv(kept)
        else known_by(kept, Subject.UVI, kept.uvi, context.own),
        unchecked=wanted.unchecked,
        others=others_say(kept, *_ABOUT),
        sources=(kept.uvi.source, *(d.source for d in kept.disagreements_about(*_ABOUT))),
    )


def wish_assumed(wish: Wish) -> tuple[Say, ...]:
    """Return that nobody checked the range, in brief."""
    return (Say("memory-short"),) if wish.unchecked else ()


def wish_rows(wish: Wish) -> Iterator[Row]:
    """Yield what is aimed at, and what others say against it."""
    yield Row(Say("wish-label"), Say("wish-told", wish))
    for other in wish.others:
        yield Row(Say("wish-others-label"), other)


class Net(Enum):
    """What is between the tube and the animal."""

    NONE = auto()
    FLAT = auto()
    WEAVE = auto()
    AS_READ = auto()


@dataclass(frozen=True, slots=True)
class Between:
    """A screen, how much of the UV it blocks, and of a weave how much of it is open."""

    net: Net
    blocks: Share
    open: Share | None

    @property
    def wire(self) -> Share | None:
        """Return the share of a weave that is wire."""
        return None if self.open is None else share(1.0 - self.open.best)


class Through:
    """What light goes through on its way."""

    __slots__ = ()
    between: Between

    @property
    def through(self) -> Say:
        """Return what is between by name."""
        return Say("between-name", self.between)


def between_told(
    asked: typed.Screen | None, screen: Screen, transmission: float | None = None
) -> Between:
    """Return what is between as facts, with what it blocks at a place where that is told.

    ``asked`` is the screen as it was told; None where readings were taken through it.
    """
    if asked is None:
        return Between(Net.AS_READ, share(0.0), None)
    match screen:
        case NoScreen():
            return Between(Net.NONE, share(0.0), None)
        case FlatScreen(passes):
            return Between(Net.FLAT, share(1.0 - passes), None)
        case Weave():
            open_share = open_area(screen)
            passes = open_share if transmission is None else transmission
            return Between(Net.WEAVE, share(1.0 - passes), share(open_share))


def between_row(between: Between) -> Row:
    """Return what a screen blocks, and how that is known."""
    return Row(Say("between-label"), Say.by("between-row", between.net, between))


def passing_estimate(spot: Spot, screen: Screen) -> Estimate:
    """Return the share [1] that the screen passes at a spot, with the doubt of the screen."""
    whole = combine(screen_effects(screen)).around(spot.screen_transmission)
    return Estimate(whole.low, whole.best, min(1.0, whole.high))


class Settled(Enum):
    """What takes away most of a doubt."""

    METER = auto()
    YOURS = auto()
    GROUPS = auto()
    AGAIN = auto()


@dataclass(frozen=True, slots=True)
class Doubt:
    """One reason why a UVI may be off, and by how much."""

    cause: Cause
    about: Share


def settled_by(whole: Whole, *, contradict: bool) -> Settled:
    """Return what takes away most of the doubt."""
    if contradict:
        return Settled.AGAIN
    if any(effect.unknown.source in _BY_GROUP for effect in whole.effects):
        return Settled.GROUPS
    read = any(effect.unknown.name == Cause.READINGS for effect in whole.effects)
    return Settled.YOURS if read else Settled.METER


def doubts_told(whole: Whole, settled: Settled) -> tuple[Say, ...]:
    """Return why a UVI is a range, the largest doubt first, and what takes most of it away."""
    ends = [(e.unknown, *e.ends) for e in whole.effects]
    sized = [(unknown, max(high - 1.0, 1.0 - low)) for unknown, low, high in ends]
    ordered = sorted(sized, key=lambda pair: -pair[1])
    doubts = [Doubt(Cause(unknown.name), share(about)) for unknown, about in ordered]
    told = (Say.by("doubt", doubt.cause, doubt) for doubt in doubts)
    return (Say("doubt-first"), *told, Say.by("doubt-end", settled))
