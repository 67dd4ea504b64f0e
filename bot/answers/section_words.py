"""What a section says of its shade, its heat, and of every mend that was tried."""

from collections.abc import Iterator

from bot.answers.figures import length, length_away, percent, uvi_estimate, uvi_range
from bot.answers.uv_parts import lamp_name
from bot.language.quantities import Units
from calc.setup.mends import Mend, MendKind
from calc.setup.room import Room
from calc.uv.patches import SHADE_UVI, Overlap, Patches, Shade

__all__ = ["SHADE_HERE", "SHADE_TOLD", "heat_told", "mend_steps", "shade_row"]

SHADE_TOLD = {
    Shade.THERE: "There is shade to go to.",
    Shade.PROBABLY: "There is probably shade to go to.",
    Shade.CANNOT_TELL: "Whether there is shade to go to, I cannot tell.",
    Shade.PROBABLY_NONE: "There is probably no shade to go to.",
    Shade.NONE: "There is no shade to go to.",
}
SHADE_HERE = {
    Shade.THERE: "shade, under UVI {uvi}",
    Shade.PROBABLY: "probably shade, under UVI {uvi}",
    Shade.CANNOT_TELL: "perhaps shade: add a hide",
    Shade.PROBABLY_NONE: "probably no shade: add a hide",
    Shade.NONE: "no shade: add a hide",
}
"""The same for the cool end of the picture."""

_OVERLAPS = {
    Overlap.TOGETHER: "they lie together",
    Overlap.PARTLY: "they lie together only in part",
    Overlap.APART: "they lie apart",
}
_WARMED = {MendKind.PLATFORM_LOWER, MendKind.PLATFORM_HIGHER, MendKind.HEAT_LAMP}
_WARMED_AGAIN = (
    "Two hours after such a move read the basking surface again: heat lamp and back are no longer "
    "as far apart."
)
_COUNTED = ("no tube", "one tube", "two tubes", "three tubes", "four tubes")


def shade_row(met: Patches) -> str:
    """Return how much shade there is, with its doubt."""
    share = met.shade_share
    return (
        f"{percent(share.best)} of the floor and platform is under UVI {SHADE_UVI} "
        f"({percent(share.low)} to {percent(share.high)})"
    )


def heat_told(met: Patches, wanted: str) -> str:
    """Return whether heat and UV meet, with the doubt of the share."""
    share = met.heat_in_range
    if met.overlap is None or share is None:
        return "no heat lamp was given"
    return (
        f"{_OVERLAPS[met.overlap]}: {percent(share.best)} of the warmed patch is inside UVI "
        f"{wanted} ({percent(share.low)} to {percent(share.high)})"
    )


def mend_steps(room: Room, mends: tuple[Mend, ...], units: Units) -> tuple[str, ...]:
    """Return each mend with what came of it when it was tried, on top of those before."""
    steps, now = [], room
    for mend in mends:
        if MendKind.HIDE in mend.kinds:
            steps.append(_hide(mend, units))
            continue
        *most, last = (_move(kind, now, mend.room, units) for kind in mend.kinds)
        moves = f"{', '.join(most)} and {last}" if most else last
        steps.append(f"{'Or ' if mend.instead else ''}{moves}: then {', '.join(_results(mend))}.")
        now = now if mend.instead else mend.room
    if any(not _WARMED.isdisjoint(mend.kinds) for mend in mends):
        steps.append(_WARMED_AGAIN)
    return tuple(f"{step[0].upper()}{step[1:]}" for step in steps)


def _hide(mend: Mend, units: Units) -> str:
    assert mend.hide is not None
    return (
        f"put a hide or thick leaves at the cool end, {length(mend.hide.x_m, units)} from the "
        "warm end wall: under them there is no UV."
    )


def _move(kind: MendKind, old: Room, new: Room, units: Units) -> str:
    lamp = lamp_name(new.tubes[0].lamp)
    match kind:
        case MendKind.PLATFORM_LOWER | MendKind.PLATFORM_HIGHER:
            way = "lower" if kind is MendKind.PLATFORM_LOWER else "higher"
            away = length_away(new.tubes[0].z_m - new.back_z_m, units)
            by = length(abs(new.platform.top_m - old.platform.top_m), units)
            return f"make the platform {by} {way}, so that tube and back are {away} apart"
        case MendKind.PLATFORM_SIDEWAYS:
            x_m, y_m = new.platform.middle_m
            where = f"{length(x_m, units)} from the warm end, {length(y_m, units)} from the back"
            return (
                f"put the platform under the middle of the tube, {where}, the lamp beside the tube"
            )
        case MendKind.FEWER_TUBES | MendKind.MORE_TUBES:
            return f"use {_COUNTED[len(new.tubes)]}"
        case MendKind.OTHER_TUBE:
            return f"take a {lamp} instead"
        case MendKind.OTHER_LENGTH:
            return f"take a tube {length(new.tube_length_m, units)} long"
        case MendKind.TUBE_TO_WARM_END:
            return "start the tube at the warm end wall"
        case MendKind.HEAT_LAMP:
            return "move the heat lamp over the middle of the platform"
        case MendKind.HIDE:
            return "add a hide"


def _results(mend: Mend) -> Iterator[str]:
    met, room = mend.met, mend.room
    if MendKind.HEAT_LAMP in mend.kinds and met.heat_in_range is not None:
        yield f"{percent(met.heat_in_range.best)} of the warmed patch is in the UV"
        return
    yield f"the strongest place has UVI {uvi_estimate(met.strongest.uvi)}"
    wanted = uvi_range(room.low_uvi, room.high_uvi)
    yield f"{percent(met.in_range.best)} of the platform is inside {wanted}"
    if met.shade in (Shade.THERE, Shade.PROBABLY):
        yield f"and {percent(met.shade_share.best)} of the floor is in shade"
