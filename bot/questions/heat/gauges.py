"""The picture of readings and needs: a box with each tool at its place, and a plate for each."""

from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial

from bot.drawing import Bar, Dimension, End, Flow, Gauge, Shift, Side, Tone
from bot.drawing import Place as Placed
from bot.facts import Length, Name, Say, Temp, degrees, metres
from bot.layered import Teller
from bot.questions.heat.readings import Place
from bot.questions.heat.shared import aimed, has_best
from bot.questions.setup.shifted import Hung, shifts_of
from bot.questions.setup.usual_box import TOOLS, Laid, laid_out
from bot.questions.shared import animal_name
from bot.questions.tones import TONES
from bot.reply import Picture
from calc.animal import Animal
from calc.animals import animals
from calc.heat.readings import target_at
from calc.judgement import Verdict
from calc.quantities import Quantity
from calc.setup.set_up import SetUp, Sign, Spot, Thing

__all__ = ["BoxHead", "BoxLong", "GaugesTold", "Told", "box_picture", "gauges_told", "span_of"]

_MARGIN_K = 3.0
_LEAST_K = 20.0


@dataclass(frozen=True, slots=True)
class GaugeTold:
    """One thermometer: what it reads, what to aim for, and what that is; None: not known."""

    place: Place
    read: Temp | None
    wanted: Temp | None
    has_best: bool
    verdict: Verdict | None
    differ: bool
    ends: tuple[float, float] | None
    sign: Sign


@dataclass(frozen=True, slots=True)
class GaugesTold:
    """The thermometers of one animal, the most important first."""

    animal: Name
    gauges: tuple[GaugeTold, ...]


@dataclass(frozen=True, slots=True)
class Told:
    """What is wanted at a place, and what was read there, if anything was, in words of its own.

    ``ends``, ``met`` and ``below`` are for its bar [degC]: the range that is right, the one that
    was read, and the threshold of heat.
    """

    quantity: Quantity
    label: Say
    wanted: Say
    read: Say | None = None
    verdict: Say | None = None
    sign: Sign | None = None
    ends: tuple[float, float] | None = None
    met: tuple[float, float] | None = None
    below: float | None = None


@dataclass(frozen=True, slots=True)
class BoxLong:
    """A length that is written into the picture."""

    seen: Length


@dataclass(frozen=True, slots=True)
class BoxHead:
    """What stands over the box: the question, the answer with its tone, and the first step."""

    over: Say
    answer: Say
    tone: Tone = Tone.PLAIN
    first: Say | None = None


def gauges_told(set_up: SetUp, animal: Animal) -> GaugesTold:
    """Return the places of a set-up as the picture shows them."""
    told = tuple(_told(spot, animal) for spot in set_up.spots)
    return GaugesTold(animal_name(animal), told)


def _told(spot: Spot, animal: Animal) -> GaugeTold:
    target, own, held = target_at(spot.quantity, animal), spot.judged, spot.held is not None
    verdict = None if own is None else Verdict.CANNOT_TELL if held else own.verdict
    return GaugeTold(
        place=Place[spot.quantity.name],
        read=None if spot.value is None else degrees(spot.value),
        wanted=None if target is None else aimed(target),
        has_best=target is not None and has_best(target),
        verdict=verdict,
        differ=spot.keepers_differ and not held,
        ends=spot.wanted,
        sign=spot.sign,
    )


def box_picture(
    told: GaugesTold,
    set_up: SetUp,
    head: BoxHead,
    also: Sequence[Told],
    teller: Teller,
    more: Sequence[Say] = (),
    flows: Sequence[Flow] = (),
) -> Picture:
    """Return the box, a usual one where none was told, with what is read and wanted at each place.

    What was not read yet is said so only where something was; ``more`` stands below, a line each;
    ``flows`` are where warmth leaves.
    """
    from bot.questions.uv.curves import shortened

    say, animal = teller.say, animals().get(set_up.animal)
    any_read = any(each.read is not None for each in told.gauges)
    quantities = {Quantity[each.place.name] for each in told.gauges} | {x.quantity for x in also}
    laid = laid_out(set_up, animal, hung=_hung(quantities))
    before = [one for one in also if one.quantity is Quantity.UVI]
    after = [one for one in also if one.quantity is not Quantity.UVI]
    gauges = [
        *((one.quantity, _plain(one, teller)) for one in before),
        *((Quantity[g.place.name], _gauge(g, teller, any_read=any_read)) for g in told.gauges),
        *((one.quantity, _plain(one, teller)) for one in after),
    ]
    below = list(map(say, more))
    notes = [Say("gauge-own" if set_up.box else "gauge-box"), *_explained(any_read)]
    length = partial(_length, teller)
    drawing = Side(
        over=say(head.over),
        title=say(head.answer),
        tone=head.tone,
        subtitle="" if head.first is None else say(head.first),
        width_m=laid.box.length_m,
        height_m=laid.box.height_m,
        width_label=length(laid.box.length_m) if set_up.box else "",
        height_label=length(laid.box.height_m) if set_up.box else "",
        dimensions=tuple(_away(set_up, laid, teller)),
        tubes=() if laid.tube is None else (Bar(*laid.tube, say(Say("side-tube"))),),
        heat_lamp=None if laid.lamp is None else Placed(*laid.lamp, say(Say("side-lamp"))),
        blocks=laid.blocks,
        back=Placed(laid.x_m, laid.back_z_m, ""),
        places=tuple(Placed(*laid.at(q), "", g.tone, TOOLS[q], g) for q, g in gauges),
        span=span_of([gauge for _, gauge in gauges]),
        ends=() if laid.water_m > 0.5 * laid.box.height_m else _ends(teller),
        note="\n".join((*map(say, notes), *below)),
        animal=laid.figure,
        animal_m=laid.long_m,
        hide=laid.hide,
        water=laid.water_m,
        shifts=tuple(_shifts(set_up, laid, teller)),
        flows=tuple(flows),
    )
    alt = _alt(told, head, (before, after), [*(f"{flow.label}." for flow in flows), *below], teller)
    return Picture(alt=shortened(alt), drawing=drawing)


def _alt(
    told: GaugesTold,
    head: BoxHead,
    also: tuple[Sequence[Told], Sequence[Told]],
    last: Sequence[str],
    teller: Teller,
) -> list[str]:
    """Return the picture in sentences: the answer, then place by place."""
    say, (before, after) = teller.say, also
    return [
        f"{say(head.over)}.",
        say(head.answer),
        *(_in_words(one, teller) for one in before),
        *(say(Say("gauge-told", each)) for each in told.gauges),
        *(_in_words(one, teller) for one in after),
        *last,
    ]


def _in_words(one: Told, teller: Teller) -> str:
    """Return a place in words: its label, what was read, its verdict, what is right."""
    told = (one.read, one.verdict, one.wanted)
    words = ", ".join(teller.say(say).rstrip(".") for say in told if say is not None)
    return f"{teller.say(one.label)}: {words}."


def _explained(any_read: bool) -> tuple[Say, ...]:
    return (Say("gauge-note"),) if any_read else ()


def span_of(gauges: Iterable[Gauge]) -> tuple[float, float] | None:
    """Return from where to where the bars of gauges go; None where none has one."""
    met = [
        end
        for gauge in gauges
        for ends in (gauge.wanted, gauge.reading, _beside(gauge.below))
        for end in ends or ()
    ]
    if not met:
        return None
    low, high = min(met) - _MARGIN_K, max(met) + _MARGIN_K
    short = max(_LEAST_K - (high - low), 0.0) / 2.0
    return low - short, high + short


def _away(set_up: SetUp, laid: Laid, teller: Teller) -> Iterator[Dimension]:
    """Yield how far the tube is from the back and the lamp from what it warms, where told."""
    away = set_up.tube_to_back_m
    if away is not None and laid.tube is not None:
        words = _length(teller, away.best)
        yield Dimension(laid.x_m, laid.tube[2], laid.x_m, laid.back_z_m, words)
    lamp_away = set_up.lamp_to_stand_m
    if lamp_away is not None and laid.lamp is not None:
        x_m, z_m = laid.lamp
        yield Dimension(x_m, z_m, x_m, laid.stand.place.top_m, _length(teller, lamp_away.best))


def _shifts(set_up: SetUp, laid: Laid, teller: Teller) -> Iterator[Shift]:
    """Yield how far the heat lamp is moved, where that is known."""
    first = set_up.first
    if first is not None and first.by_m and laid.lamp is not None:
        lamp = {Thing.HEAT_LAMP: Hung(laid.lamp[0], laid.lamp[0], laid.lamp[1])}
        yield from shifts_of(first, lamp, _length(teller, abs(first.by_m[2])))


def _length(teller: Teller, long_m: float) -> str:
    return teller.say(Say("gauge-length", BoxLong(metres(long_m))))


def _beside(below: float | None) -> tuple[float, float] | None:
    """Return a threshold with room for what lies under it."""
    return None if below is None else (below - 2.0 * _MARGIN_K, below)


def _hung(quantities: Collection[Quantity]) -> list[Thing]:
    lamp = [Thing.HEAT_LAMP] if Quantity.BASKING_SURFACE in quantities else []
    return lamp + ([Thing.TUBE] if Quantity.UVI in quantities else [])


def _ends(teller: Teller) -> tuple[End, End]:
    warm, cool = teller.say(Say("side-warm")), teller.say(Say("side-cool"))
    return End(warm, "", True), End(cool, "", False)


def _plain(one: Told, teller: Teller) -> Gauge:
    label, wanted = teller.say(one.label), teller.say(one.wanted)
    read, verdict = (teller.say(say) if say else "" for say in (one.read, one.verdict))
    tone = TONES[one.sign] if one.sign else Tone.PLAIN
    return Gauge(label, "", one.ends, wanted, one.met, read, verdict, tone, one.below)


def _gauge(told: GaugeTold, teller: Teller, *, any_read: bool) -> Gauge:
    """Return the gauge of a place; one that was not read has its range where one is known."""
    read, say = told.read, teller.say
    night = told.place is Place.NIGHT_AIR
    judged = told.verdict is not None or told.differ
    return Gauge(
        label=say(Say("gauge-label", told)),
        where=say(Say("gauge-tool", told)),
        wanted=None if night else told.ends,
        wanted_text=say(Say("gauge-wanted", told)) if told.wanted else "",
        reading=None if read is None else (read.low, read.high),
        reading_text="" if read is None else say(Say("gauge-read", told)),
        verdict=say(Say("gauge-verdict", told)) if any_read else "",
        tone=TONES[told.sign] if any_read and (read is None or judged) else Tone.PLAIN,
        below=told.ends[0] if night and told.ends else None,
    )
