"""A group's own lamps and screens, kept from readings that a tube can give. Words: ``kept.ftl``."""

from collections.abc import Iterator, Sequence
from dataclasses import asdict, dataclass, replace
from typing import Any

from bot.command import Command
from bot.desk import Desk
from bot.facts import Say, Says
from bot.language.errors import NotUnderstoodError
from bot.language.lamps import read_tube_strength
from bot.language.screens import Blocks, Passes, read_screen
from bot.language.uv_lamps import TUBES, UvLamp
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.server import LampQuery, ScreenQuery
from bot.questions.owned import OwnLampTold, OwnScreenTold, lamp_told, screen_told
from bot.questions.saved.unable import server_of, unable
from bot.questions.uv.fit import FitTold, fit_rows, fit_table, fit_told
from bot.questions.uv.lamp_asked import engine_readings, screen_asked
from bot.questions.uv.length_asked import lit_length
from bot.questions.uv.readings import (
    LampRead,
    again_briefly,
    enough_read,
    expected_shape,
    off_briefly,
    off_told,
)
from bot.questions.uv.readings_off import OffBy, off_of
from bot.saved.group import OwnLamp, OwnScreen
from calc.uv.lamp import CLASS_STRENGTH_PERCENT, Fixture, Lamp, OwnPoint
from calc.uv.meter import MeterFit, Reading, fit_readings, screen_from_readings
from calc.uv.point import Shape
from calc.uv.screen import NoScreen
from calc.uv.shapes import fit_lamp

__all__ = [
    "KEPT_NEXT",
    "SERVER_LAMP",
    "SERVER_SCREEN",
    "lamp",
    "screen",
    "tell_lamp",
    "tell_screen",
]

KEPT_NEXT = (Say("kept-step-all"), Say("group-step-changes"))
_LAMP, _SCREEN = "server lamp", "server screen"
_FOR_EXAMPLE = "server lamp name:Hood A readings:4.2 at 12 in, 2.9 at 15 in length:34in"
_TWO_PLACES = "readings:6.0 at 12 in, 3.4 at 16 in"
_SMALL = f"server lamp name:Dome A {_TWO_PLACES} lamp:compact lamp"
_MOST_DOUBT = 3.0


@dataclass(frozen=True, slots=True)
class LampKept:
    """A lamp of the group's own, what its readings show, and whether it took another's place."""

    lamp: OwnLampTold
    replaced: bool
    fit: FitTold
    read: LampRead

    @property
    def name(self) -> str:
        """Return the name of the lamp."""
        return self.lamp.name


@dataclass(frozen=True, slots=True)
class ScreenKept:
    """A screen of the group's own, and whether it took another's place."""

    screen: OwnScreenTold
    replaced: bool

    @property
    def name(self) -> str:
        """Return the name of the screen."""
        return self.screen.name


async def lamp(query: LampQuery, context: Context, desk: Desk) -> LampKept:
    """Keep a lamp of the group's own by the law that its readings give it."""
    server = server_of(desk, _LAMP)
    _check_free(query.name, _LAMP)
    between = screen_asked(query.screen) if query.screen else NoScreen()
    _check_kind(query)
    named = Lamp(CLASS_STRENGTH_PERCENT, Fixture.POLISHED)
    if query.lamp in TUBES and query.length is not None:
        named = replace(named, lit_length_m=lit_length(query.length))
    given = engine_readings(query.readings, between)
    fit = _fitting(query.lamp, given, named)
    read = _sound(query, given, fit, named)
    kept = OwnLamp(
        name=query.name,
        kind=query.lamp,
        readings=len(query.readings),
        set_on=desk.now.date(),
        **_law(fit, named),
    )
    replaced = await desk.store.figures.put(server, kept, desk.by)
    await desk.store.boards.look_again(desk.now, server)
    return LampKept(lamp_told(kept), replaced, fit_told(fit, query.readings), read)


def _check_kind(query: LampQuery) -> None:
    """Refuse to keep a lamp whose kind, length or law of falling is not known."""
    if query.lamp is UvLamp.UNKNOWN:
        raise unable(_LAMP, Say("kept-no-kind"), example="lamp:compact lamp", option="lamp")
    if query.lamp in TUBES:
        if query.length is None:
            raise unable(_LAMP, Say("kept-no-length"), example="length:34in", option="length")
    elif not enough_read(query.readings, query.lamp):
        raise unable(_LAMP, Say("kept-no-two-places"), example=_TWO_PLACES, option="readings")


def _fitting(kind: UvLamp, given: Sequence[Reading], named: Lamp) -> MeterFit:
    """Return the fit of the law that the kind follows; refuse readings that say the other."""
    expected = expected_shape(kind)
    fit = fit_lamp(given, named, expected)
    if fit.shape is expected:
        return fit_readings(given, named) if expected is Shape.LINE else fit
    if expected is Shape.LINE:
        raise unable(_LAMP, Say("kept-no-tube"), Say("kept-no-tube-own"), example=_SMALL)
    raise unable(_LAMP, Say("kept-no-small"), Say("kept-no-small-own"), example=_FOR_EXAMPLE)


def _law(fit: MeterFit, named: Lamp) -> dict[str, Any]:
    """Return how the UV falls, as it is kept."""
    if isinstance(fit.own, OwnPoint):
        return {"point": asdict(fit.own.source), "doubt_factor": fit.own.doubt.factor}
    return {
        "constant_uvi_m": fit.estimate.best,
        "doubt_factor": min(fit.estimate.high / fit.estimate.best, _MOST_DOUBT),
        "lit_length_m": named.lit_length_m,
    }


def _sound(query: LampQuery, given: Sequence[Reading], fit: MeterFit, named: Lamp) -> LampRead:
    """Refuse to keep for everybody what no such lamp gives."""
    found = fit.lamp(named)
    off = off_of(fit, given, query.readings, (named, found, None), query.lamp)
    read = LampRead(found, fit, tuple(query.readings), off)
    if off.by is not OffBy.NOTHING:
        again = *off_briefly(off), *again_briefly(read)
        raise unable(_LAMP, Say.by("reading-head", off.by), *again, example=_FOR_EXAMPLE)
    return read


def tell_lamp(facts: LampKept) -> Layered:
    """Tell by what name the lamp can be asked about, and what its readings show."""
    say = Says("kept", facts)
    left_out = off_briefly(facts.read.off)
    head, *more = (*left_out, say("lamp"))
    return Layered(
        command=_LAMP,
        title=say("lamp-title"),
        brief=Brief(head=head, range=tuple(more)),
        steps=(say("step-lamp"), *KEPT_NEXT),
        numbers=tuple(_numbers(facts, say)),
        table=fit_table(facts.fit),
        why=tuple(off_told(facts.read.off)),
    )


def _numbers(facts: LampKept, say: Says) -> Iterator[Row]:
    yield Row(say("label-lamp"), facts.lamp.law)
    yield from fit_rows(facts.fit, facts.read)


async def screen(query: ScreenQuery, context: Context, desk: Desk) -> ScreenKept:
    """Keep a screen of the group's own, by its share or by readings with and without it."""
    server = server_of(desk, _SCREEN)
    _check_free(query.name, _SCREEN)
    kept = OwnScreen(name=query.name, passes=_passes(query), set_on=desk.now.date())
    replaced = await desk.store.figures.put(server, kept, desk.by)
    await desk.store.boards.look_again(desk.now, server)
    return ScreenKept(screen_told(kept), replaced)


def _passes(query: ScreenQuery) -> float:
    match query.screen:
        case Passes(share) if share > 0.0:
            return share
        case Blocks(share) if share < 1.0:
            return 1.0 - share
        case None if query.readings and query.without:
            named = Lamp(CLASS_STRENGTH_PERCENT, Fixture.POLISHED)
            bare = engine_readings(query.without, NoScreen(), "without")
            screened = engine_readings(query.readings, NoScreen())
            return screen_from_readings(bare, screened, named).best
    example = "server screen name:Mesh lid screen:passes 55%"
    raise unable(_SCREEN, Say("kept-no-share"), example=example)


def tell_screen(facts: ScreenKept) -> Layered:
    """Tell by what name the screen can be asked about."""
    say = Says("kept", facts)
    return Layered(
        command=_SCREEN,
        title=say("screen-title"),
        brief=Brief(head=say("screen")),
        steps=(say("step-screen"), *KEPT_NEXT),
        numbers=(Row(say("label-screen"), Say("owned-screen", facts.screen)),),
    )


def _check_free(name: str, command: str) -> None:
    """Refuse a name that already means a strength or a screen to everybody."""
    for read in (read_tube_strength, read_screen):
        try:
            read(name)
        except NotUnderstoodError:
            continue
        raise unable(command, Say("kept-no-free-name"), example="name:Hood A", option="name")


SERVER_LAMP = Command(
    name="server lamp",
    query=LampQuery,
    stored=lamp,
    tell=tell_lamp,
    examples=(
        "server lamp name:Hood by the door readings:4.2 at 12 in, 2.9 at 15 in length:34in",
        "server lamp name:Dome A readings:6.0 at 12 in, 3.4 at 16 in lamp:metal halide lamp",
    ),
    who="moderator",
    guide=("for-moderators", "how-to-take-a-reading"),
)

SERVER_SCREEN = Command(
    name="server screen",
    query=ScreenQuery,
    stored=screen,
    tell=tell_screen,
    examples=(
        "server screen name:Mesh lid screen:passes 55%",
        "server screen name:Fine mesh readings:3.3 at 12 in without:6.0 at 12 in",
    ),
    who="moderator",
    guide=("for-moderators", "screens"),
)
