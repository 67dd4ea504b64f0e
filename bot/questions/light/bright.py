"""How bright it is where an animal basks. Words: ``words/<language>/bright.ftl``."""

from collections.abc import Iterator

from bot.command import Command
from bot.facts import Say, Says
from bot.layered import Brief, Care, Layered, Row, Table, Weight
from bot.queries.light import BrightQuery
from bot.questions.light.bright_facts import bright
from bot.questions.light.bright_picture import bright_picture
from bot.questions.light.brightness import (
    Asked,
    Bright,
    BrightLife,
    BrightLit,
    BrightSky,
    BrightWords,
    Without,
    WithoutLux,
)
from bot.reply import Picture
from calc.light.bands import LightLife

__all__ = ["BRIGHT", "bright", "tell"]

_GUIDE = ("light-and-colour", "sun-and-shade", "which-uv-lamp")
_UNFAIR = (BrightWords.DIM, BrightWords.DIM_OR_FAIR)


def tell(facts: Bright | WithoutLux) -> Layered:
    """Tell the brightness, or why there is none and what helps."""
    return _told(facts) if isinstance(facts, Bright) else _without_told(facts)


def _told(facts: Bright) -> Layered:
    say = Says("bright", facts)
    lit = facts.lit
    return Layered(
        command="bright",
        title=say("title"),
        brief=Brief(
            head=say.by("head", facts.words),
            range=tuple(_range(facts, say)),
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
            ("cool_end_illuminance", lit.cool if lit else None),
            ("shade_illuminance", facts.retreat),
            ("patch_along", lit.along if lit else None),
            ("patch_across", lit.across if lit else None),
            ("share_of_sun", facts.sky.of_sun),
            ("plant_photons", facts.plants.photons),
            ("plant_day_sum", facts.plants.day),
        ),
        guide=_GUIDE,
        sources=facts.sources,
        picture=lambda teller: Picture.later(bright_picture, facts, teller),
    )


def _range(facts: Bright, say: Says) -> Iterator[Say]:
    yield say.by("range", facts.asked)
    if facts.plants.told:
        yield Say("bright-plants-short", facts.plants)
    if facts.lit is not None and facts.lit.left_out:
        yield Say("bright-left-out", facts.lit)
    if facts.life is not None and facts.lit is None:
        yield from _levels(facts.life)
    yield Say("bright-shade", facts.sky)


def _levels(life: BrightLife) -> Iterator[Say]:
    """Yield our own levels in few words, where a bright spot is asked for."""
    if life.life is not LightLife.NIGHT:
        yield Say("bright-levels", life)


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
    lit = facts.lit
    if lit is not None:
        for lamp in lit.lamps:
            yield Row(say("label-lamp"), Say("bright-lamp-told", lamp))
            if len(lit.lamps) > 1:
                yield Row(say("label-gives"), Say("bright-gives", lamp))
        yield Row(say("label-patch"), Say("bright-patch", lit))
        if lit.cool is not None:
            yield Row(say("label-cool"), Say("bright-cool", lit))
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
    if facts.lit is not None:
        yield Say("bright-why-lamp", facts.lit)
        yield from dict.fromkeys(said for lamp in facts.lit.lamps for said in lamp.assumed)
        if len(facts.lit.lamps) > 1:
            yield say("why-several")
        if facts.lit.left_out:
            yield Say("bright-why-left-out", facts.lit)
    if facts.asked is not Asked.LAMP:
        yield say.by("why", facts.asked)
    yield say("why-eye")
    yield Say("bright-why-plants", facts.plants)


def _care(facts: Bright, say: Says) -> Iterator[Care]:
    lit = facts.lit
    if facts.is_pale:
        yield Care(say("care-pale"), say("care-pale-short"), Weight.STEP)
    if lit is not None and lit.is_behind_glass:
        yield Care(say("care-glass"), say("care-glass-short"), Weight.STEP)
    yield from _uv_care(lit, say)
    yield Care(say("care-heat"))
    yield Care(say("care-eyes"))


def _uv_care(lit: BrightLit | None, say: Says) -> Iterator[Care]:
    if lit is None:
        yield Care(say("care-lux"), say("care-lux-short"), Weight.STEP)
        return
    if lit.has_led:
        yield Care(say("care-led"), say("care-led-short"), Weight.STEP)
    if lit.has_doubtful_uv:
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
        if facts.life is not None:
            yield from _levels(facts.life)
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
        "bright lamps:24W led bar + 75W halogen flood distance:16in animal:bearded dragon",
        "bright reading:6000 lux by:phone animal:bearded dragon latitude:27S month:December",
    ),
    guide=("light-and-colour", "sun-and-shade"),
)
