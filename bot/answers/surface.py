"""What a surface really is, from what the infrared gun shows."""

from bot.answers.figures import length, temperature, temperature_range
from bot.answers.heat_parts import HEAT_CAUTIONS
from bot.answers.linking import page_links, source_lines
from bot.dangers.past_limits import alarms_past
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.heat import SurfaceQuery
from bot.questions.shared import limits_for
from bot.reply import Reply, Row, Value
from calc.heat.thermometer import (
    LEAST_SETTING,
    USUAL_SETTING,
    Emissivity,
    Surface,
    Unreadable,
    corrected_reading,
    emissivity_of,
)
from calc.limits import Met
from calc.uncertainty import Estimate

__all__ = ["answer_surface"]

_GUIDE = ("measuring-temperatures", "the-basking-spot")
_ROOM_C = 24.0
_AWAY_M = 0.30
_SMALL_K = 0.6
_ONE_PERCENT = 0.01
_REFUSALS = {
    Unreadable.BARE_METAL: (
        (
            "An infrared gun cannot read bare metal: it mirrors its surroundings, so the number "
            "means nothing."
        ),
        (
            (
                "Stick a piece of dull masking tape or paint a matt patch on the metal, wait ten "
                "minutes, and read that."
            ),
            "Better still, put a stone or tile there: metal under a lamp burns.",
        ),
    ),
    Unreadable.THROUGH_GLASS: (
        "An infrared gun cannot see through glass: it read the pane and nothing behind it.",
        ("Open the door or lift the lid, move the animal aside, and read the surface itself.",),
    ),
}


def answer_surface(query: SurfaceQuery, context: Context) -> Reply:
    """Answer with the corrected temperature, or refuse and say how to read it instead."""
    units = context.units
    surface, shown_c = Surface(query.material), query.reading.low
    air_c, setting = _air_and_setting(query)
    found = corrected_reading(shown_c, surface, air_c, setting, query.glass == "yes")
    known = emissivity_of(surface)
    if isinstance(found, Unreadable):
        return _refusal(found, known, context)
    return Reply(
        command="surface",
        status="ok",
        title=f"An infrared gun on {known.name}",
        answer=_answer(shown_c, found, known, units),
        values=(
            Value.of("surface", found, "degC"),
            Value.of("emissivity", known.share, "1"),
        ),
        rows=_rows(query, found, known, units),
        steps=_steps(units),
        alarms=alarms_past(limits_for("", context), _met(surface, found)),
        cautions=(
            "Never through glass, never on bare metal, and keep the laser out of eyes.",
            *HEAT_CAUTIONS,
        ),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(("ir_thermography", known.source)),
    )


def _met(surface: Surface, found: Estimate) -> Met:
    # Of its range the upper end counts: wood there would go on to burn.
    wood_c = found.high if surface is Surface.WOOD else None
    return Met(surface_c=found.best, wood_c=wood_c)


def _rows(query: SurfaceQuery, found: Estimate, known: Emissivity, units: Units) -> tuple[Row, ...]:
    air_c, setting = _air_and_setting(query)
    guessed = ", taken as a room because you gave no air" if query.air is None else ""
    share = known.share
    return (
        Row(label="Shown", text=temperature(query.reading.low, units)),
        Row(
            label="Really",
            text=f"{temperature_range(found.low, found.high, units)}, before the gun's own doubt "
            "of a degree or two",
        ),
        Row(
            label="Emissivity",
            text=f"{known.name} {share.low:.2f} to {share.high:.2f}, the gun is taken to be set to "
            f"{setting:.2f}",
        ),
        Row(label="Mirrored", text=f"{temperature(air_c, units)}{guessed}"),
    )


def _air_and_setting(query: SurfaceQuery) -> tuple[float, float]:
    """Return what the surface mirrors [degC] and the gun's emissivity setting [1]."""
    air_c = _ROOM_C if query.air is None else query.air.low
    return air_c, USUAL_SETTING if query.setting is None else _setting(query.setting)


def _setting(typed: float) -> float:
    """Return the setting [1]; a gun shows 0.95, which a percentage takes for less than one."""
    setting = typed * 100.0 if typed <= _ONE_PERCENT else typed
    if setting < LEAST_SETTING:
        raise NotUnderstoodError(
            f"{setting:.0%}",
            f"the gun's own setting, from {LEAST_SETTING:.0%} to 100%, as it shows it",
            "setting:95%",
            "setting",
        )
    return setting


def _steps(units: Units) -> tuple[str, ...]:
    return (
        (
            f"Shoot straight down from about {length(_AWAY_M, units)}, from the side away from "
            "the lamp: beside the lamp the gun sees the lamp's mirror image."
        ),
        "Take the highest of three readings where the animal lies.",
        (
            "To be sure, put a piece of dull masking tape on the spot, wait ten minutes, and "
            "read the tape."
        ),
    )


def _answer(shown_c: float, found: Estimate, known: Emissivity, units: Units) -> str:
    span = temperature_range(found.low, found.high, units)
    if abs(found.best - shown_c) <= _SMALL_K:
        return (
            f"On {known.name} the gun is about right: {temperature(shown_c, units)} shown is "
            f"really {span}."
        )
    way = "hotter" if found.best > shown_c else "cooler"
    return (
        f"On {known.name} the surface is a little {way} than shown: "
        f"{temperature(shown_c, units)} is really about {temperature(found.best, units)}, within "
        f"{span}."
    )


def _refusal(reason: Unreadable, known: Emissivity, context: Context) -> Reply:
    answer, steps = _REFUSALS[reason]
    return Reply(
        command="surface",
        status="problem",
        title="This reading cannot be trusted",
        answer=answer,
        steps=steps,
        cautions=HEAT_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(("ir_thermography", known.source)),
    )
