"""Distances in a sentence: of the tube or of the heat lamp, and to what."""

import re
from bisect import bisect_left
from collections.abc import Iterator
from dataclasses import replace

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.hearing.facts import GONE, Ask, Fact, FactName
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import ANIMALS, LIVING, Part, Scene
from bot.language.hearing.strengths import LABELS, STRONGEST_TUBE, UV_LAMPS
from bot.language.hearing.word_lists import word_list
from bot.language.quantities import Measure, measured
from bot.language.units import Dimension, Units, system_of

__all__ = ["TO_WHAT", "distances", "is_no_distance", "length_system", "measure_of", "reference_of"]

TO_WHAT = {
    "back": FactName.DISTANCE_BACK,
    "perch": FactName.DISTANCE_PERCH,
    "floor": FactName.DISTANCE_FLOOR,
}
"""The distance by what it goes to."""

_SOURCES = frozenset(("tube", "heat", "lamp"))
_NOUNS = _SOURCES | {"reference", "home", "animal", "person"}
# An animal basks on its hide as on a rock, but a hide alone is a place of the warm or cool end.
_HIDE = re.compile(
    r"\s*(?:to|above|over|from|off)\s+((?:the\s+|her\s+|his\s+|its\s+|my\s+)?(?:top\s+of\s+the\s+)?"
    r"(?:warm\s+)?hide(?:\s+top)?)\b"
)
# "My beardie is under it at 14 inches."
_UNDER_IT = re.compile(
    r"(?:under|below|beneath) (?:it|the (?:tube|uvb|light)) (?:at |by |about )*\Z"
)
# "14 in above the dragon", whatever the animal's name is.
# "I raised the tube 3 inches", "moved the log up 5 inches", "2 in closer" tell a change, no place.
_MOVED_BY = re.compile(
    r"\b(?:moved?|raised?|lowered?|lifted|lift|dropped|drop|shifted|shift|put|brought)"
    r"(?: (?!to\b|at\b|from\b|is\b|its\b|it's\b|so\b|now\b|about\b)[a-z']+){0,4}(?: by)?"
    r"(?: (?:about|another|like))? *\Z"
)
_BY_SO_MUCH = re.compile(
    r" (?:higher|lower|closer|nearer|further|farther)\b(?! (?:than|from|to)\b)"
)
_TO_THE = re.compile(r" (?:away )?(?:from|above|over|to) (?:the |my |our |his |her |a )?")
_BELOW = frozenset(("below", "under", "beneath", "underneath"))
# Farther than this from anything is a wall or a garden, and no lamp over an animal.
_FURTHEST_M = 3
# Nothing hangs as many inches above an animal: the number is a temperature.
_NO_INCHES = 60
# How far from its figure a reference is looked for, in characters.
_NEAR = 90


def measure_of(figure: Figure, dimension: Dimension, bare: str | None = None) -> Measure | None:
    """Return the measure of a figure, or None where it may be read in two ways."""
    unit = figure.unit or bare
    if unit is None or any(side.doubt for side in figure.sides):
        return None
    sides = [side if side.unit else replace(side, unit=unit) for side in figure.sides]
    try:
        measure = measured(sides[0], sides[-1], dimension, unit, figure.text)
    except NotUnderstoodError:
        return None
    return measure if figure.unit else replace(measure, assumed=True)


def distances(scene: Scene) -> Iterator[Fact | Ask]:
    """Return what was heard of distances; run before temperatures and after sizes."""
    system, told = length_system(scene), _sources(scene)
    for figure in scene.figures:
        if figure.kind not in ("length", "plain") or not scene.free(figure):
            continue
        if scene.standing(figure) in GONE or is_no_distance(scene, figure):
            continue
        reference, parts = _reference(scene, figure)
        if figure.kind == "plain" and (
            not (reference and _says_distance(scene, figure))
            or (figure.low >= _NO_INCHES and system != "cm")
        ):
            continue
        source = _source(scene, figure, told)
        says = bool(reference) or _says_distance(scene, figure)
        if not (says or (source and figure.unit != "ft")):
            # Feet alone are the size of something.
            continue
        if _is_height(scene, figure, reference, source):
            continue
        measure = measure_of(scene.latest(figure), Dimension.LENGTH, system)
        name = (
            FactName.LAMP_DISTANCE
            if source == "heat"
            else TO_WHAT.get(reference, FactName.DISTANCE)
        )
        if measure is None:
            is_length = figure.kind == "length"
            question = Say("unclear-number" if is_length else "unclear-inches")
            scene.take(figure)
            yield scene.ask(name, question, figure, *parts)
        elif measure.high <= _FURTHEST_M:
            scene.take(figure, *parts)
            yield scene.fact(name, measure, figure, *parts, assumed=measure.assumed)
        elif reference and source:
            scene.take(figure)
            yield scene.ask(name, Say("unclear-far"), figure, *parts)


def length_system(scene: Scene) -> str | None:
    """Return the unit of bare lengths: that of the system the rest of the text is written in."""
    kinds = ("length", "temperature", "size")
    systems = {system_of(f.unit) for f in scene.figures if f.unit and f.kind in kinds}
    if not systems and scene.normal.metric:
        return Units.CM
    return systems.pop() if len(systems) == 1 else None


def is_no_distance(scene: Scene, figure: Figure) -> bool:
    """Say whether a length is told of something else than the way from a lamp."""
    adjective = scene.after(figure.end, frozenset(("size",)), figure.end + 14)
    if adjective and not scene.words(figure.end, adjective.start):
        return True
    if scene.next_word(figure.end) in word_list("things_with_a_size"):
        return True
    if _BY_SO_MUCH.match(scene.text, figure.end) or scene.next_word(figure.end) == "across":
        return True
    clause, _ = scene.clause(figure.start)
    if _MOVED_BY.search(scene.text, max(clause, figure.start - 50), figure.start):
        return scene.next_word(figure.end) not in word_list("ways") - {"up", "down"}
    probe = scene.before(figure.start, frozenset(("thermometer",)), figure.start - 8)
    if probe is not None and not scene.words(probe.end, figure.start):
        # "The probe 5 cm above reads 102F."
        return True
    following = scene.words(figure.end, figure.end + 16)[:2]
    if following == ["gap", "between"]:
        # "A 2 inch gap between mesh and hood" is no way to the animal.
        return True
    if following[:1] == ["of"] and following[1:] not in (["the"], ["him"], ["her"], ["it"]):
        # "3 inches of substrate."
        return True
    if following in (["up", "on"], ["up", "off"]):
        # "He sits 4 in up on a rock."
        return True
    living = scene.before(figure.start, LIVING, figure.start - 24)
    between = scene.words(living.end, figure.start) if living else []
    if living and living.kind != "person" and not between and figure.unit == "ft":
        # A python of 7 ft.
        return not word_list("ways") & set(scene.words(figure.end, figure.end + 12)[:1])
    told = living is not None and (living.kind == "person" or bool({"is"} & set(between)))
    if living and told and set(between) <= word_list("before_age"):
        # "She's 12 cm" tells her length, "him 12 cm from the tube" a distance.
        following = scene.words(figure.end, figure.end + 12)[:1]
        pronoun = _is_pronoun(scene, living)
        if not pronoun and not word_list("ways") & set(following):
            return not scene.text[living.end : figure.start].count(",")
    corrected = scene.after(figure.end, frozenset(("corrected",)), scene.sentence(figure.start)[1])
    return corrected is not None and len(scene.words(figure.end, corrected.start)) <= 1


def _says_distance(scene: Scene, figure: Figure) -> bool:
    following = scene.words(figure.end, min(figure.end + 30, scene.clause(figure.end)[1]))[:2]
    before = scene.words(max(scene.sentence(figure.start)[0], figure.start - 30), figure.start)[-3:]
    way = bool((word_list("ways") - {"at"}) & set(following[:1]))
    return way or bool({"distance", "dist", "gap"} & set(before))


def reference_of(scene: Scene, figure: Figure) -> str:
    """Return what a distance goes to: back, perch or floor; nothing where that is not said."""
    return _reference(scene, figure)[0]


def _reference(scene: Scene, figure: Figure) -> tuple[str, tuple[Part, ...]]:
    """Return what the distance goes to, and the words that say so."""
    start, end = scene.clause(figure.start)
    hide = _HIDE.match(scene.text, figure.end)
    if hide:
        return "perch", (Mark("reference", "perch", hide.start(1), hide.end(1)),)
    for mark in scene.marks.within(figure.end, min(end, figure.end + _NEAR)):
        if mark.kind in ANIMALS and _TO_THE.fullmatch(scene.text, figure.end, mark.start):
            return "back", (mark,)
        between = scene.words(figure.end, mark.start)
        if mark.kind == "reference" and len(between) <= 6:
            if _is_pronoun(scene, mark) and _owns(scene, mark):
                # "Above her basking rock" is above the rock.
                continue
            if _is_pronoun(scene, mark) and not word_list("ways") & set(between[-1:]):
                continue
            return mark.value, (mark,)
        if (
            mark.kind == "place"
            and mark.value == "basking"
            and word_list("ways") & set(between[-2:])
        ):
            return "perch", (mark,)
        if mark.kind in ("place", "temperature") or mark.kind == "restart":
            break
    person = scene.before(figure.start, LIVING, start)
    if person and _UNDER_IT.search(scene.text, max(0, figure.start - 24), figure.start):
        return "back", (person,)
    if person and _BELOW & set(scene.words(figure.end, figure.end + 11)[:1]):
        return "back", (person,)
    for mark in scene.marks.before(figure.start, max(start, figure.start - _NEAR)):
        if mark.kind == "reference" and _has_temperature(scene, mark):
            break
        if mark.kind == "reference" and not _is_pronoun(scene, mark):
            return mark.value, (mark,)
        joined = {"to", "from", "and"} & set(scene.words(mark.start - 10, mark.start)[-1:])
        if mark.kind in ("place", "restart") or (mark.kind in _SOURCES and not joined):
            break
    return "", ()


def _owns(scene: Scene, pronoun: Mark) -> bool:
    """Say whether "her" is whose the next thing is."""
    following = scene.marks.within(pronoun.end, pronoun.end + 20)[:1]
    kinds = {mark.kind for mark in following if not scene.words(pronoun.end, mark.start)}
    return bool(kinds & {"reference", "place"})


def _has_temperature(scene: Scene, mark: Mark) -> bool:
    """Say whether a perch is told with its temperature: 36C at the slate."""
    at = {"at", "on"} & set(scene.words(mark.start - 8, mark.start))
    figures = scene.figures.within(mark.start - 18, mark.start)
    return bool(at) and any(f.kind in ("temperature", "degrees") for f in figures)


def _is_pronoun(scene: Scene, mark: Mark) -> bool:
    return scene.text[mark.start : mark.end] in ("him", "her")


def _source(scene: Scene, figure: Figure, told: list[tuple[int, str]]) -> str | None:
    """Return "uv" or "heat" by the lamp that the distance is told of, or None."""
    _, end = scene.clause(figure.start)
    after = scene.after(figure.end, _SOURCES, min(end, figure.end + 60))
    if after and word_list("ways") & set(scene.words(figure.end, after.start)[-2:]):
        return _side_of(after)
    if after and not scene.words(figure.end, after.start) and scene.next_word(after.end) == "to":
        return _side_of(after)
    before = bisect_left(told, (figure.start, ""))
    if before:
        at, side = told[before - 1]
        return "uv" if side == "heat" and _shared(scene, told[:before], at) else side
    return "uv" if any(side == "uv" for _, side in told) else None


def _sources(scene: Scene) -> list[tuple[int, str]]:
    """Return the places at which a lamp is spoken of, in order, each "uv" or "heat"."""
    lamps = [mark for mark in scene.marks if mark.kind in _SOURCES]
    # A dome is the holder of the lamp that was named right before it in the sentence.
    named = zip((None, *lamps), lamps, strict=False)
    told = [
        (mark.start, _side_of(lamp if lamp and _is_holder(scene, lamp, mark) else mark))
        for lamp, mark in named
    ]
    told += [(f.start, _side_of_watts(scene, f)) for f in scene.figures if f.kind == "power"]
    told += [(f.start, "uv") for f in scene.figures if _is_label(f)]
    return sorted(told)


def _side_of_watts(scene: Scene, figure: Figure) -> str:
    """Return "uv" for the watts beside a label, as in 12% 39w, and "heat" for any other."""
    near = scene.figures.within(figure.start - 14, figure.end + 10)
    of_tube = str(figure.low) in word_list("tube_watts") and any(_is_label(f) for f in near)
    return "uv" if of_tube else "heat"


def _is_label(figure: Figure) -> bool:
    older = figure.kind == "plain" and figure.text.endswith((".0", ",0")) and figure.low in LABELS
    return older or (figure.kind == "percent" and figure.high <= STRONGEST_TUBE)


def _is_holder(scene: Scene, lamp: Mark, mark: Mark) -> bool:
    word = scene.text[mark.start : mark.end]
    sized = any(f.kind == "length" for f in scene.figures.within(mark.start - 10, mark.start))
    holder = word in ("dome", "domes") or (word == "bulb" and sized)
    return holder and scene.sentence(lamp.start) == scene.sentence(mark.start)


def _shared(scene: Scene, told: list[tuple[int, str]], at: int) -> bool:
    """Say whether a heat lamp stands right beside the tube: 6% T5 + 60w bulb on the mesh."""
    uv = next((start for start, side in reversed(told[-4:]) if side == "uv"), at)
    between = scene.text[uv:at]
    return 0 < len(between) < 30 and any(sign in between for sign in (" + ", " and ", "&"))


def _side_of(mark: Mark) -> str:
    return "uv" if mark.kind == "tube" or mark.value in UV_LAMPS else "heat"


def _is_height(scene: Scene, figure: Figure, reference: str, source: str | None) -> bool:
    """Say whether this is the height of a perch over the floor, and no distance of a lamp."""
    start, _ = scene.clause(figure.start)
    noun = scene.before(figure.start, _NOUNS, start)
    if reference == "perch" and noun and noun.value == "back" and not _is_pronoun(scene, noun):
        # "His back is 3 in off the log."
        return scene.words(noun.end, figure.start) in (["is"], ["is", "about"], ["is", "like"])
    if reference != "floor":
        return False
    floor = scene.after(figure.end, frozenset(("reference",)), figure.end + 40)
    if floor and scene.after(figure.end, _SOURCES, floor.start):
        # In "10 inches uvb to floor" the lamp stands between.
        return False
    return noun is not None and noun.kind == "reference"
