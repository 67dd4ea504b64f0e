"""Which standard length suits an enclosure, or that none does and what there is instead."""

from bot.answers.figures import length, length_range, length_typed, percent
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure, Units
from bot.language.sizes import Size
from bot.reply import Row
from calc.uv.choice import LengthFit, TubeChoice, tube_length_for
from calc.uv.tube import STANDARD_T5_HO

__all__ = [
    "OTHER_KINDS",
    "check_fits",
    "enclosure_rows",
    "length_choice",
    "length_rows",
    "length_told",
    "no_tube_fits",
    "without_tube_steps",
]

# No tube should take more of the length, or no shade is left. Source: plan_judgement.
_MOST_OF_BOX = 0.75

OTHER_KINDS = (
    "Other kinds, such as a compact lamp, are short enough, but I cannot work out their UV: use "
    "one only where you can read it with a UV index meter at the animal's back."
)
"""What there is for a box that is too short for every standard tube."""


def _along(enclosure: Measure | Size) -> float:
    return enclosure.length_m if isinstance(enclosure, Size) else enclosure.low


def check_fits(tube: Measure | None, enclosure: Measure | Size | None, units: Units) -> None:
    """Refuse a tube that is longer than its enclosure."""
    if tube is None or enclosure is None or tube.low <= _along(enclosure):
        return
    most = _along(enclosure)
    fitting = [kind.face_to_face_m for kind in STANDARD_T5_HO if kind.face_to_face_m <= most]
    example = f"length:{length_typed(max(fitting), units)}" if fitting else "enclosure:4ft"
    raise NotUnderstoodError(
        tube.text,
        f"a tube that fits into the enclosure, {length(most, units)} long",
        example,
        "length",
    )


def no_tube_fits(enclosure: Measure | Size | None) -> bool:
    """Say whether even the shortest standard tube is longer than the enclosure."""
    return enclosure is not None and _along(enclosure) < STANDARD_T5_HO[0].face_to_face_m


def length_choice(enclosure: Measure | Size | None) -> TubeChoice | None:
    """Return the tube for the length of an enclosure; None where there is nothing to choose."""
    if enclosure is None or no_tube_fits(enclosure):
        return None
    return tube_length_for(_along(enclosure))


def enclosure_rows(
    enclosure: Measure | Size | None, distance_m: float, units: Units
) -> tuple[Row, ...]:
    """Return how the enclosure was read: of a whole box its length counts."""
    if enclosure is None:
        return ()
    told = f"{length(_along(enclosure), units)} long"
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
            f"No standard T5 HO tube fits into {length(_along(enclosure), units)}: the shortest is "
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
