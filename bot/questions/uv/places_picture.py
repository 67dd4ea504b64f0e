"""Where a tube hangs with a mirror or without, over mesh or not, as bars."""

from bot.drawing import Ladder, Rung, Tone
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.uv.curve_picture import distance_axis
from bot.questions.uv.curves import alt_of
from bot.questions.uv.tube_places import TubePlaces
from bot.reply import Picture

__all__ = ["places_picture"]

_BEYOND = 1.08


def places_picture(facts: TubePlaces, teller: Teller) -> Picture:
    """Return a bar for each place, from the nearest to the farthest distance."""
    say = Says("tube", facts)
    farthest = max(place.away.high for place in facts.places)
    drawing = Ladder(
        over=teller.say(say("title")),
        title=teller.say(say("places-head")),
        tone=Tone.PLAIN,
        subtitle="",
        axis=distance_axis(0.0, _BEYOND * farthest, teller),
        wanted=None,
        rungs=tuple(
            Rung(
                teller.say(Say("tube-places-name", place)),
                place.away.low,
                place.away.best,
                place.away.high,
                teller.say(Say("tube-places-away", place)),
                Tone.PLAIN,
                has_best=False,
            )
            for place in facts.places
        ),
        note=teller.say(say("places-note")),
    )
    each = (Say("tube-places-each", place) for place in facts.places)
    told = (say("title"), say("places-head"), *each, say("places-note"))
    first, *rest = map(teller.say, told)
    return Picture(alt=alt_of([f"{first}.", *rest]), drawing=drawing)
