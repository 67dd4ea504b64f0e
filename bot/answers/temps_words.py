"""The judgement of readings in words: one sentence a step, plain enough for a first lizard."""

from bot.answers.figures import difference, temperature
from bot.answers.verdicts import verdict_word
from bot.language.quantities import Units
from calc.heat.readings import Doubtful, Finding
from calc.heat.steps import Step
from calc.quantities import Quantity

__all__ = ["doubt_text", "finding_clause", "missing_text", "place_name", "step_text"]

_DO_AND_WHY: dict[Step, tuple[str, str]] = {
    Step.SWITCH_LAMP_OFF: (
        "switch the basking lamp off now and let everything cool down",
        (
            "a surface this hot can burn, and without a cool place an animal cannot save itself. "
            "If yours gapes, lies limp or has a burn, call a reptile vet at once"
        ),
    ),
    Step.WARM_IT_TONIGHT: (
        "move the animal to a warmer room for the nights",
        (
            "a night this cold harms it, and a heater in the box may not be enough. If it is "
            "limp or does not move, warm it slowly and call a reptile vet at once"
        ),
    ),
    Step.COOL_DOWN_IF_TRUE: (
        "if it really is so hot, switch the lamp off, shade the box and cool the room",
        "without a cool place an animal cannot save itself",
    ),
    Step.WAIT_AND_READ_AGAIN: (
        "leave everything as it is and read again when the lamp has been on for 2 to 3 hours",
        "stone, walls and air are still warming up, so this is not yet a reading",
    ),
    Step.USE_TRUSTED_THERMOMETER: (
        "measure again with an infrared gun for the surface and a digital probe for the air",
        "a dial or strip can be wrong by more than your animal can bear",
    ),
    Step.MEASURE_SURFACE_WITH_GUN: (
        "read the basking surface with an infrared gun",
        "a probe that lies on it reads half air and half lamp",
    ),
    Step.MEASURE_AIR_WITH_PROBE: (
        "read the air with a digital probe at the animal's height",
        "a gun shows the surface it points at and never the air",
    ),
    Step.CHECK_PROBE_PLACES: (
        "check which reading is which, and where each one was taken",
        (
            "the cool end cannot be warmer than the end with the lamp, so two readings "
            "were swapped, or sun or a radiator heats that end"
        ),
    ),
    Step.MOVE_PROBE_OUT_OF_BEAM: (
        "move the warm-end probe out of the beam, into shade at the animal's height",
        "in the beam it reads the lamp and not the air",
    ),
    Step.MEASURE_SURFACE: (
        "read the basking surface with an infrared gun, right where the animal lies",
        "it is the most important of all the readings",
    ),
    Step.MEASURE_COOL_END: (
        "read the air at the far, cool end with a digital probe at the animal's height",
        "it comes next after the basking surface",
    ),
    Step.LOWER_LAMP: (
        "bring the lamp a little nearer to the basking spot",
        (
            "that warms the spot and hardly changes the far end. Never nearer than its label "
            "allows, nor where the animal can touch it. The question basking says how far"
        ),
    ),
    Step.RAISE_LAMP: (
        "raise the lamp a little",
        "that cools the spot and hardly changes the far end. The question basking says how far",
    ),
    Step.MORE_POWER: (
        "use the next stronger lamp, if its holder is marked for it",
        "moving a lamp only shifts the warmth about; a stronger one warms the whole box",
    ),
    Step.LESS_POWER: (
        "use the next smaller lamp, or dim it by no more than 20 %",
        "that takes warmth out of the whole box; then set the spot again by the lamp's distance",
    ),
    Step.MOVE_LAMP_INWARD: (
        "move the lamp a little towards the middle, at the same height",
        (
            "the cool end gets more of its warmth and the spot stays as hot. Move the stone and "
            "the UV tube with it"
        ),
    ),
    Step.SECOND_WEAKER_LAMP: (
        "add a second, weaker heat lamp nearer to the middle",
        "it lifts the cool end without making the basking spot hotter",
    ),
    Step.MORE_AIR: (
        "let more air through, by a vent or by mesh in part of a solid lid",
        "warm air leaves at the top and the far end cools first",
    ),
    Step.LESS_AIR: (
        "close more of the lid, away from the lamps, with something that cannot burn",
        "much of the warmth leaves through the mesh",
    ),
    Step.COOLER_ROOM: (
        "cool the room: shade the window, let cool air in, or move the box",
        "no box is cooler than the room it stands in",
    ),
    Step.WARMER_ROOM: (
        "warm the room a little",
        "the whole box gets warmer with it, and no lamp has to do it alone",
    ),
    Step.LONGER_ENCLOSURE: (
        "think about a longer enclosure",
        "in a short one both ends are nearly alike, whatever you do with the lamp",
    ),
    Step.CHECK_WARM_PROBE: (
        "check that the warm-end probe hangs in shade, out of the beam",
        "the warm end is mostly an early warning, and the spot and the cool end count for more",
    ),
    Step.WATCH_WARM_END: (
        "change nothing else yet, and read the warm end again tomorrow",
        "as long as the spot and the cool end are right, the animal can choose",
    ),
    Step.HEAT_THE_NIGHT: (
        "give heat without light at night, on a simple on/off thermostat",
        "this night is colder than the animal stands. The question night says how much",
    ),
    Step.CONSIDER_NIGHT_HEAT: (
        "decide about the night with your vet or an experienced keeper",
        "keepers differ about a night like this; a young or ill animal wants the warmer side",
    ),
    Step.COOLER_NIGHT: (
        "let the night be cooler: every heater off with the lights",
        "a night warmer than the cool end's day gives no rest",
    ),
    Step.MEASURE_AGAIN: (
        "leave it and measure again",
        "it is off by no more than a thermometer may be, so there is nothing to change yet",
    ),
    Step.LEAVE_AS_IT_IS: (
        "leave everything as it is",
        "the readings you gave are right; read again when the season or the room changes",
    ),
}
_PLACES = {
    Quantity.BASKING_SURFACE: "basking surface",
    Quantity.COOL_AIR: "cool end",
    Quantity.WARM_AIR: "warm end",
    Quantity.NIGHT_AIR: "night",
}
_MISSING = {
    Quantity.BASKING_SURFACE: "the basking surface, with an infrared gun",
    Quantity.COOL_AIR: "the air at the cool end, with a digital probe at the animal's height",
    Quantity.WARM_AIR: "the air at the warm end, with a digital probe out of the beam",
    Quantity.NIGHT_AIR: "the lowest of the night, with a thermometer that keeps it",
}
_DOUBTS = {
    Doubtful.NOT_YET_A_READING: "the lamp had been on for less than two hours: what is too low or "
    "right now may still rise; what is too hot already is too hot",
    Doubtful.LAMP_TIME_NOT_SAID: "you did not say how long the lamp had been on; before 2 to 3 "
    "hours none of this counts yet",
    Doubtful.DIAL_NOT_TRUSTED: "a dial or strip gauge is not to be trusted",
    Doubtful.PROBE_FOR_SURFACE: "a probe does not read a surface",
    Doubtful.GUN_FOR_AIR: "an infrared gun does not read the air",
    Doubtful.COOL_END_ABOVE_SURFACE: "the cool end is said to be as hot as the basking surface or "
    "hotter, which cannot be",
    Doubtful.COOL_END_ABOVE_WARM_END: "the cool end is said to be warmer than the warm end, which "
    "cannot be",
    Doubtful.WARM_PROBE_IN_BEAM: "the warm end reads so hot that its probe is probably in the beam",
}


def step_text(step: Step) -> str:
    """Return the step with its reason, as a line of its own."""
    do, why = _DO_AND_WHY[step]
    return f"{do[0].upper()}{do[1:]}: {why}."


def place_name(place: Quantity) -> str:
    """Return a place as a label."""
    return _PLACES[place].capitalize()


def missing_text(places: tuple[Quantity, ...]) -> str:
    """Return what is still to be measured, in order of importance."""
    return "; ".join(_MISSING[place] for place in places)


def doubt_text(doubts: tuple[Doubtful, ...]) -> str:
    """Return what speaks against the readings."""
    return "; ".join(_DOUBTS[doubt] for doubt in doubts)


def finding_clause(finding: Finding, units: Units) -> str:
    """Return the verdict on one reading as a clause."""
    what, shown = _PLACES[finding.place], temperature(finding.reading_c, units)
    off = difference(finding.judged.off_by if finding.judged else 0.0, units)
    if finding.judged is None:
        return f"the {what} is {shown}, for which I know no target"
    if finding.keepers_differ:
        return f"keepers differ about a {what} of {shown}"
    if finding.is_fine:
        return f"the {what} is right at {shown}"
    if finding.is_unsure:
        word = verdict_word(finding.judged)
        return f"the {what} at {shown}: {word} ({off} off, and a thermometer may be as much)"
    hot = "hot" if finding.place is Quantity.BASKING_SURFACE else "warm"
    return f"the {what} is {off} too {'cool' if finding.is_low else hot} at {shown}"
