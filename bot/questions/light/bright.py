"""How bright it is where an animal basks. Words: ``words/<language>/bright.ftl``."""

from collections.abc import Iterator

from bot.command import Command
from bot.facts import Say, Says
from bot.layered import Brief, Care, Layered, Row, Table, Weight
from bot.preferences import Context
from bot.queries.light import BrightQuery
from bot.questions.light.bright_facts import bright_of
from bot.questions.light.brightness import (
    Asked,
    Bright,
    BrightLamp,
    BrightSky,
    BrightWords,
    Without,
    WithoutLux,
)
from calc.light.kinds import LampUv

__all__ = ["BRIGHT", "bright", "tell"]

_GUIDE = ("light-and-colour", "sun-and-shade", "which-uv-lamp")
_UNFAIR = (BrightWords.DIM, BrightWords.DIM_OR_FAIR)


def bright(query: BrightQuery, context: Context) -> Bright | WithoutLux:
    """Work out how bright it is, or what it would take."""
    return bright_of(query, context)


def tell(facts: Bright | WithoutLux) -> Layered:
    """Tell the brightness, or why there is none and what helps."""
    return _told(facts) if isinstance(facts, Bright) else _without_told(facts)


def _told(facts: Bright) -> Layered:
    say = Says("bright", facts)
    lamp = facts.lamp
    return Layered(
        command="bright",
        title=say("title"),
        brief=Brief(
            head=say.by("head", facts.words),
            range=(say.by("range", facts.asked), Say("bright-shade", facts.sky)),
            assumed=(say("nobody"),),
            steps=tuple(_do(facts, say)),
        ),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        table=_sky_table(facts.sky),
        why=tuple(_why(facts, say)),
        care=tuple(_care(facts, say)),
        values=(
            ("illuminance", facts.spot),
            ("cool_end_illuminance", lamp.cool if lamp else None),
            ("shade_illuminance", facts.retreat),
            ("patch_along", lamp.along if lamp else None),
            ("patch_across", lamp.across if lamp else None),
            ("share_of_sun", facts.sky.of_sun),
            ("plant_photons", facts.plants.photons),
            ("plant_day_sum", facts.plants.day),
        ),
        guide=_GUIDE,
        sources=facts.sources,
    )


def _do(facts: Bright, say: Says) -> Iterator[Say]:
    if facts.is_of_the_night:
        yield say("do-night")
    elif facts.for_fair is not None:
        yield say("do-first")
        yield say("do-lumens")
    elif facts.words in _UNFAIR:
        yield say("do-first")
        yield say("do-closer")
    else:
        yield say("do-shade")


def _steps(facts: Bright, say: Says) -> Iterator[Say]:
    yield say("step-first")
    if facts.is_of_the_night:
        yield say("step-night")
    elif facts.words in _UNFAIR:
        yield say("step-lumens" if facts.for_fair else "step-closer")
    yield say("step-shade")
    yield say("step-measure")
    yield say("step-dark")


def _numbers(facts: Bright, say: Says) -> Iterator[Row]:
    yield Row(say("label-spot"), say("spot"))
    lamp = facts.lamp
    if lamp is not None:
        yield Row(say("label-lamp"), Say("bright-lamp-told", lamp))
        yield Row(say("label-patch"), Say("bright-patch", lamp))
        if lamp.cool is not None:
            yield Row(say("label-cool"), Say("bright-cool", lamp))
    yield Row(say("label-retreat"), say("retreat-told"))
    if facts.life is not None:
        yield Row(say("label-bands"), Say.by("bright-bands", facts.life.life, facts.life))
    yield Row(say("label-plants"), Say("bright-plants-told", facts.plants))


def _sky_table(sky: BrightSky) -> Table:
    say = Says("bright", sky)
    rows = (
        (say("row-sun"), say("cell-sun")),
        (say("row-shaded"), say("cell-shaded")),
        (say("row-overcast"), say("cell-overcast")),
        (say("row-room"), say("cell-room")),
    )
    return Table((say("column-place"), say("column-lux")), rows)


def _why(facts: Bright, say: Says) -> Iterator[Say]:
    yield say("why-nobody")
    if facts.lamp is not None:
        yield Say("bright-why-lamp", facts.lamp)
        yield from facts.lamp.assumed
    if facts.asked is not Asked.LAMP:
        yield say.by("why", facts.asked)
    yield say("why-eye")
    yield Say("bright-why-plants", facts.plants)


def _care(facts: Bright, say: Says) -> Iterator[Care]:
    lamp = facts.lamp
    if facts.is_pale:
        yield Care(say("care-pale"), say("care-pale-short"), Weight.STEP)
    if lamp is not None and lamp.is_behind_glass:
        yield Care(say("care-glass"), say("care-glass-short"), Weight.STEP)
    yield from _uv_care(lamp, say)
    yield Care(say("care-heat"))
    yield Care(say("care-eyes"))


def _uv_care(lamp: BrightLamp | None, say: Says) -> Iterator[Care]:
    if lamp is None:
        yield Care(say("care-lux"), say("care-lux-short"), Weight.STEP)
    elif lamp.uv is LampUv.NONE:
        yield Care(say("care-led"), say("care-led-short"), Weight.STEP)
    else:
        yield Care(say("care-uv"), say("care-uv-short"), Weight.STEP)


def _without_told(facts: WithoutLux) -> Layered:
    say = Says("bright", facts)
    how_many = facts.why is Without.HOW_MANY
    return Layered(
        command="bright",
        title=say("without-title"),
        brief=Brief(
            head=say.by("without", facts.why),
            range=tuple(_without_range(facts, say)),
            steps=(say.by("without-do", facts.why),),
        ),
        steps=(say.by("without-step", facts.why), say("step-first")),
        numbers=tuple(
            Row(say("label-bands"), Say.by("bright-bands", life.life, life))
            for life in (facts.life,)
            if life is not None
        ),
        table=_sky_table(facts.sky),
        why=(say("why-nobody"), *facts.assumed, say("why-eye")),
        care=(
            Care(say("care-led"), say("care-led-short"), Weight.STEP)
            if how_many
            else Care(say("care-lux"), say("care-lux-short"), Weight.STEP),
            Care(say("care-heat")),
        ),
        values=(("fair_lumens", facts.fair_flux), ("bright_lumens", facts.bright_flux)),
        guide=_GUIDE,
        sources=facts.sources,
    )


def _without_range(facts: WithoutLux, say: Says) -> Iterator[Say]:
    if facts.why is Without.HOW_MANY:
        yield say("many-bright")
        yield say("nobody")
    if facts.why is Without.NOTHING_TOLD:
        yield say("nobody")
        yield Say("bright-shade-alone", facts.sky)


BRIGHT = Command(
    name="bright",
    query=BrightQuery,
    facts=bright,
    tell=tell,
    examples=(
        "bright lamp:led bar lumens:4000 distance:16in length:33in animal:bearded dragon",
        (
            "bright lamp:white tube watts:24W distance:30cm enclosure:90x45x45cm "
            "animal:crested gecko hours:12 hours"
        ),
        "bright reading:6000 lux by:phone animal:bearded dragon latitude:27S month:December",
    ),
    guide=("light-and-colour", "sun-and-shade"),
)
