"""The picture of a checked set-up: the keeper's box to scale, each reading with its verdict."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from math import hypot

from bot.drawing import Bar, Dimension, End, Gauge, Place, Placeless, Shift, Side
from bot.facts import Length, Say, metres
from bot.layered import Teller
from bot.questions.heat.gauges import span_of
from bot.questions.setup.check_facts import Checked
from bot.questions.setup.check_parts import Part, mark_of, piece_of
from bot.questions.setup.check_picture_light import light_alt, with_light
from bot.questions.setup.check_set_up import PLACED
from bot.questions.setup.shifted import Hung, shifts_of
from bot.questions.setup.usual_box import TOOLS, Laid, laid_out
from bot.questions.tones import TONES
from bot.questions.uv.curve_picture import behind_told
from bot.questions.uv.curves import shortened
from bot.reply import Picture
from calc.animals import animals
from calc.quantities import Dimension as Dimensioned
from calc.quantities import Quantity, row_of
from calc.setup.set_up import SetUp, Sign, Thing

__all__ = ["CheckAim", "CheckLong", "CheckRow", "check_picture", "head_sign"]


@dataclass(frozen=True, slots=True)
class CheckLong:
    """A length that is written into the picture."""

    seen: Length


@dataclass(frozen=True, slots=True)
class CheckAim:
    """What to aim for at a place."""

    aim: Say


@dataclass(frozen=True, slots=True)
class CheckRow:
    """A part of the set-up, what was read there, and the word of its verdict."""

    piece: Say
    read: Say | None
    mark: Say


def check_picture(facts: Checked, head: Say, first: Say | None, teller: Teller) -> Picture:
    """Return the set-up from the front as it was told; the rest in usual places, and said so."""
    set_up, say = facts.set_up, teller.say
    laid = laid_out(set_up, animals().get(set_up.animal), hung=frozenset(_hung(facts)))
    note = " ".join(map(say, _notes(facts, laid)))
    placed = [part for part in facts.parts if _place_of(part) in PLACED]
    gauges = [_gauge(part, teller) for part in placed]
    drawing = Side(
        over=say(Say("check-title", facts.whom)),
        title=say(head),
        tone=TONES[head_sign(facts)],
        subtitle="" if first is None else say(first),
        width_m=laid.box.length_m,
        height_m=laid.box.height_m,
        width_label=_long(laid.box.length_m, teller),
        height_label=_long(laid.box.height_m, teller),
        lid=say(Say("side-screen")) if set_up.tube_is_over else "",
        tubes=_tubes(facts, laid, teller),
        heat_lamp=None if laid.lamp is None else Place(*laid.lamp, say(Say("side-lamp"))),
        blocks=laid.blocks,
        back=Place(laid.x_m, laid.back_z_m, ""),
        dimensions=tuple(_dimensions(set_up, laid, teller)),
        places=tuple(_place(part, gauge, laid) for part, gauge in zip(placed, gauges, strict=True)),
        placeless=tuple(
            Placeless(say(_row(part)), TONES[part.sign])
            for part in facts.parts
            if part not in placed
        ),
        span=span_of(gauges),
        shifts=tuple(_shifts(facts, laid, teller)),
        ends=(End(say(Say("side-warm")), "", True), End(say(Say("side-cool")), "", False)),
        note=note,
        water=laid.water_m,
        animal=laid.figure,
        animal_m=laid.long_m,
    )
    alt = (
        say(Say("check-picture-alt", facts.whom)),
        say(head),
        *(() if first is None else (say(first),)),
        *(f"{say(_row(part))}." for part in facts.parts),
        *map(say, light_alt(facts)),
        note,
    )
    return Picture(alt=shortened(alt), drawing=with_light(drawing, facts, laid, teller))


def _tubes(facts: Checked, laid: Laid, teller: Teller) -> tuple[Bar, ...]:
    name, behind = teller.say(Say("side-tube")), behind_told(facts.reflector)
    return () if laid.tube is None else (Bar(*laid.tube, name, behind),)


def head_sign(facts: Checked) -> Sign:
    """Return the sign of what the head says: of what is wrong, else fine only where all is."""
    if facts.alarms:
        return Sign.CHANGE
    if facts.wrong is not None:
        return facts.wrong.sign
    fine = all(part.sign is Sign.FINE for part in facts.parts) and not facts.missing
    return Sign.FINE if fine and facts.whom.is_known else Sign.CANNOT_TELL


def _hung(facts: Checked) -> Iterator[Thing]:
    """Yield what hangs there by what is known of it, though not where."""
    read = {_place_of(part) for part in facts.parts}
    if Quantity.BASKING_SURFACE in read:
        yield Thing.HEAT_LAMP
    if Quantity.UVI in read:
        yield Thing.TUBE


def _gauge(part: Part, teller: Teller) -> Gauge:
    """Return the plate of a part: what was read, its verdict in a word, what to aim for."""
    spot, say = part.spot, teller.say
    assert spot is not None
    warm = row_of(spot.quantity).dimension is Dimensioned.TEMPERATURE
    return Gauge(
        label=say(piece_of(part)),
        where="",
        wanted=spot.wanted if warm else None,
        wanted_text="" if part.aim is None else say(Say("check-picture-aim", CheckAim(part.aim))),
        reading=(spot.value.low, spot.value.high) if warm and spot.value else None,
        reading_text="" if part.read is None else say(part.read),
        verdict=say(mark_of(part)),
        tone=TONES[part.sign],
    )


def _place(part: Part, gauge: Gauge, laid: Laid) -> Place:
    quantity = _place_of(part)
    assert quantity is not None
    return Place(*laid.at(quantity), "", TONES[part.sign], TOOLS[quantity], gauge)


def _notes(facts: Checked, laid: Laid) -> Iterator[Say]:
    set_up = facts.set_up
    yield Say("check-picture-usual" if set_up.box is None else "check-picture-own")
    if facts.has_white and laid.tube is not None:
        yield Say("check-picture-behind")
    too_long = (set_up.tube_long_m or 0.0) > laid.box.length_m
    if too_long:
        yield Say("check-picture-too-long")
    too_high = set_up.tube_to_back_m is not None and laid.tube is None and not too_long
    if too_high or (set_up.lamp_to_stand_m is not None and laid.lamp is None):
        yield Say("check-picture-too-high")


def _long(long_m: float, teller: Teller) -> str:
    return teller.say(Say("check-picture-length", CheckLong(metres(long_m))))


def _row(part: Part) -> Say:
    return Say("check-picture-row", CheckRow(piece_of(part), part.read, mark_of(part)))


def _place_of(part: Part) -> Quantity | None:
    return None if part.spot is None else part.spot.quantity


def _dimensions(set_up: SetUp, laid: Laid, teller: Teller) -> Iterator[Dimension]:
    if laid.tube is not None and set_up.tube_to_back_m is not None:
        words = _long(set_up.tube_to_back_m.best, teller)
        yield Dimension(laid.x_m, laid.tube[2], laid.x_m, laid.back_z_m, words)


def _drawn(laid: Laid) -> Mapping[Thing, Hung]:
    """Return what can be moved of what is drawn."""
    place = laid.stand.place
    found = {Thing.STAND: Hung(place.x0_m, place.x1_m, place.top_m)} if place.top_m else {}
    if laid.tube is not None:
        found[Thing.TUBE] = Hung(*laid.tube)
    if laid.lamp is not None:
        found[Thing.HEAT_LAMP] = Hung(laid.lamp[0], laid.lamp[0], laid.lamp[1])
    return found


def _shifts(facts: Checked, laid: Laid, teller: Teller) -> Iterator[Shift]:
    """Yield the first change as arrows; what an alarm asks for comes before any movement."""
    first = facts.set_up.first
    if facts.alarms or first is None:
        return
    far_m = hypot(first.by_m[0], first.by_m[2]) if first.by_m else 0.0
    yield from shifts_of(first, _drawn(laid), _long(far_m, teller) if far_m else "")
