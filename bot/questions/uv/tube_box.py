"""Which standard tube suits the length of an enclosure, as facts. Words: ``tube.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Length, Power, Say, Share, metres, share, watts
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure
from bot.language.sizes import Size
from bot.layered import Row
from bot.questions.uv.length_asked import along, tube_length_m
from calc.uncertainty import Estimate
from calc.uv.choice import LengthFit, TubeChoice, tube_length_for
from calc.uv.tube import STANDARD_T5_HO, StandardTube

__all__ = ["BoxFit", "ForBox", "box_rows", "check_fits", "for_box", "length_to_buy"]

# No tube should take more of the length, or no shade is left. Source: plan_judgement.
_MOST_OF_BOX = 0.75
_SHORTEST = STANDARD_T5_HO[0]
_EXAMPLE_BOX = "enclosure:4ft"


class BoxFit(Enum):
    """How the standard tubes meet the length of a box."""

    WITHIN = auto()
    NEAR = auto()
    NO_LENGTH = auto()
    ALL_LIT = auto()
    NO_TUBE = auto()


@dataclass(frozen=True, slots=True)
class StandardLong:
    """A standard tube by its length and its watts."""

    long: Length
    power: Power


@dataclass(frozen=True, slots=True)
class ForBox:
    """The tube for the length of a box; ``least`` is a box in which the shortest leaves shade.

    ``above``: at the distance that was asked about the tube hangs above the box. ``bought`` is the
    length to buy between those that would do, for JSON.
    """

    fit: BoxFit
    length: Length
    depth: Length | None
    height: Length | None
    above: bool
    ideal: Length | None
    buy: Length | None
    power: Power | None
    lit: Share | None
    middle: Length | None
    others: tuple[Say, ...]
    shortest: Length
    least: Length
    bought: Length | None


def length_to_buy(enclosure: Measure | Size | None) -> TubeChoice | None:
    """Return the tube for the length of an enclosure; None where there is nothing to choose."""
    if enclosure is None or along(enclosure) < _SHORTEST.face_to_face_m:
        return None
    return tube_length_for(along(enclosure))


def for_box(
    enclosure: Measure | Size | None, choice: TubeChoice | None, distance_m: float
) -> ForBox | None:
    """Return the facts of the tube for a box; None where no box was told."""
    if enclosure is None:
        return None
    size = enclosure if isinstance(enclosure, Size) else None
    tube = choice.tube if choice else None
    wanted = (choice.wanted_low_m, choice.wanted_high_m) if choice else None
    middle_m = choice.middle_from_warm_end_m if choice else None
    return ForBox(
        fit=_fit(choice),
        length=metres(along(enclosure)),
        depth=metres(size.depth_m) if size else None,
        height=metres(size.height_m) if size else None,
        above=size is not None and distance_m > size.height_m,
        ideal=metres(wanted[0], wanted) if wanted else None,
        buy=metres(tube.face_to_face_m) if tube else None,
        power=watts(tube.power_w) if tube else None,
        lit=share(choice.share) if choice and choice.share else None,
        middle=metres(middle_m) if middle_m else None,
        others=tuple(_others(choice)),
        shortest=metres(_SHORTEST.face_to_face_m),
        least=metres(_SHORTEST.face_to_face_m / _MOST_OF_BOX),
        bought=_bought(tube, wanted) if tube and wanted else None,
    )


def _fit(choice: TubeChoice | None) -> BoxFit:
    if choice is None:
        return BoxFit.NO_TUBE
    if choice.tube is None:
        return BoxFit.ALL_LIT if choice.shorter is None else BoxFit.NO_LENGTH
    return BoxFit.WITHIN if choice.fit is LengthFit.WITHIN else BoxFit.NEAR


def _bought(tube: StandardTube, wanted: tuple[float, float]) -> Length:
    long_m = tube.face_to_face_m
    return metres(Estimate(min(wanted[0], long_m), long_m, max(wanted[1], long_m)))


def _others(choice: TubeChoice | None) -> Iterator[Say]:
    if choice is None or choice.tube is not None:
        return
    for tube in (choice.shorter, choice.longer):
        if tube is not None:
            yield Say(
                "tube-standard", StandardLong(metres(tube.face_to_face_m), watts(tube.power_w))
            )


def box_rows(box: ForBox, *, fixed: bool) -> Iterator[Row]:
    """Yield how the enclosure was read, which length is wanted, and where the tube goes.

    ``fixed``: the asker has the tube, so that none is bought.
    """
    yield Row(Say("tube-label-box"), Say("tube-box", box))
    if box.ideal is not None:
        yield Row(Say("tube-label-wanted"), Say("tube-wanted-long", box))
    if box.buy is not None and not fixed:
        yield Row(Say("tube-label-middle"), Say("tube-middle", box))
    elif box.others:
        yield Row(Say("tube-label-nearest"), Say("tube-nearest", box))


@dataclass(frozen=True, slots=True)
class Room:
    """How long a tube may be."""

    long: Length


def check_fits(tube: Measure | None, enclosure: Measure | Size | None) -> None:
    """Refuse a tube that is longer than its enclosure."""
    if tube is None or enclosure is None or tube_length_m(tube) <= along(enclosure):
        return
    most = along(enclosure)
    fitting = [kind.power_w for kind in STANDARD_T5_HO if kind.face_to_face_m <= most]
    raise NotUnderstoodError(
        tube.text,
        Say("wanted-tube-that-fits", Room(metres(most))),
        f"length:{max(fitting):.0f}W" if fitting else _EXAMPLE_BOX,
        "length",
    )
