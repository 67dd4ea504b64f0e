"""The picture of a checked set-up: the keeper's box to scale, each reading with its verdict."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import ceil

from bot.drawing import Bar, Dimension, End, Figure, Place, Placeless, Shift, Side, Tone
from bot.facts import Length, Say, metres
from bot.layered import Teller
from bot.questions.setup.check_facts import Checked
from bot.questions.setup.check_parts import Part, mark_of, piece_of
from bot.questions.setup.check_set_up import PLACED
from bot.questions.setup.drawn_animal import drawn_animal
from bot.questions.setup.side import stand_blocks
from bot.questions.uv.curves import shortened
from bot.reply import Picture
from calc.heat.enclosure import Lid
from calc.quantities import Quantity
from calc.setup.set_up import Act, SetUp, Sign, Stand, StandKind, Thing
from calc.uv.ground import Platform
from calc.uv.section import Box

__all__ = ["CheckLong", "CheckRow", "check_picture"]

TONES = {Sign.FINE: Tone.GOOD, Sign.CHANGE: Tone.BAD, Sign.CANNOT_TELL: Tone.DOUBTFUL}
_ON_STAND = frozenset((Quantity.UVI, Quantity.BASKING_SURFACE))
# The usual box [m], and how high a back that is not known is drawn [m].
_USUAL = Box(1.2, 0.6, 0.6)
_BACK_M = 0.04
# Usual places, as shares of the box: the stand, the probes, a tube whose length was not told.
_STAND, _STAND_TOP = (0.2, 0.52), 0.25
_WARM, _COOL, _PROBE = 0.07, 0.86, 0.14
_TUBE_FROM, _TUBE = 0.05, 0.6
# A tube farther over its box than this does not hang as it was told: it is not drawn.
_HIGHEST = 1.4
_SHOULDER = 0.15
_FIXTURE_M = 0.06
_GRID_M = 0.1


@dataclass(frozen=True, slots=True)
class CheckLong:
    """A length that is written into the picture."""

    seen: Length


@dataclass(frozen=True, slots=True)
class CheckRow:
    """A part of the set-up, what was read there, and the word of its verdict."""

    piece: Say
    read: Say | None
    mark: Say


@dataclass(frozen=True, slots=True)
class _Laid:
    """Where things are drawn [m]: box, stand, the animal and its back, the faces of the lamps."""

    box: Box
    stand: Stand
    back_z_m: float
    figure: Figure
    long_m: float
    tube: tuple[float, float, float] | None
    lamp: tuple[float, float] | None

    @property
    def x_m(self) -> float:
        """The middle of the stand along the box [m]."""
        return self.stand.place.middle_m[0]


def check_picture(facts: Checked, first: Say, teller: Teller) -> Picture:
    """Return the set-up from the front as it was told; the rest in usual places, and said so."""
    set_up, say = facts.set_up, teller.say
    laid = _laid(set_up)
    title = say(Say("check-title", facts.whom))
    note = " ".join(map(say, _notes(set_up, laid)))
    rows = tuple((part, say(_row(part))) for part in facts.parts)
    placed = [(part, row) for part, row in rows if _place_of(part) in PLACED]
    tube, x_m = laid.tube, laid.x_m
    drawing = Side(
        title=title,
        subtitle=say(first),
        width_m=laid.box.length_m,
        height_m=laid.box.height_m,
        width_label=_long(laid.box.length_m, teller),
        height_label=_long(laid.box.height_m, teller),
        lid=say(Say("side-screen")) if set_up.tube_is_over else "",
        tubes=() if tube is None else (Bar(*tube, say(Say("side-tube"))),),
        heat_lamp=None if laid.lamp is None else Place(*laid.lamp, say(Say("side-lamp"))),
        blocks=stand_blocks(laid.stand, laid.box, ""),
        back=Place(x_m, laid.back_z_m, ""),
        dimensions=tuple(_dimensions(set_up, laid, teller)),
        places=tuple(
            Place(*_at(_place_of(part), laid), row, TONES[part.sign]) for part, row in placed
        ),
        placeless=tuple(
            Placeless(row, TONES[part.sign]) for part, row in rows if (part, row) not in placed
        ),
        shift=_shift(facts, laid, teller),
        ends=(End(say(Say("side-warm")), "", True), End(say(Say("side-cool")), "", False)),
        note=note,
        animal=laid.figure,
        animal_m=laid.long_m,
    )
    alt = (
        say(Say("check-picture-alt", facts.whom)),
        say(first),
        *(f"{row}." for _, row in rows),
        note,
    )
    return Picture(alt=shortened(alt), drawing=drawing)


def _notes(set_up: SetUp, laid: _Laid) -> Iterator[Say]:
    yield Say("check-picture-usual" if set_up.box is None else "check-picture-own")
    too_high = set_up.tube_to_back_m is not None and laid.tube is None
    if too_high or (set_up.lamp_to_stand_m is not None and laid.lamp is None):
        yield Say("check-picture-too-high")


def _long(long_m: float, teller: Teller) -> str:
    return teller.say(Say("check-picture-length", CheckLong(metres(long_m))))


def _row(part: Part) -> Say:
    return Say("check-picture-row", CheckRow(piece_of(part), part.read, mark_of(part)))


def _place_of(part: Part) -> Quantity | None:
    return None if part.spot is None else part.spot.quantity


def _at(quantity: Quantity | None, laid: _Laid) -> tuple[float, float]:
    """Return where a reading is taken along the box and over its floor [m]."""
    box = laid.box
    if quantity in _ON_STAND:
        place = laid.stand.place
        # UV on its back between head and arrow, heat where it lies.
        if quantity is Quantity.UVI:
            return laid.x_m - _SHOULDER * laid.long_m, laid.back_z_m
        return place.x0_m + 0.8 * (place.x1_m - place.x0_m), place.top_m
    return (_COOL if quantity is Quantity.COOL_AIR else _WARM) * box.length_m, _PROBE * box.height_m


def _laid(set_up: SetUp) -> _Laid:
    """Return the box with what was told in it; what was not told where it usually is."""
    back_m = _BACK_M if set_up.back_m is None else set_up.back_m.best
    away = set_up.tube_to_back_m
    box = set_up.box or _usual_box(back_m, None if away is None else away.best)
    over = set_up.tube_is_over and set_up.lid is not Lid.SOLID
    hangs_m = box.height_m - (0.0 if over else min(_FIXTURE_M, 0.15 * box.height_m))
    on_stand = any(spot.quantity in _ON_STAND for spot in set_up.spots)
    top_m = _STAND_TOP * box.height_m if on_stand and away is None else 0.0
    if away is not None:
        top_m = max(hangs_m - away.best - back_m, 0.0)
    first, last = (share * box.length_m for share in _STAND)
    place = Platform(first, last, 0.25 * box.depth_m, 0.75 * box.depth_m, top_m)
    back_z_m = top_m + back_m
    return _Laid(
        box,
        Stand(StandKind.PLATFORM, place),
        back_z_m,
        *drawn_animal(set_up.animal),
        None if away is None else _tube(set_up, box, back_z_m + away.best),
        _lamp(set_up, box, place),
    )


def _usual_box(back_m: float, away_m: float | None) -> Box:
    """Return the usual box, higher where a tube hangs higher in it."""
    wanted_m = 0.0 if away_m is None else back_m + away_m + _FIXTURE_M
    return replace(_USUAL, height_m=max(_USUAL.height_m, ceil(wanted_m / _GRID_M) * _GRID_M))


def _tube(set_up: SetUp, box: Box, z_m: float) -> tuple[float, float, float] | None:
    if z_m > _HIGHEST * box.height_m:
        return None
    first = _TUBE_FROM * box.length_m
    long_m = set_up.tube_long_m or _TUBE * box.length_m
    return first, min(first + long_m, box.length_m), z_m


def _lamp(set_up: SetUp, box: Box, place: Platform) -> tuple[float, float] | None:
    away = set_up.lamp_to_stand_m
    if away is None or place.top_m + away.best > _HIGHEST * box.height_m:
        return None
    return place.x0_m + 0.8 * (place.x1_m - place.x0_m), place.top_m + away.best


def _dimensions(set_up: SetUp, laid: _Laid, teller: Teller) -> Iterator[Dimension]:
    if laid.tube is not None and set_up.tube_to_back_m is not None:
        words = _long(set_up.tube_to_back_m.best, teller)
        yield Dimension(laid.x_m, laid.tube[2], laid.x_m, laid.back_z_m, words)


def _shift(facts: Checked, laid: _Laid, teller: Teller) -> Shift | None:
    """Return the first change where it moves a tube that is drawn."""
    first, tube = facts.set_up.first, laid.tube
    moves = first is not None and first.act is Act.MOVE and Thing.TUBE in first.things
    # What an alarm asks for comes before any movement.
    if not moves or tube is None or facts.alarms:
        return None
    assert first is not None
    by_m = None if first.by_m is None else first.by_m[2]
    way = by_m if by_m is not None else float(first.toward[2]) if first.toward else 0.0
    if way == 0.0:
        return None
    label = "" if by_m is None else _long(abs(by_m), teller)
    x_m = tube[0] + 0.88 * (tube[1] - tube[0])
    return Shift(x_m, tube[2], way > 0.0, None if by_m is None else abs(by_m), label)
