"""The lamps and heaters of a set-up, judged by their kind."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.facts import Name, Say
from bot.language.hearing import FactName
from bot.language.hearing.facts import LampKind
from bot.questions.setup.check_parts import Missing, Part, Piece, Todo, Urgency
from bot.questions.setup.told import SetUpTold
from calc.heat.sources_of_heat import Basking, HeatSource, find_heat_source
from calc.setup.set_up import Sign

__all__ = ["heat_lamp_told", "lamp_name", "lamps_part"]

_HEAT_AND_UV = ("mercury-vapour", "metal-halide")
_ONLY_UV = (LampKind.T5, LampKind.T5_HO, LampKind.T8, LampKind.UV_LED, LampKind.COMPACT)
_SLUGS = {
    LampKind.FLOOD: "incandescent-flood",
    LampKind.COLOURED: "night-lamp",
    LampKind.HEAT_ROCK: "heat-rock",
}


@dataclass(frozen=True, slots=True)
class LampsTold:
    """Lamps and heaters that are alike."""

    lamps: tuple[Name, ...]


@dataclass(frozen=True, slots=True)
class LampTold:
    """One kind of lamp or heater, and what is to be known of it."""

    lamp: Name
    note: Say


def lamp_name(kind: LampKind) -> Name | None:
    """Return the name of a kind of lamp that was heard."""
    found = _source_of_heat(kind)
    return None if found is None else Name(f"lamp-{found.slug}")


def _source_of_heat(kind: LampKind) -> HeatSource | None:
    return find_heat_source(_SLUGS.get(kind, kind.value))


def heat_lamp_told(told: SetUpTold) -> bool:
    """Say whether a lamp that warms a basking place with light was named."""
    kinds = (_source_of_heat(lamp.value) for lamp in told.lamps if lamp.value not in _ONLY_UV)
    return any(kind and kind.gives_light and kind.basking is Basking.GOOD for kind in kinds)


def lamps_part(told: SetUpTold) -> Part:
    """Judge the lamps and heaters that were named."""
    named = (_source_of_heat(x.value) for x in told.lamps if x.value not in _ONLY_UV)
    kinds = [kind for kind in named if kind is not None]
    if not kinds:
        why = Say("check-why-no-lamp")
        return Part(Piece.LAMPS, Sign.CANNOT_TELL, why, missing=(Missing.LAMPS,))
    read = bool(told.all(FactName.UVI) or told.all(FactName.UVI_AT))
    sources = tuple(kind.source for kind in kinds)
    cell = Say("check-read-lamps", LampsTold(_names(kinds)))
    judged = _judged(kinds, read=read)
    wrong = judged.wrong
    return Part(
        Piece.LAMPS,
        judged.sign,
        judged.why,
        head=Say("check-head-lamps", LampsTold(_names(wrong))) if wrong else None,
        read=cell,
        more=judged.more,
        todo=tuple(_replaced(kind) for kind in wrong),
        sources=sources,
    )


@dataclass(frozen=True, slots=True)
class _Judged:
    """The sign of the lamps, why, more about each, and those that are the wrong ones."""

    sign: Sign
    why: Say
    more: tuple[Say, ...] = ()
    wrong: tuple[HeatSource, ...] = ()


def _judged(kinds: Sequence[HeatSource], *, read: bool) -> _Judged:
    bad = tuple(
        kind
        for kind in kinds
        if kind.basking is Basking.NOT_AT_ALL and not (read and kind.slug in _HEAT_AND_UV)
    )
    if bad:
        more = tuple(Say("check-lamp", _wrong(kind)) for kind in bad)
        why = Say("check-why-lamps-wrong", LampsTold(_names(bad)))
        return _Judged(Sign.CHANGE, why, more, bad)
    metered = [kind for kind in kinds if kind.slug in _HEAT_AND_UV]
    if metered and read:
        # What was read decides.
        return _Judged(Sign.FINE, Say("check-why-lamps-read", LampsTold(_names(metered))))
    if metered:
        why = Say("check-why-lamps-meter", LampsTold(_names(metered)))
        return _Judged(Sign.CANNOT_TELL, why)
    elsewhere = [kind for kind in kinds if kind.basking is Basking.NOT_FOR_BASKING]
    if elsewhere:
        good = any(kind.basking is Basking.GOOD for kind in kinds)
        why = Say("check-why-lamps-elsewhere", LampsTold(_names(elsewhere)))
        more = tuple(Say("check-lamp", _placed(kind)) for kind in elsewhere)
        return _Judged(Sign.FINE if good else Sign.CANNOT_TELL, why, more)
    return _Judged(Sign.FINE, Say("check-why-lamps-good", LampsTold(_names(kinds))))


def _wrong(kind: HeatSource) -> LampTold:
    return LampTold(Name(f"lamp-{kind.slug}"), Say.of("lamp-why", kind.slug))


def _placed(kind: HeatSource) -> LampTold:
    return LampTold(Name(f"lamp-{kind.slug}"), Say.of("lamp-place", kind.slug))


def _names(kinds: Sequence[HeatSource]) -> tuple[Name, ...]:
    return tuple(dict.fromkeys(Name(f"lamp-{kind.slug}") for kind in kinds))


def _replaced(kind: HeatSource) -> Todo:
    facts = _wrong(kind)
    return Todo(
        Urgency.WRONG_LAMP, Say("check-do-replace", facts), Say("check-do-replace-short", facts)
    )
