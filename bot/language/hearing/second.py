"""The second opinion on figures: what was learned, beside what the listeners made of them."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from bot.facts import Say
from bot.language.hearing.distances import TO_WHAT
from bot.language.hearing.facts import GONE, Ask, Fact, FactName, Standing
from bot.language.hearing.items import Item
from bot.language.hearing.learned import NO_ROLE, Linked, linked_roles
from bot.language.hearing.made import made_of
from bot.language.hearing.scene import Scene
from bot.language.hearing.temperatures import DEGREES, is_setting, is_way
from bot.language.hearing.word_lists import word_list
from bot.language.quantities import Measure

__all__ = ["ROLES", "reading_of", "second_opinion"]

# From these chances [1] on what the listeners heard holds, another role is taken, and one of which
# they would ask; else a figure that is likely a reading is asked about. Set on hands whose messages
# were not learned.
_HELD, _TAKEN, _TAKEN_UNASKED, _ASKED = 0.05, 0.65, 0.8, 0.45
_AGAINST = 0.9
# A bare number alone in a text that names no animal and tells little else is never taken.
_FEWEST = 4
_NOT_NOW = 0.5

ROLES: Mapping[FactName, str] = {
    FactName.ENCLOSURE: "enclosure",
    FactName.ENCLOSURE_LENGTH: "enclosure",
    FactName.VOLUME: "enclosure",
    FactName.TUBE: "tube",
    FactName.TUBE_LENGTH: "tube_length",
    FactName.AGE: "age",
    FactName.ANIMAL_AGE: "animal_age",
    FactName.DISTANCE: "distance",
    FactName.DISTANCE_BACK: "distance",
    FactName.DISTANCE_PERCH: "distance",
    FactName.DISTANCE_FLOOR: "distance",
    FactName.LAMP_DISTANCE: "lamp_distance",
    FactName.BASKING: "basking",
    FactName.WARM: "warm",
    FactName.COOL: "cool",
    FactName.NIGHT: "night",
    FactName.ROOM_NIGHT: "night",
    FactName.ROOM: "room",
    FactName.WATER: "water",
    FactName.WATTS: "watts",
    FactName.OTHER_WATTS: "watts",
    FactName.HOURS: "hours",
    FactName.ON_FOR: "on_for",
    FactName.UVI: "uvi",
}
"""The role of a figure by the fact that it tells."""

# A night's room is told as either.
_ALIKE = {("room", FactName.ROOM_NIGHT), ("watts", FactName.TUBE_LENGTH)}
# What the listeners asked of these may be known from the rest.
_OPEN = frozenset(
    (FactName.TEMPERATURE, FactName.ENCLOSURE, FactName.LAMP_DISTANCE, *TO_WHAT.values())
) | {FactName.DISTANCE}
_DIALS, _SHORT_WAY = frozenset(("thermometer",)), 40
_WEIGHED = frozenset(("g", "gram", "grams", "kg", "w"))
_FAR = ("distance", "lamp_distance")
_NOT_SO = (Standing.WAS, Standing.WISHED, Standing.OTHERS)


def reading_of(row: Fact | Ask | None, apart: Fact | Ask | None = None) -> str:
    """Return in a word what the listeners made of a figure."""
    if row is None:
        return f"~{reading_of(apart)}" if apart is not None else ""
    if isinstance(row, Ask):
        return f"?{row.name}"
    return str(row.name) if row.standing is Standing.IS else f"{row.name}~{row.standing}"


def second_opinion(
    scene: Scene,
    items: Sequence[Item],
    read: Mapping[int, str],
    facts: list[Fact],
    asked: list[Ask],
) -> tuple[list[Fact], list[Ask], list[Fact]]:
    """Return the facts and questions with what was learned, and what it holds to be not so now.

    ``read`` is what the listeners made of each of the figures, by its start.
    """
    by_figure = dict(scene.read)
    aside: list[Fact] = []
    degrees = _degrees_of(facts)
    named = any(fact.name is FactName.ANIMAL for fact in facts)
    told_enough = len(items) >= _FEWEST or (named and len(items) > 1)
    found = linked_roles(scene, items, read)
    # Of 106/80 both are taken, or neither.
    unsure = {one.item.figure.start for one in found if one.item.side >= 0 and not _is_sure(one)}
    for one in found:
        row = by_figure.get(one.item.figure.start)
        row = row if not isinstance(row, Fact) or row in facts else None
        if isinstance(row, Ask) and row.name not in _OPEN:
            continue
        if row is None and _is_price(scene, one):
            continue
        if isinstance(row, Fact):
            if row.name not in ROLES or one.item.side >= 0 or _holds(scene, one, row):
                continue
            facts.remove(row)
            if one.stands_as(*_NOT_SO) >= _NOT_NOW:
                aside.append(replace(row, standing=_likeliest(one)))
        made = None
        least = _TAKEN_UNASKED if isinstance(row, Ask) else _TAKEN
        likely = one.role != NO_ROLE and one.chance * one.stands_as(Standing.IS) >= least
        likely = likely and one.item.figure.start not in unsure and not _is_gone(scene, one)
        if likely and (row is None or told_enough):
            made = made_of(scene, one.item, one.role, degrees)
        if made is not None:
            asked[:] = [ask for ask in asked if not _touches(ask, made)]
        if isinstance(made, Fact):
            facts.append(replace(made, standing=Standing.IS))
        elif made is not None:
            asked.append(made)
        elif _may_be_read(scene, one) and not (_is_gone(scene, one) or _touched(asked, scene, one)):
            asked.append(_where(scene, one))
    return facts, asked, aside


def _holds(scene: Scene, one: Linked, fact: Fact) -> bool:
    """Say whether what the listeners heard is likely enough."""
    chance = one.roles[ROLES[fact.name]]
    chance += sum(one.roles[role] for role, name in _ALIKE if name is fact.name)
    start = one.item.figure.start
    if ROLES[fact.name] in _FAR and one.role in _FAR:
        # Whose distance it is stands in words that the listeners know.
        return True
    if scene.before(start, _DIALS, start - _SHORT_WAY) and one.role == ROLES[fact.name]:
        # "They say 90": the thermometers do.
        return True
    so = 1 - one.stands_as(*_NOT_SO)
    return chance * so >= _HELD or (one.chance < _AGAINST and so >= _NOT_NOW)


def _is_price(scene: Scene, one: Linked) -> bool:
    """Say whether a number is a price: 120 quid."""
    figure = one.item.figure
    return figure.kind == "plain" and scene.next_word(figure.end) in word_list("prices")


def _is_sure(one: Linked) -> bool:
    chance = one.chance * one.stands_as(Standing.IS)
    return one.role != NO_ROLE and chance >= _AGAINST


def _is_gone(scene: Scene, one: Linked) -> bool:
    """Say whether a figure is told in words not to be so now."""
    figure = one.item.figure
    return scene.standing(figure) in GONE or scene.left_behind(figure)


def _likeliest(one: Linked) -> Standing:
    return max(_NOT_SO, key=lambda standing: one.stands[standing])


def _degrees_of(facts: Iterable[Fact]) -> str | None:
    """Return the unit of the temperatures that were heard, if it is one."""
    units = {
        fact.value.unit
        for fact in facts
        if fact.name in DEGREES and isinstance(fact.value, Measure)
    }
    return units.pop() if len(units) == 1 else None


def _may_be_read(scene: Scene, one: Linked) -> bool:
    """Say whether a figure is likely a reading, of whichever place."""
    if scene.next_word(one.item.figure.end) in _WEIGHED or is_way(scene, one.item.figure):
        return False
    chance = sum(one.roles.get(name, 0.0) for name in DEGREES)
    return chance * one.stands_as(Standing.IS) >= _ASKED and not is_setting(scene, one.item.figure)


def _where(scene: Scene, one: Linked) -> Ask:
    return scene.ask(FactName.TEMPERATURE, Say("unclear-where"), one.item.figure)


def _touched(asked: Iterable[Ask], scene: Scene, one: Linked) -> bool:
    start, end = scene.normal.span(one.item.start, one.item.end)
    return any(ask.start < end and start < ask.end for ask in asked)


def _touches(ask: Ask, row: Fact | Ask) -> bool:
    return ask.start < row.end and row.start < ask.end
