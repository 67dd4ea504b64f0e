"""An enclosure kept, or changed. Words: ``words/<language>/mine-save.ftl``, ``home.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from pydantic import ValidationError

from bot.asker import today
from bot.command import Command
from bot.desk import Desk
from bot.facts import Bound as Rounded
from bot.facts import Length, Say, Says, Share, metres, share
from bot.language import screens as typed
from bot.language.hearing import FactName
from bot.language.lamps import OtherLamp
from bot.language.shown import shown
from bot.language.uv_lamps import UvLamp
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.mine import SaveQuery
from bot.questions.animals import animal_asked
from bot.questions.saved.setup import SetupTold, question_of, setup_rows, setup_told
from bot.questions.setup.read import unclear_said
from bot.questions.setup.told import SetUpTold, told_by
from bot.questions.uv.length_asked import tube_length_m
from bot.refusal import RefusedError
from bot.saved.group import Own
from bot.saved.keeper import Setup

__all__ = [
    "BOUNDED",
    "MINE_SAVE",
    "BeyondKept",
    "Saved",
    "save",
    "tell_beyond",
    "tell_save",
    "told_ends",
]

_DAY_S = 86_400.0
BOUNDED = {
    "tube_percent": ("tube", "12%"),
    "distance_m": ("distance", "14in"),
    "tube_length_m": ("length", "22in"),
    "length_m": ("enclosure", "48x24x24in"),
    "depth_m": ("enclosure", "48x24x24in"),
    "height_m": ("enclosure", "48x24x24in"),
    "gap_m": ("gap", "2in"),
    "screen": ("screen", "45%"),
}
"""What of a set-up has ends, with its option and an example."""


@dataclass(frozen=True, slots=True)
class Saved:
    """An enclosure as it is kept now; ``unclear`` is what was asked back of its words."""

    name: str
    known: bool
    setup: SetupTold
    question: str | None
    unclear: tuple[Say, ...]


async def save(query: SaveQuery, context: Context, desk: Desk) -> Saved:
    """Keep an enclosure, or change the facts that were named of one."""
    # A lamp or a screen of the group's own is not kept: elsewhere its name would tell nothing.
    told = told_by(query.words, query, Own(animals=context.own.animals))
    changed = _facts(query, told, await today(desk), context)
    try:
        setup, known = await desk.store.enclosures.put(desk.keeper, query.name, changed)
    except ValidationError as error:
        raise _beyond(query, str(error.errors()[0]["loc"][0])) from error
    await desk.store.cases.moved(desk.keeper, query.name, desk.now)
    return Saved(
        name=query.name,
        known=bool(known),
        setup=setup_told(setup),
        question=question_of(setup) or None,
        unclear=tuple(map(unclear_said, told.unclear)),
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


def tell_save(facts: Saved) -> Layered:
    """Tell what is kept, and what to do with it."""
    say = Says("mine-save", facts)
    return Layered(
        command="mine save",
        title=say("title"),
        brief=Brief(head=say("head")),
        steps=tuple(_steps(facts, say)),
        numbers=(
            *setup_rows(facts.setup),
            *(Row(say("unclear"), asked) for asked in facts.unclear),
        ),
    )


def _steps(facts: Saved, say: Says) -> Iterator[Say]:
    if facts.question is not None:
        yield say("step-ask")
    yield say("step-read")
    yield say("step-remind")


@dataclass(frozen=True, slots=True)
class BeyondKept:
    """A value that cannot be kept, and the ends that can, both of lengths or both of shares."""

    option: str
    read: str
    low: Length | None
    high: Length | None
    least: Share | None
    most: Share | None
    example: str


def _beyond(query: SaveQuery, field: str) -> RefusedError:
    option, example = BOUNDED[field]
    given = getattr(query, option)
    read = shown(given.text if given is not None else "")
    facts = BeyondKept(
        option, read, *told_ends(field), f"mine save name:{query.name} {option}:{example}"
    )
    return RefusedError(facts, tell_beyond, option)


def told_ends(field: str) -> tuple[Length | None, Length | None, Share | None, Share | None]:
    """Return the ends between which a fact of a set-up is kept: of a length, or of a strength."""
    rules = Setup.model_fields[field].metadata
    low = next((rule.ge for rule in rules if hasattr(rule, "ge")), None)
    high = next((rule.le for rule in rules if hasattr(rule, "le")), None)
    if field.endswith("_m"):
        # Rounded inward, so that both ends as told can be kept.
        least = metres(low, bound=Rounded.AT_LEAST) if low else None
        return least, high and metres(high, bound=Rounded.AT_MOST), None, None
    return None, None, low and share(low / 100.0), high and share(high / 100.0)


def tell_beyond(facts: BeyondKept) -> Layered:
    """Tell that it cannot be kept, and what can."""
    say = Says("mine-save", facts)
    ends = say("ends-length") if facts.high else say("ends-tube" if facts.most else "ends-screen")
    return Layered(
        command="mine save",
        status="problem",
        title=Say("refused-title"),
        brief=Brief(head=say("beyond"), range=(ends,), steps=(say("step-try"),)),
        steps=(say("step-try"),),
    )


MINE_SAVE = Command(
    name="mine save",
    query=SaveQuery,
    stored=save,
    tell=tell_save,
    examples=(
        (
            "mine save name:Pebble's box animal:bearded dragon tube:12% reflector:polished "
            "screen:none distance:16in age:new"
        ),
        "mine save name:Spare box enclosure:120x60x60cm",
        (
            "mine save name:Fern's box words:beardie with a 12% in a shiny hood, no screen, "
            "18 inches above his back, 4x2x2"
        ),
    ),
    guide=("keeping-notes",),
)
