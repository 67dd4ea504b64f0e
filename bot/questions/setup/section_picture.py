"""The two views of a map: the enclosure to scale with the UV index in it."""

from collections.abc import Iterator

from bot.drawing import End, Place, Tone
from bot.facts import Say, Says, metres
from bot.layered import Teller
from bot.questions.setup.section_facts import Lit, Section, SectionLong
from bot.questions.setup.side import SideWords, side_views, zone_words
from bot.questions.setup.sun import sun_alt, sun_note
from bot.questions.uv.curves import shortened
from bot.reply import Picture

__all__ = ["section_picture"]

# What is not fine and not in doubt is to be changed.
_TONES = {
    Lit.FINE: Tone.GOOD,
    Lit.CANNOT_TELL: Tone.DOUBTFUL,
    Lit.MAYBE_STRONG: Tone.DOUBTFUL,
    Lit.MAYBE_WEAK: Tone.DOUBTFUL,
}


def section_picture(facts: Section, teller: Teller) -> Picture:
    """Return the enclosure seen from the front, and below it from its end."""
    say = Says("section", facts)
    tell = teller.say
    words = SideWords(
        length=lambda long_m: tell(Say("section-long", SectionLong(metres(long_m)))),
        over=tell(say("title")),
        title=tell(say.by("head", facts.lit)),
        tone=Tone.BAD if facts.alarms else _TONES.get(facts.lit, Tone.BAD),
        subtitle=tell(say("picture-below")),
        tube=tell(say("picture-tube")),
        tubes=tell(say("picture-tubes")),
        lamp=tell(Say("side-lamp")),
        lid=tell(Say("side-screen")),
        stand=tell(say("picture-stand")),
        across=tell(say("picture-across")),
        note=" ".join(map(tell, (say("picture-note"), *sun_note(facts.sun)))),
        sun=tell(Say("sun-here")) if facts.set_up.sun and facts.set_up.sun.x_m else "",
        light=tell(Say("sun-bar")),
        zones=zone_words(teller),
        ends=(
            End(tell(Say("side-warm")), tell(say("picture-warm-is")), True),
            End(tell(Say("side-cool")), tell(say.by("shade-here", facts.shade)), False),
        ),
        places=tuple(_places(facts, teller)),
    )
    alt = (
        say("alt"),
        say.by("head", facts.lit),
        say("most"),
        say.by("shade", facts.shade),
        *sun_alt(facts.sun, facts.white),
        say("alt-end"),
    )
    told = (*map(tell, alt), *_lines(facts, teller))
    return Picture(alt=shortened(told), drawing=side_views(facts.set_up, words))


def _places(facts: Section, teller: Teller) -> Iterator[Place]:
    strongest, weakest = facts.strongest, facts.weakest
    for place, text in (
        (strongest, Say("section-picture-strongest", strongest)),
        (weakest, Say("section-picture-weakest", weakest)),
    ):
        yield Place(place.along.best, place.high.best, teller.say(text))


def _lines(facts: Section, teller: Teller) -> Iterator[str]:
    for row in facts.view.rows:
        values = "; ".join(teller.say(Say("section-alt-uvi", at)) for at in row)
        yield f"{teller.say(Say('section-alt-height', row[0]))} {values}."
