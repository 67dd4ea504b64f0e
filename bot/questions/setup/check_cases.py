"""Every way a set-up may be that was not ruled out by what was said of its tube."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import product

from bot.language.hearing import FactName
from bot.language.lamps import Fixture
from bot.language.screens import Blocks, NoScreen, Screen
from bot.queries.options import OwnTube
from bot.questions.setup.told import SetUpTold
from bot.questions.uv.lamp_asked import lamp_asked, screen_asked
from bot.questions.uv.length_asked import length_asked
from calc.limits import Limits
from calc.uv.lamp import Lamp, of_length, side_by_side
from calc.uv.lengths import TubeLength
from calc.uv.placement import PlaceCheck, check_place
from calc.uv.screen import Screen as Between

__all__ = ["Case", "every_case", "every_way", "length_said"]

# Without a word about the screen, nothing between and the common insect screen are both tried.
_MESHES: tuple[Screen, ...] = (Blocks(0.30, "30%"), Blocks(0.45, "45%"), Blocks(0.60, "60%"))


@dataclass(frozen=True, slots=True)
class Case:
    """One way the set-up may be, with what follows."""

    fixture: Fixture
    screen: Screen
    lamp: Lamp
    check: PlaceCheck


def length_said(told: SetUpTold) -> TubeLength:
    """Return the length of the tube, by what was said of it or of the enclosure."""
    said, box = told.measure(FactName.TUBE_LENGTH), told.measure(FactName.ENCLOSURE_LENGTH)
    enclosure = told.size or box
    return length_asked(said.value if said else None, enclosure.value if enclosure else None)


def every_case(
    told: SetUpTold,
    distance_m: float,
    ends: tuple[float, float],
    limits: Limits,
    *,
    unchecked: bool,
) -> Iterator[Case]:
    """Return every way the set-up may be, each judged at a distance."""
    for fixture, screen, lamp, between in every_way(told):
        check = check_place(lamp, between, distance_m, *ends, limits, unchecked=unchecked)
        yield Case(fixture, screen, lamp, check)


def every_way(told: SetUpTold) -> Iterator[tuple[Fixture, Screen, Lamp, Between]]:
    """Return every way the set-up may be that was not ruled out by what was said."""
    assert told.tube is not None
    is_own = isinstance(told.tube.value, OwnTube)
    fixtures = (told.reflector.value,) if told.reflector else tuple(Fixture)
    fixtures = fixtures[:1] if is_own else fixtures
    if told.screen:
        screens: tuple[Screen, ...] = (told.screen.value,)
    else:
        screens = _MESHES if told.is_over else (NoScreen("none"), *_MESHES)
    age, long = told.measure(FactName.AGE), length_said(told)
    for fixture, screen in product(fixtures, screens):
        lamp = lamp_asked(told.tube.value, fixture, None, age.value if age else None, own=told.own)
        if not is_own:
            lamp = of_length(lamp, long)
        lamp = side_by_side(lamp, told.tubes, told.gap_m)
        yield fixture, screen, lamp, screen_asked(screen)
