"""How long a tube is and how that is known, and which standard length suits an enclosure."""

from dataclasses import dataclass

from bot.answers.figures import length, length_range, length_typed, percent
from bot.answers.length_asked import along, tube_length_m
from bot.facts import Length, Say, metres
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure, Units
from bot.language.sizes import Size
from bot.reply import Row, Value
from calc.uncertainty import Estimate
from calc.uv.choice import LengthFit, TubeChoice, tube_length_for
from calc.uv.lamp import Lamp, OwnPoint
from calc.uv.lengths import DARK_ENDS_M, LengthKnown
from calc.uv.tube import STANDARD_T5_HO

__all__ = [
    "OTHER_KINDS",
    "check_fits",
    "enclosure_rows",
    "length_choice",
    "length_known",
    "length_rows",
    "length_sources",
    "length_steps",
    "length_told",
    "length_values",
    "no_tube_fits",
    "shortest_told",
    "without_tube_steps",
]

# About as long as the 39 W tube, as somebody would measure it.
_EXAMPLES = {Units.IN: "34in", Units.CM: "85cm"}
# No tube should take more of the length, or no shade is left. Source: plan_judgement.
_MOST_OF_BOX = 0.75

OTHER_KINDS = (
    "Other kinds, such as a compact lamp, are short enough, but I cannot work out their UV: use "
    "one only where you can read it with a UV index meter at the animal's back."
)
"""What there is for a box that is too short for every standard tube."""


def length_known(lamp: Lamp, units: Units) -> str:
    """Return how long a tube is taken to be, and how that is known."""
    long = length(lamp.lit_length_m + DARK_ENDS_M, units)
    match lamp.length_known:
        case LengthKnown.TOLD:
            return f"{long} long, as you gave it"
        case LengthKnown.FROM_WATTS:
            watts = [t for t in STANDARD_T5_HO if t.lit_length_m == lamp.lit_length_m]
            return f"{long} long, inferred from {watts[0].power_w:.0f} W"
        case LengthKnown.FROM_BOX:
            return f"{long} long, inferred from the enclosure"
        case LengthKnown.UNKNOWN:
            if not lamp.may_be:
                return f"length not told, taken as {long}, the shortest standard tube"
            longest = lamp.may_be[-1].lit_length_m + DARK_ENDS_M
            span = length_range(lamp.lit_length_m + DARK_ENDS_M, longest, units)
            return f"length not told, so anything from {span} may be"


def length_steps(lamp: Lamp, units: Units) -> tuple[str, ...]:
    """Return what to find out where the length of the tube is not known."""
    if not lamp.may_be:
        return ()
    return (
        (
            "How long is the tube? That narrows this most: ask again with its length, such as "
            f"length:{_EXAMPLES[units]}, or with the watts printed on a T5 HO tube, such as "
            "length:39W."
        ),
    )


def length_sources(lamp: Lamp) -> tuple[str, ...]:
    """Return where a length comes from that was inferred from watts or from an enclosure."""
    inferred = lamp.length_known in (LengthKnown.FROM_WATTS, LengthKnown.FROM_BOX)
    return ("t5_lengths",) if inferred else ()


def length_values(lamp: Lamp) -> tuple[Value, ...]:
    """Return the length of the tube, from the shortest to the longest that it may be.

    A small lamp that was read has none.
    """
    if isinstance(lamp.own, OwnPoint):
        return ()
    lit = [lamp.lit_length_m, *(other.lit_length_m for other in lamp.may_be)]
    ends = Estimate(min(lit) + DARK_ENDS_M, lit[0] + DARK_ENDS_M, max(lit) + DARK_ENDS_M)
    return (Value.of("length", ends, "m"),)


@dataclass(frozen=True, slots=True)
class Room:
    """How long a tube may be."""

    long: Length


def check_fits(tube: Measure | None, enclosure: Measure | Size | None, units: Units) -> None:
    """Refuse a tube that is longer than its enclosure."""
    if tube is None or enclosure is None or tube_length_m(tube) <= along(enclosure):
        return
    most = along(enclosure)
    fitting = [kind.face_to_face_m for kind in STANDARD_T5_HO if kind.face_to_face_m <= most]
    example = f"length:{length_typed(max(fitting), units)}" if fitting else "enclosure:4ft"
    raise NotUnderstoodError(
        tube.text,
        Say("wanted-tube-that-fits", Room(metres(most))),
        example,
        "length",
    )


def no_tube_fits(enclosure: Measure | Size | None) -> bool:
    """Say whether even the shortest standard tube is longer than the enclosure."""
    return enclosure is not None and along(enclosure) < STANDARD_T5_HO[0].face_to_face_m


def length_choice(enclosure: Measure | Size | None) -> TubeChoice | None:
    """Return the tube for the length of an enclosure; None where there is nothing to choose."""
    if enclosure is None or no_tube_fits(enclosure):
        return None
    return tube_length_for(along(enclosure))


def enclosure_rows(
    enclosure: Measure | Size | None, distance_m: float, units: Units
) -> tuple[Row, ...]:
    """Return how the enclosure was read: of a whole box its length counts."""
    if enclosure is None:
        return ()
    told = f"{length(along(enclosure), units)} long"
    if isinstance(enclosure, Size):
        told += (
            f", {length(enclosure.depth_m, units)} deep, {length(enclosure.height_m, units)} high, "
            "read in this order; the tube goes along the length"
        )
        if distance_m > enclosure.height_m:
            told += "; at your distance the tube hangs above the box"
    return (Row(label="Enclosure", text=told),)


def length_told(
    first: str, choice: TubeChoice | None, enclosure: Measure | Size | None, units: Units
) -> str:
    """Return an answer about strengths with what to buy for the length, or that nothing fits."""
    if enclosure is not None and no_tube_fits(enclosure):
        return (
            f"No standard T5 HO tube fits into {length(along(enclosure), units)}: the shortest is "
            f"{length(STANDARD_T5_HO[0].face_to_face_m, units)} long. For a longer box: "
            f"{first[0].lower()}{first[1:]}"
        )
    if choice is None:
        return first
    if choice.tube is None:
        nearly = ": the shortest would light nearly all of it" if choice.shorter is None else ""
        return f"{first} No standard tube has the right length for this enclosure{nearly}."
    return (
        f"{first} For the length, buy the {choice.tube.power_w:.0f} W tube, "
        f"{length(choice.tube.face_to_face_m, units)} long."
    )


def shortest_told(units: Units) -> str:
    """Return how long the shortest standard tube is, as part of a sentence."""
    return f"the shortest standard T5 HO tube is {length(STANDARD_T5_HO[0].face_to_face_m, units)}"


def without_tube_steps(units: Units) -> tuple[str, ...]:
    """Return what to do about a box that is too short for every standard tube."""
    least = length(STANDARD_T5_HO[0].face_to_face_m / _MOST_OF_BOX, units)
    return (
        (
            f"Best: a longer box. From about {least} the shortest tube leaves a shady end; ask "
            "plan for the whole set-up."
        ),
        OTHER_KINDS,
    )


def length_rows(choice: TubeChoice | None, units: Units) -> tuple[Row, ...]:
    """Return which length is wanted, where the tube goes, and what else is near."""
    if choice is None:
        return ()
    wanted = length_range(choice.wanted_low_m, choice.wanted_high_m, units)
    rows = [Row(label="Length wanted", text=f"{wanted}, half to two thirds of the enclosure")]
    if choice.tube and choice.share and choice.middle_from_warm_end_m:
        about = "" if choice.fit is LengthFit.WITHIN else ", a little off but the nearest"
        rows.append(
            Row(
                label="Where it goes",
                text=f"start it at the warm end, its middle about "
                f"{length(choice.middle_from_warm_end_m, units)} from that wall, so that UV and "
                f"heat lie together; it covers {percent(choice.share)} of the length{about}",
            )
        )
    other = [t for t in (choice.shorter, choice.longer) if t is not None]
    if other and choice.tube is None:
        told = " or ".join(f"{length(t.face_to_face_m, units)} ({t.power_w:.0f} W)" for t in other)
        rows.append(Row(label="Nearest lengths", text=told))
    return tuple(rows)
