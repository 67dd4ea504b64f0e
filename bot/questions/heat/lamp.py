"""What a kind of lamp or heater is good for, and why. Words: ``words/<language>/lamp.ftl``."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import Enum, auto

from bot.command import Command
from bot.facts import Name, Say, Says
from bot.language.glossary import glossed
from bot.language.names import closest
from bot.language.shown import shown
from bot.language.uv_lamps import UvLamp
from bot.layered import Brief, Care, Layered, Row, Table, Teller, Weight
from bot.preferences import Context
from bot.queries.heat import LampQuery
from bot.questions.heat.shared import HEAT_CARE
from bot.reply import Picture
from calc.heat.sources_of_heat import (
    Basking,
    HeatSource,
    find_heat_source,
    heat_sources,
)

__all__ = ["LAMP", "lamp", "tell"]

_GUIDE = ("basking-lamps", "heat-sources", "fire-and-electrical-safety", "light-and-colour")
_UV_LAMPS = {
    "t8-tube": UvLamp.OTHER_TUBE,
    "compact-uv": UvLamp.COMPACT,
    "metal-halide": UvLamp.METAL_HALIDE,
    "mercury-vapour": UvLamp.MERCURY,
    "uv-led": UvLamp.LED,
}
_SEEN = (
    "halogen-flood",
    "incandescent-flood",
    "led-lamp",
    "metal-halide",
    "plant-light",
    "white-tube",
    "full-spectrum",
)
# Rows of a picture: a name, what stands in it, and how the lamp stands by it.
_Rows = tuple[tuple[Say, Say, Basking | None], ...]
_EXTRA_LIGHT = ("led-lamp", "plant-light", "white-tube", "full-spectrum")
_NIGHT_LAMPS = ("night-lamp", "red-lamp")


class LampNext(Enum):
    """What to do next about a kind of lamp."""

    DISTANCE = auto()
    METER = auto()
    SIZE = auto()
    UNPLUG = auto()
    LEAVE_OFF = auto()
    REPLACE = auto()
    FLOOD = auto()
    BRIGHT = auto()


class LampGives(Enum):
    """What was asked of a kind of lamp, as it is answered."""

    NO_UV = auto()
    HEAT_ALONE = auto()
    UV = auto()
    UV_BY_METER = auto()
    LIGHT = auto()
    NIGHT = auto()
    EXTRA_LIGHT = auto()


@dataclass(frozen=True, slots=True)
class LampKind:
    """One kind of lamp or heater; ``uv_lamp`` is what a question about its distance calls it.

    ``for_use``: what it is for was asked, not whether it is any good for the basking spot.
    """

    slug: str
    lamp: Name
    basking: Basking
    light: bool
    next: LampNext
    uv_lamp: str | None
    source: str
    gives: LampGives | None = None
    for_use: bool = False


@dataclass(frozen=True, slots=True)
class LampKinds:
    """Every kind, best for basking first."""

    kinds: tuple[LampKind, ...]
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class LampUnknown:
    """A kind that is not known here, the one that may be meant, and one to ask about."""

    typed: str
    near: str | None
    example: str
    lamps: tuple[Name, ...]


def lamp(query: LampQuery, context: Context) -> LampKind | LampKinds | LampUnknown:
    """Find the kind that was asked about; without one, all."""
    kinds = heat_sources().values()
    if not query.kind.strip():
        return LampKinds(tuple(map(_told, kinds)), tuple(kind.source for kind in kinds))
    kind = find_heat_source(query.kind) or find_heat_source(glossed(query.kind).text)
    if kind is not None:
        for_use = query.about == "use"
        return replace(_told(kind), gives=_gives(kind, query.about), for_use=for_use)
    names = [name for kind in kinds for name in (kind.name, *kind.aliases)]
    near = closest(query.kind.lower(), names)
    lamps = tuple(_name(kind) for kind in kinds)
    return LampUnknown(shown(query.kind), near, near or names[0], lamps)


def _name(kind: HeatSource) -> Name:
    return Name(f"lamp-{kind.slug}")


def _told(kind: HeatSource) -> LampKind:
    uv_lamp = _UV_LAMPS.get(kind.slug)
    return LampKind(
        slug=kind.slug,
        lamp=_name(kind),
        basking=kind.basking,
        light=kind.gives_light,
        next=_next(kind),
        uv_lamp=uv_lamp.value if uv_lamp else None,
        source=kind.source,
    )


def _gives(kind: HeatSource, about: str) -> LampGives | None:
    """Return the answer to what was asked of it; None where its fitness is the answer."""
    if not about and kind.slug in _EXTRA_LIGHT:
        return LampGives.EXTRA_LIGHT
    if about == "light" and kind.gives_light:
        return LampGives.LIGHT
    if about in ("uv", "light") and not kind.gives_light:
        return LampGives.HEAT_ALONE
    if about == "uv":
        if kind.slug == "t5-ho-tube":
            return LampGives.UV
        return LampGives.UV_BY_METER if kind.slug in _UV_LAMPS else LampGives.NO_UV
    dark = not kind.gives_light and kind.basking is not Basking.NOT_AT_ALL
    return LampGives.NIGHT if about == "night" and dark else None


def _next(kind: HeatSource) -> LampNext:
    if kind.slug == "t5-ho-tube":
        return LampNext.DISTANCE
    if kind.slug in _UV_LAMPS:
        return LampNext.METER
    if kind.slug in _EXTRA_LIGHT:
        return LampNext.BRIGHT
    if kind.basking is Basking.GOOD:
        return LampNext.SIZE
    if kind.basking is not Basking.NOT_AT_ALL:
        return LampNext.FLOOD
    if not kind.gives_light:
        return LampNext.UNPLUG
    return LampNext.LEAVE_OFF if kind.slug in _NIGHT_LAMPS else LampNext.REPLACE


def tell(facts: LampKind | LampKinds | LampUnknown) -> Layered:
    """Tell whether it makes a basking spot first, then where it belongs."""
    if isinstance(facts, LampKind):
        return _kind_told(facts)
    return _kinds_told(facts) if isinstance(facts, LampKinds) else _unknown_told(facts)


def _kind_told(facts: LampKind) -> Layered:
    say = Says("lamp", facts)
    own = Care(Say.of("lamp-care", facts.slug), Say.of("lamp-mind", facts.slug), Weight.STEP)
    leave_off = (say("step-tonight"),) if facts.next is LampNext.LEAVE_OFF else ()
    alone = facts.gives in (LampGives.HEAT_ALONE, LampGives.NIGHT)
    if facts.for_use:
        head = Say.of("lamp-place", facts.slug)
    else:
        head = say.by("gives", facts.gives) if facts.gives else _head(facts)
    heading = say("title"), head, Say.of("lamp-short", facts.slug)
    rows = (*_given(facts), *_seen(facts))
    listed = tuple((row.label, row.say, None) for row in rows)
    return Layered(
        command="lamp",
        title=say("title"),
        brief=Brief(
            head=head,
            range=() if alone else (Say.of("lamp-short", facts.slug),),
            assumed=() if facts.gives or facts.for_use else (say("scope-short"),),
            steps=() if facts.for_use else (_do(facts),),
        ),
        steps=(*leave_off, _step(facts)),
        numbers=(
            *rows,
            Row(say("label-scope"), say("scope")),
        ),
        why=(Say.of("lamp-why", facts.slug),),
        care=(own, *HEAT_CARE),
        guide=_GUIDE,
        sources=(facts.source, "common_practice", "fire_service_lamps"),
        # What was asked beside its fitness is no verdict on it.
        picture=_picture(heading, listed, None if facts.gives or facts.for_use else facts.basking),
    )


def _given(facts: LampKind) -> tuple[Row, ...]:
    """Return where it belongs, and what it gives there."""
    say = Says("lamp", facts)
    return (
        Row(say("label-place"), Say.of("lamp-place", facts.slug)),
        Row(say("label-uv"), Say.of("lamp-uv", facts.slug)),
        Row(say("label-heat"), Say.of("lamp-heat", facts.slug)),
        Row(say("label-light"), say("light")),
    )


def _picture(
    heading: tuple[Say, Say, Say], rows: _Rows, stands: Basking | None
) -> Callable[[Teller], Picture]:
    return lambda teller: Picture.later(_drawn, heading, rows, stands, teller)


def _drawn(
    heading: tuple[Say, Say, Say],
    rows: _Rows,
    stands: Basking | None,
    teller: Teller,
) -> Picture:
    # What draws is loaded when somebody looks.
    from bot.questions.heat.lamp_picture import lamp_picture

    return lamp_picture(heading, rows, Say("lamp-scope-short"), stands, teller)


def _seen(facts: LampKind) -> tuple[Row, ...]:
    """Return how the light of a lamp for light looks: colour, flicker, glare, and the night."""
    if facts.slug not in _SEEN:
        return ()
    say = Says("lamp", facts)
    return (Row(say("label-see"), Say.of("lamp-see", facts.slug)),)


def _head(facts: LampKind) -> Say:
    return Say.by("lamp-head", facts.basking, facts)


def _fit(facts: LampKind) -> Say:
    return Say.by("lamp-fit", facts.basking, facts)


def _do(facts: LampKind) -> Say:
    return Say.by("lamp-do", facts.next, facts)


def _step(facts: LampKind) -> Say:
    return Say.by("lamp-step", facts.next, facts)


def _kinds_told(facts: LampKinds) -> Layered:
    say = Says("lamp", facts)
    columns = (say("column-kind"), say("column-fit"), say("column-light"))
    rows = tuple((Say("lamp-cell", k), _fit(k), Say("lamp-light", k)) for k in facts.kinds)
    listed = tuple((Say("lamp-cell", k), _fit(k), k.basking) for k in facts.kinds)
    heading = say("every-title"), say("every"), say("every-others")
    return Layered(
        command="lamp",
        title=say("every-title"),
        brief=Brief(
            head=say("every"),
            range=(say("every-others"),),
            assumed=(say("scope-short"),),
            steps=(say("every-do"),),
        ),
        steps=(say("every-do"),),
        numbers=(Row(say("label-scope"), say("scope")),),
        table=Table(columns, rows),
        care=HEAT_CARE,
        guide=_GUIDE,
        sources=facts.sources,
        picture=_picture(heading, listed, None),
    )


def _unknown_told(facts: LampUnknown) -> Layered:
    say = Says("lamp", facts)
    return Layered(
        command="lamp",
        status="problem",
        title=say("unknown-title"),
        brief=Brief(
            head=say("unknown"),
            range=(say("unknown-near"),) if facts.near else (),
            steps=(say("unknown-do"),),
        ),
        steps=(say("unknown-do"), say("unknown-all")),
        numbers=(Row(say("label-known"), say("known")),),
        guide=_GUIDE,
    )


LAMP = Command(
    name="lamp",
    query=LampQuery,
    facts=lamp,
    tell=tell,
    examples=("lamp", "lamp kind:radiant panel", "lamp ceramic heat emitter"),
    guide=("basking-lamps", "heat-sources"),
    positional="kind",
)
