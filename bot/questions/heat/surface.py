"""What a surface really is, from an infrared gun. Words: ``words/<language>/surface.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto

from bot.command import Command
from bot.dangers.past_limits import alarms_past
from bot.facts import Length, Number, Say, Says, Temp, degrees, metres, plain_number
from bot.layered import Brief, Care, Layered, Row, Weight
from bot.preferences import Context
from bot.queries.heat import SurfaceQuery
from bot.questions.heat.pictured import pictured
from bot.questions.heat.seen import Pictured, Seen
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.shared import limits_for
from bot.reply import Alarm
from calc.heat.thermometer import (
    USUAL_SETTING,
    Surface,
    Unreadable,
    corrected_reading,
    emissivity_of,
)
from calc.limits import Met
from calc.quantities import Quantity
from calc.uncertainty import Estimate

__all__ = ["SURFACE", "Shift", "SurfaceRead", "SurfaceUnread", "surface", "tell"]

_GUIDE = ("measuring-temperatures", "the-basking-spot")
_ROOM_C = 24.0
_AWAY_M = 0.30
_SMALL_K = 0.6


class Shift(Enum):
    """Which way the surface is from what is shown."""

    RIGHT = auto()
    HOTTER = auto()
    COOLER = auto()


@dataclass(frozen=True, slots=True)
class SurfaceRead:
    """A reading that was corrected: what is mirrored and the setting may be assumed."""

    surface: Surface
    shown: Temp
    really: Temp
    shift: Shift
    air: Temp
    air_told: bool
    emissivity: Number
    setting: Number
    setting_told: bool
    away: Length
    alarms: tuple[Alarm, ...]
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class SurfaceUnread:
    """A reading that means nothing, and why."""

    reason: Unreadable
    sources: tuple[str, ...]


def surface(query: SurfaceQuery, context: Context) -> SurfaceRead | SurfaceUnread:
    """Correct the reading, or tell that none can be."""
    kind, shown_c = Surface(query.material), query.reading.low
    air_c = _ROOM_C if query.air is None else query.air.low
    setting = USUAL_SETTING if query.setting is None else query.setting
    found = corrected_reading(shown_c, kind, air_c, setting, query.glass == "yes")
    known = emissivity_of(kind)
    sources = ("ir_thermography", known.source)
    if isinstance(found, Unreadable):
        return SurfaceUnread(found, sources)
    return SurfaceRead(
        surface=kind,
        shown=degrees(shown_c),
        really=degrees(found),
        shift=_shift(found.best - shown_c),
        air=degrees(air_c),
        air_told=query.air is not None,
        emissivity=plain_number(known.share),
        setting=plain_number(setting),
        setting_told=query.setting is not None,
        away=metres(_AWAY_M),
        alarms=alarms_past(limits_for("", context), _met(kind, found)),
        sources=sources,
    )


def _shift(off_k: float) -> Shift:
    if abs(off_k) <= _SMALL_K:
        return Shift.RIGHT
    return Shift.HOTTER if off_k > 0.0 else Shift.COOLER


def _met(kind: Surface, found: Estimate) -> Met:
    # Of its range the upper end counts: wood there would go on to burn.
    wood_c = found.high if kind is Surface.WOOD else None
    return Met(surface_c=found.best, wood_c=wood_c)


def tell(facts: SurfaceRead | SurfaceUnread) -> Layered:
    """Tell what the surface is, or how to read it instead."""
    return _read_told(facts) if isinstance(facts, SurfaceRead) else _unread_told(facts)


def _read_told(facts: SurfaceRead) -> Layered:
    say = Says("surface", facts)
    return Layered(
        command="surface",
        title=say("title"),
        brief=Brief(
            head=say.by("head", facts.shift),
            range=(say("range"),),
            assumed=tuple(_assumed(facts, say)),
            steps=(say("do-read"),),
        ),
        steps=(say("step-read"), say("step-highest"), say("step-tape")),
        numbers=(
            Row(say("label-shown"), say("shown")),
            Row(say("label-really"), say("really")),
            Row(say("label-emissivity"), say("emissivity")),
            Row(say("label-mirrored"), say("mirrored")),
        ),
        why=(say("why"),),
        care=_care(say),
        values=(("surface", facts.really), ("emissivity", facts.emissivity)),
        guide=_GUIDE,
        sources=facts.sources,
        alarms=facts.alarms,
        picture=pictured(_seen(facts, say.by("head", facts.shift))),
    )


def _assumed(facts: SurfaceRead, say: Says) -> Iterator[Say]:
    if not facts.air_told:
        yield say("assumed-air")
    if not facts.setting_told:
        yield say("assumed-setting")


def _care(say: Says) -> tuple[Care, ...]:
    return (Care(say("care"), say("care-short"), Weight.STEP), *HEAT_CARE)


def _seen(facts: SurfaceRead, head: Say) -> Pictured:
    say = Says("surface", facts)
    place = Seen(
        Quantity.BASKING_SURFACE,
        Say("gauge-place-basking_surface"),
        say("picture-really"),
        say("picture-read"),
        ends=(facts.really.low, facts.really.high),
        met=(facts.shown.low, facts.shown.high),
    )
    return Pictured(say("title"), head, (place,))


def _unread_told(facts: SurfaceUnread) -> Layered:
    say = Says("surface", facts)
    metal = facts.reason is Unreadable.BARE_METAL
    return Layered(
        command="surface",
        status="problem",
        title=say("unread-title"),
        brief=Brief(
            head=say.by("unread", facts.reason),
            range=(say.by("unread-why", facts.reason),),
            steps=(say.by("do", facts.reason),),
        ),
        steps=(say.by("step", facts.reason), *([say("step-stone")] if metal else [])),
        care=_care(say),
        guide=_GUIDE,
        sources=facts.sources,
    )


SURFACE = Command(
    name="surface",
    query=SurfaceQuery,
    facts=surface,
    tell=tell,
    examples=(
        "surface reading:98F material:slate",
        "surface reading:40C material:tile air:27C",
    ),
    guide=("measuring-temperatures",),
)
