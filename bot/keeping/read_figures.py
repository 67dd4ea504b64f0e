"""A group's own lamps and screens, kept from readings that a tube can give."""

from collections.abc import Sequence

from bot.answers.length_asked import lit_length_to_keep
from bot.answers.own import lamp_told, screen_told
from bot.answers.readings import fit_rows, fit_table
from bot.answers.readings_off import aside_told, warning_told
from bot.answers.uv_asked import engine_readings, screen_asked
from bot.desk import Desk
from bot.keeping.places import server_of
from bot.keeping.targets import NEXT
from bot.kept.group import OwnLamp, OwnScreen
from bot.language.errors import NotUnderstoodError
from bot.language.lamps import read_tube_strength
from bot.language.screens import Blocks, Passes, read_screen
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.queries.server import LampQuery, ScreenQuery
from bot.questions.uv.readings_off import OffBy, off_of
from bot.reply import Reply
from calc.uv.lamp import CLASS_STRENGTH_PERCENT, Fixture, Lamp
from calc.uv.meter import MeterFit, Reading, fit_readings, screen_from_readings
from calc.uv.point import Shape
from calc.uv.screen import NoScreen
from calc.uv.shapes import fit_lamp

__all__ = ["lamp", "screen"]


async def lamp(query: LampQuery, context: Context, desk: Desk) -> Reply:
    """Keep a lamp of the group's own by the constant that its readings give it."""
    server = server_of(desk)
    _check_free(query.name)
    between = screen_asked(query.screen) if query.screen else NoScreen()
    named = Lamp(CLASS_STRENGTH_PERCENT, Fixture.POLISHED, lit_length_to_keep(query.length))
    read = engine_readings(query.readings, between)
    if fit_lamp(read, named, Shape.LINE).shape is Shape.POINT:
        raise NotUnderstoodError(
            query.readings[0].text,
            "readings that fall as under a tube; these fall as in front of a small lamp, for which "
            "each keeper asks with readings of their own",
            "server lamp name:Hood A readings:4.2 at 12 in, 2.9 at 15 in",
            "readings",
        )
    fit = fit_readings(read, named)
    aside = _sound(query, read, fit, named)
    kept = OwnLamp(
        name=query.name,
        constant_uvi_m=fit.estimate.best,
        doubt_factor=min(fit.estimate.high / fit.estimate.best, 3.0),
        readings=len(query.readings),
        lit_length_m=named.lit_length_m,
        set_on=desk.now.date(),
    )
    replaced = await desk.store.figures.put(server, kept, desk.by)
    await desk.store.boards.look_again(desk.now, server)
    return Reply(
        command="server lamp",
        status="ok",
        title=f"Lamp “{kept.name}” is {'changed' if replaced else 'kept'}",
        answer=(
            f"{aside}Everybody here can now ask with tube:{kept.name}. By its readings it has "
            f"{lamp_told(kept, context)}."
        ),
        rows=fit_rows(fit, query.readings, context.units),
        table=fit_table(fit, query.readings, context.units),
        steps=(f"Try: distance tube:{kept.name} reflector:polished screen:none", *NEXT),
    )


def _sound(query: LampQuery, read: Sequence[Reading], fit: MeterFit, named: Lamp) -> str:
    """Refuse to keep for everybody what no tube gives; return what was left out of the rest."""
    lamps = named, fit.lamp(named), None
    off = off_of(fit, read, query.readings, lamps, UvLamp.T5_HO)
    if off.by is not OffBy.NOTHING:
        raise NotUnderstoodError(
            ", ".join(reading.text for reading in query.readings),
            f"readings that one tube gives. {warning_told(off)}",
            "server lamp name:Hood A readings:4.2 at 12 in, 2.9 at 15 in",
            "readings",
        )
    aside = aside_told(off.aside)
    return f"{aside} " if aside else ""


async def screen(query: ScreenQuery, context: Context, desk: Desk) -> Reply:
    """Keep a screen of the group's own, by its share or by readings with and without it."""
    server = server_of(desk)
    _check_free(query.name)
    kept = OwnScreen(name=query.name, passes=_passes(query), set_on=desk.now.date())
    replaced = await desk.store.figures.put(server, kept, desk.by)
    await desk.store.boards.look_again(desk.now, server)
    return Reply(
        command="server screen",
        status="ok",
        title=f"Screen “{kept.name}” is {'changed' if replaced else 'kept'}",
        answer=f"Everybody here can now ask with screen:{kept.name}. It {screen_told(kept)}.",
        steps=(f"Try: distance tube:12% reflector:polished screen:{kept.name}", *NEXT),
    )


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
    read = query.screen.text if query.screen else "no share and no readings"
    raise NotUnderstoodError(
        read,
        "the share that passes, or readings through the screen and without it",
        "server screen name:Mesh lid screen:passes 55%",
        "screen",
    )


def _check_free(name: str) -> None:
    """Refuse a name that already means a strength or a screen to everybody."""
    for read in (read_tube_strength, read_screen):
        try:
            read(name)
        except NotUnderstoodError:
            continue
        raise NotUnderstoodError(
            name, "a name that does not mean a strength or a screen already", "Hood A", "name"
        )
