"""What a question about UV asks for, as the engine takes it; what cannot be is refused.

Questions that have moved read here too, until the sentences of refusals have moved as well.
"""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from functools import lru_cache

from bot.dangers.past_limits import alarms_past
from bot.facts import Say
from bot.language import screens as typed
from bot.language.errors import NotUnderstoodError
from bot.language.lamps import Fixture as TypedFixture
from bot.language.lamps import OtherLamp, TubeStrength
from bot.language.quantities import Measure
from bot.language.readings import PlacedReading
from bot.language.sizes import Size
from bot.language.wanted import UpTo
from bot.preferences import Context
from bot.queries.options import OwnTube
from bot.queries.typed import typed as as_typed
from bot.questions.animals import GROUPS_OWN, AnimalNotNamedError, animal_asked
from bot.questions.past_limit import PastLimitError, told_before
from bot.questions.shared import limits_for
from bot.questions.uv.harmless import check_it_cannot_harm
from bot.questions.uv.length_asked import length_asked
from bot.questions.uv.unlit import under_no_lamp
from bot.saved.group import NOTHING_OWN, Own, OwnLamp
from calc.animal import Animal
from calc.limits import Met, any_limits
from calc.uncertainty import Doubt, Estimate
from calc.uv.as_read import Groups, as_read
from calc.uv.group_class import group_class
from calc.uv.lamp import (
    CLASS_STRENGTH_PERCENT,
    SHORTEST_LIT_M,
    Fixture,
    Lamp,
    OwnConstant,
    OwnPoint,
    of_length,
)
from calc.uv.lamp_unknowns import Cause
from calc.uv.meter import HIGHEST_UVI_READ, LOWEST_UVI_READ, Reading
from calc.uv.placement import HIGHEST_UVI
from calc.uv.point import PointSource
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave

__all__ = [
    "Wanted",
    "classes_of",
    "engine_readings",
    "fixture_of",
    "lamp_asked",
    "own_lamp",
    "screen_asked",
    "told_under",
    "wanted_asked",
]

# A single wanted UVI is met within this much either way.
_ABOUT_UVI = 0.5
WITHOUT_EXAMPLE = "readings:3.3 at 12in without:6.0 at 12in"
"""Readings with and without a screen that are understood."""
_EXAMPLES = {"readings": "readings:4.2 at 12in", "without": WITHOUT_EXAMPLE}


@dataclass(frozen=True, slots=True)
class Wanted:
    """The UVI range that is aimed at: of ``animal``, or as it was ``given``, ends alike for one."""

    low: float
    high: float
    animal: Animal | None
    given: tuple[float, float] | None

    @property
    def unchecked(self) -> bool:
        """Whether it is from memory alone; what the asker gave is not."""
        target = self.animal.uvi if self.animal is not None else None
        return target is not None and target.is_unchecked


def wanted_asked(
    animal: str, uvi: tuple[float, float] | None, context: Context, *before: Say
) -> Wanted:
    """Return the range that was given, or else the animal's own.

    A wish that is refused is told behind what must be known ``before`` it.
    """
    if uvi is not None:
        with told_before(*before):
            return _wanted_given(uvi, animal, context)
    kept = animal_asked(animal, context)
    if kept.uvi is None and kept.group is not None:
        raise under_no_lamp(kept)
    if kept.uvi is None:
        raise NotUnderstoodError(
            kept.name,
            Say("wanted-uvi-trusted"),
            "uvi:1-2",
            "animal",
        )
    return Wanted(kept.uvi.low, kept.uvi.high, kept, None)


def _wanted_given(uvi: tuple[float, float], animal: str, context: Context) -> Wanted:
    low, high = uvi
    if not 0.0 < high <= HIGHEST_UVI:
        raise NotUnderstoodError(
            as_typed(uvi),
            Say("wanted-uvi-up-to", UpTo(int(HIGHEST_UVI))),
            "uvi:3-5",
            "uvi",
        )
    if low == high:
        low, high = max(0.0, low - _ABOUT_UVI), min(high + _ABOUT_UVI, HIGHEST_UVI)
    check_it_cannot_harm((low, high), as_typed(uvi), animal, context)
    return Wanted(low, high, None, uvi)


@contextmanager
def told_under(uvi: Estimate, animal: str, context: Context) -> Iterator[None]:
    """Tell the danger of a UV index all the same where what is wanted under it is refused."""
    try:
        yield
    except AnimalNotNamedError:
        raise AnimalNotNamedError(*alarms_past(any_limits(), Met(uvi=uvi))) from None
    except PastLimitError as error:
        error.alarms += alarms_past(limits_for(animal, context), Met(uvi=uvi))
        raise


def lamp_asked(
    tube: TubeStrength | OtherLamp | None,
    reflector: TypedFixture | None,
    tube_length: Measure | None,
    age: Measure | None,
    enclosure: Measure | Size | None = None,
    *,
    own: Own = NOTHING_OWN,
) -> Lamp:
    """Return the lamp that the options describe, or the group's own that they name.

    Where the group's keepers read enough tubes of its class, what they read counts.

    Where a strength or a fixture was not told, readings take their place, and neither counts; so
    it is with a lamp that is no T5 HO tube, which has no figures without them. Where no length
    was told, the lamp may be as long as fits the enclosure.
    """
    if isinstance(tube, OwnTube):
        return own_lamp(tube.lamp)
    lamp = Lamp(
        tube.percent if isinstance(tube, TubeStrength) else CLASS_STRENGTH_PERCENT,
        fixture_of(reflector) if reflector else Fixture.POLISHED,
        age_s=None if age is None else age.low,
    )
    lamp = of_length(lamp, length_asked(tube_length, enclosure))
    if not own.classes or not isinstance(tube, TubeStrength) or reflector is None:
        return lamp
    return as_read(lamp, classes_of(own))


@lru_cache(256)
def classes_of(own: Own) -> Groups:
    """Return what the group's readings say of classes, by strength [%] and fixture."""
    return {
        (one.percent, Fixture[one.reflector.upper()]): group_class(
            one.shift,
            one.shift_variance,
            one.lamp_variance,
            one.keepers,
            one.newest.toordinal(),
        )
        for one in own.classes
    }


def own_lamp(kept: OwnLamp) -> Lamp:
    """Return the engine's lamp for one of the group's own, a tube or a small lamp."""
    doubt = Doubt(Cause.READINGS, kept.doubt_factor, GROUPS_OWN)
    own: OwnConstant | OwnPoint
    if kept.point is not None:
        own, lit_m = OwnPoint(PointSource(**kept.point.model_dump()), doubt), SHORTEST_LIT_M
    else:
        assert kept.constant_uvi_m is not None
        assert kept.lit_length_m is not None
        own, lit_m = OwnConstant(kept.constant_uvi_m, doubt), kept.lit_length_m
    return Lamp(CLASS_STRENGTH_PERCENT, Fixture.POLISHED, lit_m, own=own)


def fixture_of(typed_fixture: TypedFixture) -> Fixture:
    """Return the fixture of the engine for a typed one."""
    return Fixture.POLISHED if typed_fixture is TypedFixture.POLISHED else Fixture.PLAIN


def screen_asked(screen: typed.Screen | typed.Pane | None) -> Screen:
    """Return the screen of the engine for a typed one.

    One that was not told is in the readings already, and nothing more is taken off.
    """
    match screen:
        case typed.Pane(_, text):
            raise NotUnderstoodError(text, typed.NO_PANE, "screen:none", "screen")
        case typed.NoScreen() | None:
            return NoScreen()
        case typed.Blocks(fraction):
            return FlatScreen(1.0 - fraction)
        case typed.Passes(fraction):
            return FlatScreen(fraction)
        case typed.Weave(mesh_x, mesh_y, wire):
            return Weave(mesh_x, mesh_y, wire)


def engine_readings(
    readings: Sequence[PlacedReading], screen: Screen, option: str = "readings"
) -> list[Reading]:
    """Return the typed readings of an option as the engine's, all through one screen."""
    for reading in readings:
        if reading.value > HIGHEST_UVI_READ:
            raise NotUnderstoodError(
                reading.text,
                Say("wanted-uvi-read", UpTo(int(HIGHEST_UVI_READ))),
                _EXAMPLES[option],
                option,
            )
        if reading.value < LOWEST_UVI_READ:
            raise NotUnderstoodError(
                reading.text,
                Say("wanted-reading-near"),
                _EXAMPLES[option],
                option,
            )
    return [Reading(r.distance.low, r.value, screen) for r in readings]
