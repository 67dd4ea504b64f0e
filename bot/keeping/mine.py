"""A keeper's enclosures kept."""

from datetime import date, timedelta
from typing import Any

from pydantic import ValidationError

from bot.answers.animals import animal_asked
from bot.answers.length_asked import tube_length_m
from bot.desk import Desk
from bot.keeping.asker import today
from bot.keeping.words import question_of, setup_rows
from bot.language import screens as typed
from bot.language.errors import NotUnderstoodError
from bot.language.hearing import FactName
from bot.language.lamps import OtherLamp
from bot.language.uv_lamps import UvLamp
from bot.preferences import FIRST, Context
from bot.queries.mine import SaveQuery
from bot.questions.setup.told import SetUpTold, told_by
from bot.reply import Reply, Row
from bot.saying.voice import voice

__all__ = ["save"]

_DAY_S = 86_400.0
_BOUNDS = {
    "tube_percent": ("tube", "a tube from 1% to 20%", "12%"),
    "distance_m": ("distance", "a distance from 2 in to 9.8 ft (5 cm to 3 m)", "14in"),
    "tube_length_m": ("length", "a tube from 4 in to 6 ft (10 cm to 2 m)", "22in"),
    "length_m": ("enclosure", "sides from 4 in to 65 ft (10 cm to 20 m)", "48x24x24in"),
    "depth_m": ("enclosure", "sides from 4 in to 65 ft (10 cm to 20 m)", "48x24x24in"),
    "height_m": ("enclosure", "sides from 4 in to 65 ft (10 cm to 20 m)", "48x24x24in"),
    "gap_m": ("gap", "a gap up to 39 in (1 m)", "2in"),
    "screen": ("screen", "a screen that lets something through", "passes 55%"),
}


async def save(query: SaveQuery, context: Context, desk: Desk) -> Reply:
    """Keep an enclosure, or change the facts that were named of one."""
    told = told_by(query.words, query, context.own.names)
    changed = _facts(query, told, await today(desk), context)
    try:
        setup, known = await desk.store.enclosures.put(desk.keeper, query.name, changed)
    except ValidationError as error:
        option, accepted, example = _BOUNDS[str(error.errors()[0]["loc"][0])]
        given = getattr(query, option)
        read = given.text if given is not None else "a value that cannot be"
        raise NotUnderstoodError(read, accepted, example, option) from error
    ask = question_of(setup)
    return Reply(
        command="mine save",
        status="ok",
        title=f"“{query.name}” is {'changed' if known else 'kept'}",
        answer="Only you can see it. What you did not name stays as it was."
        if known
        else "Only you can see it.",
        rows=(
            *setup_rows(setup, context.units),
            *(
                Row(label="Not kept", text=voice(FIRST, context.units).text(asked.question))
                for asked in told.unclear
            ),
        ),
        steps=(
            *((f"Ask about it: {ask}",) if ask else ()),
            f"Write a reading down: mine reading name:{query.name} uvi:4.2 basking:103F",
            f"Be reminded to read again: remind me about:meter name:{query.name}",
        ),
    )


def _facts(query: SaveQuery, told: SetUpTold, now: date, context: Context) -> dict[str, Any]:
    facts: dict[str, Any] = {}
    if told.animal:
        facts["animal"] = animal_asked(told.animal, context).slug
    facts |= _lamp(query, told)
    if told.reflector:
        facts["reflector"] = told.reflector.value.value
    if told.pane:
        facts["screen"] = {"pane": told.pane.value.material}
    elif told.screen:
        facts["screen"] = _screen(told.screen.value)
    if told.pane_lid:
        facts["lid"] = str(told.pane_lid.value)
    # A distance without a word of where to is taken as it is mostly meant: to the back.
    distance = told.measure(FactName.DISTANCE_BACK) or told.measure(FactName.DISTANCE)
    length = told.measure(FactName.TUBE_LENGTH)
    if distance:
        facts["distance_m"] = distance.value.low
    if length:
        facts["tube_length_m"] = tube_length_m(length.value)
    age = told.measure(FactName.AGE)
    if age:
        facts["tube_since"] = now - timedelta(days=age.value.low / _DAY_S)
    if told.size:
        size = told.size.value
        facts |= {"length_m": size.length_m, "depth_m": size.depth_m, "height_m": size.height_m}
    return facts


def _lamp(query: SaveQuery, told: SetUpTold) -> dict[str, Any]:
    """Return which lamp was told, and how many of them."""
    facts: dict[str, Any] = {}
    kind, tube = told.uv_lamp, told.tube
    if kind is not None:
        # Whatever strength was kept is that of another lamp.
        facts |= {"lamp": kind, "tube_percent": _printed(told)}
    elif tube:
        facts["tube_percent"] = tube.value.percent
    if kind is None and (query.lamp is UvLamp.T5_HO or (tube and tube.value.is_told)):
        facts["lamp"] = None
    if told.all(FactName.TUBES):
        facts["tubes"] = told.tubes
    if told.gap_m:
        facts["gap_m"] = told.gap_m
    return facts


def _printed(told: SetUpTold) -> float | None:
    """Return the number on the label of a lamp of another kind."""
    labels = [said.value for said in told.all(FactName.TUBE)]
    numbers = [label.number for label in labels if isinstance(label, OtherLamp)]
    return told.tube.value.printed if told.tube else next(iter(numbers), None)


def _screen(screen: typed.Screen) -> dict[str, float]:
    match screen:
        case typed.NoScreen():
            return {}
        case typed.Blocks(share):
            return {"passes": 1.0 - share}
        case typed.Passes(share):
            return {"passes": share}
        case typed.Weave(mesh_x, mesh_y, wire):
            return {"mesh_x_per_m": mesh_x, "mesh_y_per_m": mesh_y, "wire_m": wire}
