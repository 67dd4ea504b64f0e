"""The picture of a plan: the enclosure to scale with tube, lamp, stand and back in place."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.drawing import End, Place, Tone
from bot.facts import Length, Say, Says, Temp, Uvi, degrees, metres, uvi
from bot.layered import Teller
from bot.questions.setup.plan_facts import Planned
from bot.questions.setup.side import SideWords, side_views, zone_words
from bot.questions.setup.sun import sun_alt, sun_note
from bot.questions.uv.curves import shortened
from bot.reply import Picture
from calc.quantities import Quantity
from calc.setup.set_up import SetUp, Spot, ends_of

__all__ = ["PlanReading", "PlanSeen", "plan_picture"]

_PROBED = (Quantity.COOL_AIR, Quantity.WARM_AIR)


@dataclass(frozen=True, slots=True)
class PlanSeen:
    """A length that is written into the picture."""

    seen: Length


@dataclass(frozen=True, slots=True)
class PlanReading:
    """What is to be read at a place; of a UV index ``read_uvi``, of the rest ``read_temp``."""

    read_uvi: Uvi | None
    read_temp: Temp | None


def plan_picture(facts: Planned, teller: Teller) -> Picture:
    """Return the enclosure from the front, and from its warm end with the lamp beside the tube."""
    say = Says("plan", facts)
    set_up = facts.set_up
    ends = (
        End(teller.say(Say("side-warm")), teller.say(say("picture-warm-is")), True),
        End(teller.say(Say("side-cool")), teller.say(say("picture-cool-is")), False),
    )
    words = SideWords(
        length=lambda long_m: teller.say(_seen(long_m)),
        over=teller.say(say("picture-title")),
        title=teller.say(say("yes") if facts.floor is None else say("small")),
        tone=Tone.GOOD if facts.floor is None else Tone.BAD,
        subtitle=teller.say(say("picture-subtitle")),
        tube=teller.say(say("picture-tube")),
        tubes=teller.say(say("picture-tubes")),
        lamp=teller.say(Say("plan-picture-lamp", facts.heat)) if facts.lit_by_lamp else "",
        lid=teller.say(Say("side-screen")),
        stand=teller.say(say("place")),
        across=teller.say(say("picture-across")),
        note=" ".join(map(teller.say, (say("picture-note"), *sun_note(facts.sun)))),
        sun=teller.say(Say("sun-here")) if set_up.sun and set_up.sun.x_m else "",
        light=teller.say(Say("sun-bar")),
        zones=zone_words(teller),
        ends=ends,
        places=tuple(_places(facts, teller)),
    )
    drawing = side_views(set_up, words)
    lies = "across" if set_up.is_turned else "reach"
    reach = Say.of("plan-picture-alt", lies, facts=PlanSeen(metres(_reach_m(set_up))))
    told = (
        say("picture-alt"),
        reach,
        say("picture-alt-stand"),
        say("picture-alt-away"),
        *((say("picture-alt-lamp"),) if facts.lit_by_lamp else ()),
        *sun_alt(facts.sun, facts.white),
        say("picture-alt-warm"),
        say("picture-alt-cool"),
    )
    return Picture(alt=shortened(list(map(teller.say, told))), drawing=drawing)


def _reach_m(set_up: SetUp) -> float:
    """Return how far from the warm end a tube reaches [m]."""
    tube = set_up.tubes[0]
    return tube.y_m if set_up.is_turned else ends_of(tube)[1]


def _seen(long_m: float) -> Say:
    return Say("plan-picture-length", PlanSeen(metres(long_m)))


def _places(facts: Planned, teller: Teller) -> Iterator[Place]:
    # Seen from the front: with a tube across the box is turned.
    front = 1 if facts.set_up.is_turned else 0
    for spot in facts.set_up.spots:
        if spot.at_m is not None and spot.wanted is not None:
            yield Place(spot.at_m[front], spot.at_m[2], teller.say(_read(spot, spot.wanted)))


def _read(spot: Spot, wanted: tuple[float, float]) -> Say:
    middle = sum(wanted) / 2.0
    if spot.quantity is Quantity.UVI:
        return Say("plan-picture-meter", PlanReading(uvi(middle, wanted), None))
    reading = PlanReading(None, degrees(middle, wanted))
    probed = spot.quantity in _PROBED
    return Say("plan-picture-probe" if probed else "plan-picture-gun", reading)
