"""A fact made of a figure whose role is known: its unit, and what it may be at all."""

import re

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.hearing.ages import is_of_somebody
from bot.language.hearing.distances import (
    TO_WHAT,
    is_no_distance,
    length_system,
    measure_of,
    reference_of,
)
from bot.language.hearing.facts import Ask, Fact, FactName
from bot.language.hearing.figures import Figure
from bot.language.hearing.homes import box_of, longer_side
from bot.language.hearing.items import Item
from bot.language.hearing.lamps import is_of_other_lamp, is_other_share
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.power import is_dark
from bot.language.hearing.scene import LIVING, Scene
from bot.language.hearing.strengths import STRONGEST_TUBE, tube_beside
from bot.language.hearing.temperatures import DEGREES, in_units, is_setting
from bot.language.lamps import read_tube_strength
from bot.language.quantities import Measure, read_duration
from bot.language.units import Dimension

__all__ = ["made_of"]

_MOST_UVI = 20
_GROUND = frozenset(("soil", "substrate", "dirt", "sand"))
_UNDER_MESH = re.compile(r" (?:under|below|beneath) (?:the |its |my )?(?:screen|mesh|lid)\b")
_GALLONS = re.compile(r" ?(?:g|b|gl|long|breeder|tall|high)(?![a-z0-9])")
_HOUR = 3600
_SHORTEST_DAY_H, _LONGEST_DAY_H = 6, 20
_OLDEST = 150
_KEPT = frozenset(("had", "owned", "kept"))
_SHORT_WAY = 30
# Farther than this from anything is a wall or a garden.
_FURTHEST_M = 3
_MOST_W = 500


def made_of(scene: Scene, item: Item, role: str, degrees: str | None) -> Fact | Ask | None:
    """Return the fact that a figure tells in a role, what must be asked of it, or None.

    ``degrees`` is the unit that the other temperatures of the text have, if they agree.
    """
    figure = _alone(item)
    name = FactName(role)
    if name is FactName.ROOM and _at_night(scene, figure):
        name = FactName.ROOM_NIGHT
    if name in DEGREES:
        return _degrees(scene, figure, name, degrees)
    if name in (FactName.DISTANCE, FactName.LAMP_DISTANCE, FactName.TUBE_LENGTH):
        return _length(scene, figure, name, degrees)
    if name is FactName.ENCLOSURE:
        return _home(scene, figure)
    if name is FactName.TUBE:
        return _tube(scene, figure)
    if name in (FactName.AGE, FactName.ANIMAL_AGE, FactName.HOURS, FactName.ON_FOR):
        return _time(scene, figure, name)
    if name is FactName.WATTS:
        return _watts(scene, figure)
    if name is FactName.UVI and figure.kind == "plain" and figure.high <= _MOST_UVI:
        return scene.fact(name, (float(figure.low), float(figure.high)), figure)
    return None


def _at_night(scene: Scene, figure: Figure) -> bool:
    start, end = scene.clause(figure.start)
    return any(mark.value == "night" for mark in scene.marks.within(start, end))


def _alone(item: Item) -> Figure:
    """Return a figure by itself, also where it is one side of a pair."""
    if item.side < 0:
        return item.figure
    side = item.figure.sides[item.side]
    first = item.start - item.figure.start
    text = item.figure.text[first : first + item.end - item.start]
    return Figure("plain", (side,), text, item.start, item.end)


def _degrees(
    scene: Scene, figure: Figure, name: FactName, degrees: str | None
) -> Fact | Ask | None:
    if figure.kind not in ("temperature", "degrees", "plain") or is_setting(scene, figure):
        return None
    if _GROUND & set(scene.words(figure.start - 14, figure.start)[-1:]):
        # The soil is no air of an end.
        return None
    place = Mark("place", DEGREES[name], figure.start, figure.end)
    return next(in_units(scene, [(figure, place, DEGREES[name])], degrees), None)


def _length(scene: Scene, figure: Figure, name: FactName, degrees: str | None) -> Fact | Ask | None:
    if name is FactName.TUBE_LENGTH and figure.kind == "power":
        measure = measure_of(figure, Dimension.POWER)
        return scene.fact(name, measure, figure) if measure else None
    if figure.kind not in ("length", "plain"):
        return None
    if name is not FactName.TUBE_LENGTH and is_no_distance(scene, figure):
        return None
    if _UNDER_MESH.match(scene.text, figure.end):
        return None
    system = length_system(scene) or {"degF": "in", "degC": "cm"}.get(degrees or "")
    measure = measure_of(scene.latest(figure), Dimension.LENGTH, system)
    if name is FactName.DISTANCE:
        name = TO_WHAT.get(reference_of(scene, figure), name)
    if measure is None:
        question = Say("unclear-number" if figure.kind == "length" else "unclear-inches")
        return scene.ask(name, question, figure)
    if measure.high > _FURTHEST_M:
        return None
    return scene.fact(name, measure, figure, assumed=measure.assumed)


def _home(scene: Scene, figure: Figure) -> Fact | Ask | None:
    if figure.kind == "size":
        return box_of(scene, figure)
    if figure.kind == "cross":
        return longer_side(scene, figure)
    if figure.kind == "volume":
        measure = measure_of(figure, Dimension.VOLUME)
        return scene.fact(FactName.VOLUME, measure, figure) if measure else None
    if figure.kind == "length":
        living = scene.before(figure.start, LIVING, figure.start - 24)
        if living and not scene.words(living.end, figure.start):
            # A python of 7 ft.
            return None
        measure = measure_of(figure, Dimension.LENGTH)
        return scene.fact(FactName.ENCLOSURE_LENGTH, measure, figure) if measure else None
    if figure.kind == "plain" and _GALLONS.match(scene.text, figure.end):
        measure = measure_of(figure, Dimension.VOLUME, "gal")
        return scene.fact(FactName.VOLUME, measure, figure, assumed=True) if measure else None
    return None


def _tube(scene: Scene, figure: Figure) -> Fact | None:
    if figure.kind not in ("percent", "plain") or len(figure.sides) != 1:
        return None
    if not 0 < figure.high <= STRONGEST_TUBE or is_other_share(scene, figure):
        return None
    if is_of_other_lamp(scene, figure):
        return None
    label = figure.text.endswith((".0", ",0"))
    number = figure.text if label else f"{float(figure.low):g}%"
    try:
        strength = read_tube_strength(number)
    except NotUnderstoodError:
        return None
    return scene.fact(FactName.TUBE, strength, figure, *tube_beside(scene, figure))


def _time(scene: Scene, figure: Figure, name: FactName) -> Fact | None:
    measure: Measure | None = None
    start = max(scene.sentence(figure.start)[0], figure.start - _SHORT_WAY)
    kept = _KEPT & set(scene.words(start, figure.start))
    if name is FactName.ANIMAL_AGE and (kept or is_of_somebody(scene, figure)):
        # "We had our boa 4 years."
        return None
    if figure.kind == "duration":
        measure = measure_of(figure, Dimension.DURATION)
    elif figure.kind == "plain" and len(figure.sides) == 1:
        if name is FactName.HOURS and _SHORTEST_DAY_H <= figure.low <= _LONGEST_DAY_H:
            measure = read_duration(f"{float(figure.low):g} h")
        if name is FactName.ANIMAL_AGE and 0 < figure.low <= _OLDEST:
            measure = read_duration(f"{float(figure.low):g} years")
    if measure is None:
        return None
    day = _SHORTEST_DAY_H * _HOUR <= measure.low <= measure.high <= _LONGEST_DAY_H * _HOUR
    if name is FactName.HOURS and not day:
        return None
    return scene.fact(name, measure, figure, assumed=figure.kind == "plain")


def _watts(scene: Scene, figure: Figure) -> Fact | None:
    if figure.kind not in ("power", "plain") or not 0 < figure.high <= _MOST_W:
        return None
    measure = measure_of(figure, Dimension.POWER, "W")
    name = FactName.OTHER_WATTS if is_dark(scene, figure) else FactName.WATTS
    return scene.fact(name, measure, figure, assumed=measure.assumed) if measure else None
