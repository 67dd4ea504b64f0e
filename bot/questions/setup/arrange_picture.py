"""The picture of the way that is picked: from the front, and from the warm end."""

from dataclasses import dataclass

from bot.drawing import End
from bot.facts import Length, Say, metres
from bot.layered import Teller
from bot.questions.setup.side import SideWords, side_views, zone_words
from bot.questions.setup.sun import sun_alt, sun_note, sun_told
from bot.questions.setup.ways import Ways
from bot.questions.uv.curves import shortened
from bot.reply import Picture
from calc.setup.set_up import SetUp

__all__ = ["ArrangeSeen", "arrange_picture"]


@dataclass(frozen=True, slots=True)
class ArrangeSeen:
    """A length that is written into the picture."""

    seen: Length


def arrange_picture(ways: Ways, set_up: SetUp, teller: Teller) -> Picture:
    """Return the enclosure with its lamps as they are picked."""
    way, sun = ways.picked, sun_told(set_up.sun, set_up.light)
    head = teller.say(Say.by("arrange-head", way.way, way))
    title = teller.say(Say("arrange-title"))
    note = (Say("arrange-picture-note"), *sun_note(sun))
    words = SideWords(
        length=lambda long_m: teller.say(Say("arrange-long", ArrangeSeen(metres(long_m)))),
        over=title,
        title=head,
        subtitle="",
        tube=teller.say(Say("side-tube")),
        tubes=teller.say(Say("side-tube")),
        lamp=teller.say(Say("side-lamp")),
        lid=teller.say(Say("side-screen")),
        stand=teller.say(Say("side-stand")),
        across=teller.say(Say("side-from-warm")),
        note=" ".join(map(teller.say, note)),
        sun=teller.say(Say("sun-here")) if set_up.sun and set_up.sun.x_m else "",
        light=teller.say(Say("sun-bar")),
        zones=zone_words(teller),
        ends=_ends(ways, teller),
    )
    told = (*ways.meets, *sun_alt(sun), Say("arrange-picture-shade", way))
    alt = shortened([f"{title}. {head}", *map(teller.say, told)])
    return Picture(alt=alt, drawing=side_views(set_up, words))


def _ends(ways: Ways, teller: Teller) -> tuple[End, ...]:
    """Return what the two ends are."""
    meets, *_ = map(teller.say, ways.meets)
    shade = teller.say(Say("arrange-picture-shade", ways.picked))
    return (
        End(teller.say(Say("side-warm")), meets, True),
        End(teller.say(Say("side-cool")), shade, False),
    )
