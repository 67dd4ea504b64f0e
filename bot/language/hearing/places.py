"""Which words are the place of a temperature, and which place each figure was read at."""

import re
from collections.abc import Iterator

from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.linking import MOST_COST, link_cost
from bot.language.hearing.scene import Scene

__all__ = ["ENDS", "Read", "as_place", "lamps_that_give", "placed"]

Read = tuple[Figure, Mark, str]
"""A figure, the words for its place, and the place."""

ENDS = re.compile(r"\s*(?:[,.;!?)\n/]|and\b|\Z)")
"""The end of an entry of a list."""

# "There" stands for a perch named this far back, in characters.
_REACH = 300
# No warm end is held at more, so that only a surface is as hot.
_HOTTEST_AIR_C, _HOTTEST_AIR_F = 38, 100
_SURFACES = frozenset(("basking", "surface", "gun"))
# What follows a perch that is told with its temperature: 12in above slate gets 90F.
_READS = re.compile(
    r" (?:which |that |and )?(?:gets|is|reads|hits|gives|says|shows)"
    r"(?: (?:at|to|up to|about|around|like))? [0-9]|: [0-9]{2,3} ?(?:°|f\b|c\b|deg)"
)
_WATTS_GIVE = re.compile(
    r"(?: (?:bulb|halogen|flood|spot|lamp|light))? (?:makes?|gives?|gave|gets (?:it|the \w+) to)"
    r"(?: (?:me|about|around|only|just))? [0-9]|: [0-9]"
)
# A mat is as warm as the floor on it: mat 33, mat shows 90. A lamp gives it to what it shines on.
_ON_MAT = re.compile(
    r"(?: is)?(?: at)?(?: (?:about|around|only))?[ :=]{1,2}[0-9]{2,3}(?!\.?[0-9]* ?w)"
)
_MAT_SHOWS = re.compile(
    r" (?:shows|reads|says|gets|gives|hits)(?: (?:to|about|around|up to))? [0-9]"
)
_LAMP_GIVES = re.compile(
    r" (?:makes?|gives?|gets (?:it|the \w+) to|brings it to)(?: (?:about|around))? [0-9]"
)
_READS_SO = re.compile(r"(?: temp)?(?: is| reads| at)? [0-9]")
_READS_IN_UNITS = re.compile(
    r"(?: temp)?(?: is| reads| at)? [0-9]{2,3}(?:\.[0-9])? ?(?:°|deg|f\b|c\b)"
)
_GUN_READS = re.compile(r"[ :=]{1,3}[0-9]")
# A bare number up to here is in degrees Celsius on a surface.
_MOST_C = 55


def as_place(scene: Scene, mark: Mark) -> Mark | None:
    """Return a mark as the place of a temperature if it can be one."""
    if not scene.free(mark) and not (
        mark.kind == "reference" and _READS.match(scene.text, mark.end)
    ):
        return None
    if mark.kind == "place":
        return mark if _is_meant(scene, mark) else None
    if mark.kind == "thermometer" and mark.value == "infrared gun":
        # A gun reads a surface, where no other place is named.
        shows = scene.next_word(mark.end) in ("says", "reads", "shows", "gives", "said")
        shows = shows or _GUN_READS.match(scene.text, mark.end) is not None
        return Mark("place", "gun", mark.start, mark.end) if shows else None
    if mark.kind == "reference" and scene.text[mark.start : mark.end] in ("bottom", "floor"):
        # The lowest air of a tall box, where its hot place is told as well.
        hot = scene.of("place", "basking", "warm") or scene.of("reference", "perch")
        return Mark("place", "floor", mark.start, mark.end) if hot else None
    if mark.value == "heat mat":
        says = _ON_MAT.match(scene.text, mark.end) or _MAT_SHOWS.match(scene.text, mark.end)
        return Mark("place", "warm", mark.start, mark.end) if says else None
    if mark.kind in ("heat", "lamp") and _LAMP_GIVES.match(scene.text, mark.end):
        return Mark("place", "basking", mark.start, mark.end)
    if mark.kind == "away" and _is_below(scene, mark):
        return Mark("place", "cool", mark.start, mark.end)
    if mark.kind == "away" and _is_under(scene, mark):
        return Mark("place", "basking", mark.start, mark.end)
    said = set(scene.words(max(0, mark.start - 16), mark.start)[-2:])
    if mark.kind in ("heat", "lamp") and {"under", "beneath"} & said:
        return Mark("place", "basking", mark.start, mark.end)
    if mark.kind == "reference" and mark.value == "perch":
        at = {"on", "at", "under"} & said or scene.text.startswith("basking", mark.start)
        return Mark("place" if at else "perch", "basking", mark.start, mark.end)
    return None


def lamps_that_give(scene: Scene) -> Iterator[Mark]:
    """Return the watts that are told with what they give, as the place: 100w gives 97."""
    for figure in scene.figures:
        if figure.kind == "power" and _WATTS_GIVE.match(scene.text, figure.end):
            yield Mark("place", "basking", figure.start, figure.end)


def _is_under(scene: Scene, mark: Mark) -> bool:
    """Say whether "under" ends a clause behind a temperature: 98 under, 75 other end."""
    word = scene.text[mark.start : mark.end] in ("under", "underneath", "beneath")
    return word and ENDS.match(scene.text, mark.end) is not None


def _is_below(scene: Scene, mark: Mark) -> bool:
    """Say whether "below" ends a clause behind a temperature: 95 there, 80 below."""
    word = scene.text[mark.start : mark.end] == "below"
    return word and ENDS.match(scene.text, mark.end) is not None


def _is_meant(scene: Scene, mark: Mark) -> bool:
    """Say whether a word of a place means one here: "there" and "surface" need company."""
    if mark.value == "there":
        earlier = scene.marks.before(mark.start, mark.start - _REACH)
        return any(m.kind == "reference" or m.value == "basking" for m in earlier)
    if mark.value == "surface" and _READS_SO.match(scene.text, mark.end):
        around = [m for m in scene.marks.within(*scene.sentence(mark.start)) if m.kind == "place"]
        plain = _READS_IN_UNITS.match(scene.text, mark.end) is not None
        if (plain or any(m.value == "air" for m in around)) and not any(
            0 <= mark.start - m.end <= 1 for m in around
        ):
            # "Surface 33, air 28": of one spot.
            return True
    if mark.value == "surface":
        others = scene.marks.within(*scene.clause(mark.start))
        return all(m is mark for m in others if m.kind == "place")
    if mark.value != "day":
        return True
    return any(m.value == "room" for m in scene.marks.within(*scene.sentence(mark.start)))


def placed(scene: Scene, links: list[tuple[Figure, Mark]]) -> Iterator[Read]:
    """Return the links with the name of the place, said plainly or worked out."""
    used = {mark.start for _, mark in links}
    side, in_room = "", -1
    warm_said = any(mark.value == "warm" for _, mark in links)
    for figure, mark in links:
        name = mark.value
        if name in ("there", "surface", "gun"):
            name = "basking"
        elif name == "floor":
            name = "cool"
        elif name == "air":
            told = {mark.value for _, mark in links}
            name = "warm" if "cool" in told and told & _SURFACES else "ambient"
        elif name == "hot":
            name = "basking" if warm_said or _hotter_than_air(scene, figure, mark) else "warm"
        elif name == "other":
            name = {"cool": "warm", "basking": "cool", "warm": "cool"}.get(side, "ambient")
        elif name == "day":
            # Only the room has a day of its own: 66 at night and 70 in the day.
            name = "room"
        elif name in ("night", "room"):
            name = _of_room(scene, figure, mark, used, in_room)
        if name == "room":
            in_room = scene.sentence(mark.start)[0]
        elif name in ("basking", "warm", "cool"):
            side, in_room = name, -1
        yield figure, mark, name


def _hotter_than_air(scene: Scene, figure: Figure, mark: Mark) -> bool:
    """Say whether a place that is only called hot is hotter than any warm end is held."""
    only_hot = scene.text[mark.start : mark.end] == "hot"
    in_c = figure.unit == "degC" or (figure.unit is None and figure.low <= _MOST_C)
    return only_hot and figure.low >= (_HOTTEST_AIR_C if in_c else _HOTTEST_AIR_F)


def _of_room(scene: Scene, figure: Figure, mark: Mark, used: set[int], in_room: int) -> str:
    """Return night, room or room_night by what else stands in the sentence."""
    start, end = scene.sentence(figure.start)
    if mark.value == "night" and start == in_room:
        return "room_night"
    wanted = "room" if mark.value == "night" else "night"
    falls = {"drops", "drop", "falls", "fall", "down"} & set(scene.words(mark.end, figure.start))
    around = scene.marks.within(max(start, figure.start - 120), min(end, figure.end + 120))
    for other in (m for m in around if m.kind == "place" and m.value == wanted):
        lonely = other.start not in used
        near = link_cost(scene, figure, other) <= MOST_COST
        between = scene.text[min(other.end, figure.end) : max(other.start, figure.start)]
        if lonely and near and ("," not in between or falls):
            return "room_night"
    return mark.value
