"""What every answer about UV shares: whose range, which lamp, what is between, how sure."""

from dataclasses import dataclass

from bot.answers.animals import GROUPS_OWN, doubtful_rows, known_by, of_animal
from bot.answers.figures import length, number, percent, uvi_range, uvi_wanted
from bot.answers.together import COUNTED, added_told
from bot.answers.tube_length import length_known, shortest_told
from bot.answers.uv_asked import Wanted, wanted_asked
from bot.language import screens as typed
from bot.language.lamps import OtherLamp, TubeStrength
from bot.language.quantities import Units
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.queries.options import OwnTube
from bot.reply import Row
from calc.animals import Subject
from calc.unknowns import Whole
from calc.uv.lamp import Fixture, Lamp, OwnPoint
from calc.uv.lamp_unknowns import Cause
from calc.uv.lengths import LengthKnown
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave, open_area
from calc.uv.tube import STANDARD_T5_HO

__all__ = [
    "UV_CAUTIONS",
    "Wish",
    "doubt_row",
    "fixture_name",
    "lamp_name",
    "lamp_row",
    "screen_phrase",
    "screen_row",
    "screen_row_asked",
    "set_up_phrase",
    "wish_asked",
    "wish_told",
]

UV_CAUTIONS = (
    "Do not look into the lit tube, and switch it off before you reach in.",
    "Give shade: the animal must be able to leave the UV.",
    "A tube that is unknown, older than a year or stronger than 12 % needs a UV index meter.",
)
_TAKEN_AS_T5_HO = "taken as a T5 HO tube, as no kind was told"
_WORDS = {
    Cause.LAMP: "lamps of one class differ",
    Cause.LABEL: "this strength lies outside the classes the model was fitted to",
    Cause.CLASS: "the distances that the class was fitted to scatter",
    Cause.RULES: "for how long a tube those distances hold is not known",
    Cause.FIXTURE: "fixtures differ",
    Cause.AGE: "tubes fade with age, and a new one is stronger for its first 100 hours",
    Cause.TEMPERATURE: "warmth changes the output",
    Cause.TAPE: "a tape measure is off by a centimetre",
    Cause.SCREEN: "screens differ in wire, dirt and shine",
    Cause.READINGS: "your readings scatter and a hand meter may be off",
    Cause.LENGTH: "how long the tube is was not told, and the length counts",
    Cause.SPREAD: "reflectors spread UV sideways in their own way",
}


@dataclass(frozen=True, slots=True)
class Wish:
    """The UVI range wanted, for whom, and how it is known."""

    low: float
    high: float
    whom: str
    row: Row
    sources: tuple[str, ...]


def wish_asked(animal: str, uvi: tuple[float, float] | None, context: Context) -> Wish:
    """Return the range that was given, or else the animal's own."""
    return wish_told(wanted_asked(animal, uvi, context))


def wish_told(wanted: Wanted) -> Wish:
    """Return a wanted range in words."""
    kept, low, high = wanted.animal, wanted.low, wanted.high
    if kept is None or kept.uvi is None:
        assert wanted.given is not None
        told = f"UVI {uvi_range(low, high)}, as you gave it"
        if wanted.given[0] == wanted.given[1]:
            told = f"about UVI {uvi_wanted(wanted.given[0])}, taken as {uvi_range(low, high)}"
        return Wish(low, high, "the animal", Row(label="Wanted", text=told), ())
    text = f"UVI {uvi_range(low, high)} ({known_by(kept.uvi)})"
    against = doubtful_rows(kept, Subject.ZONE, Subject.UVI)
    return Wish(
        low,
        high,
        of_animal(kept),
        Row(label="Wanted", text=" ".join([f"{text}.", *against]) if against else text),
        (kept.uvi.source, *(d.source for d in kept.disagreements_about(Subject.ZONE, Subject.UVI))),
    )


def fixture_name(fixture: Fixture) -> str:
    """Return a fixture as a sentence needs it."""
    return "polished reflector" if fixture is Fixture.POLISHED else "plain fixture"


def lamp_name(lamp: Lamp) -> str:
    """Return a lamp as a sentence needs it."""
    if lamp.own is not None:
        if lamp.own.doubt.source == GROUPS_OWN:
            return "the group's own lamp, by its readings"
        return "your own lamp, as you read it"
    many, each = (f"{COUNTED[lamp.count]} ", " each") if lamp.count > 1 else ("", "")
    strength = number(lamp.strength_percent, 0.1)
    return f"{many}T5 HO, {strength} %{each}, {fixture_name(lamp.fixture)}"


def set_up_phrase(lamp: Lamp, screen: Screen, asked: typed.Screen | None) -> str:
    """Return a lamp and what is between, as a sentence needs them.

    ``asked`` is the screen as it was told; None where the readings were taken through it.
    """
    between = screen_phrase(screen) if asked is not None else "with whatever is between now"
    return f"{lamp_name(lamp)}{'' if lamp.own is None else ','} {between}"


def lamp_row(
    lamp: Lamp, tube: TubeStrength | OtherLamp | None, units: Units, kind: UvLamp | None = None
) -> Row:
    """Return how the tube was taken; ``kind`` is what it was told to be, if it was."""
    told = [lamp_name(lamp)]
    if lamp.own is None and not (kind or (isinstance(tube, TubeStrength) and tube.is_told)):
        told.append(_TAKEN_AS_T5_HO)
    kept = isinstance(tube, OwnTube)
    if lamp.own is not None:
        whose = "the" if kept else "your"
        told.append(f"its strength, fixture and age do not count, {whose} readings hold them")
    if lamp.count > 1:
        told.append(added_told(lamp, units))
    if isinstance(tube, TubeStrength) and tube.older_scale:
        told.append(f"“{tube.text}” read as the older scale, the {number(tube.percent)} % class")
    if isinstance(lamp.own, OwnPoint):
        return Row(label="Lamp", text="; ".join(told))
    lit = f"lit part {length(lamp.lit_length_m, units)}, as it was read"
    told.append(lit if kept else length_known(lamp, units))
    if lamp.age_s is None and lamp.own is None:
        told.append("age unknown")
    given = lamp.length_known is LengthKnown.TOLD and not kept
    if given and lamp.lit_length_m < STANDARD_T5_HO[0].lit_length_m:
        told.append(f"{shortest_told(units)}, so look whether yours is one")
    return Row(label="Tube", text="; ".join(told))


def screen_phrase(screen: Screen) -> str:
    """Return what is between, as a sentence needs it."""
    match screen:
        case NoScreen():
            return "with nothing between"
        case FlatScreen(transmission):
            return f"through a screen that blocks {percent(1.0 - transmission)}"
        case Weave():
            return f"through a mesh with {percent(open_area(screen))} open area"


def screen_row(screen: Screen, transmission: float) -> Row:
    """Return what the screen takes at this place, and why a weave takes more than its wires."""
    match screen:
        case NoScreen():
            text = "nothing is between, nothing is taken"
        case FlatScreen():
            text = (
                f"takes {percent(1.0 - transmission)} of the UV, as you gave it; give or take 15 %"
            )
        case Weave():
            text = (
                f"takes about {percent(1.0 - transmission)} of the UV here, give or take 15 % of "
                f"what passes: {percent(1.0 - open_area(screen))} is wire seen straight on, "
                "the rest is lost because most light comes through at a slant"
            )
    return Row(label="Screen", text=text)


def doubt_row(whole: Whole, *, contradict: bool = False) -> Row:
    """Return why the UVI is a range, the largest doubt first.

    ``contradict``: the lamp's own readings do not fit one tube.
    """
    ends = [(e.unknown, *e.ends) for e in whole.effects]
    sized = [(unknown, max(high - 1.0, 1.0 - low)) for unknown, low, high in ends]
    ordered = sorted(sized, key=lambda pair: -pair[1])
    told = "; ".join(f"{_WORDS[Cause(u.name)]} (by about {percent(x)})" for u, x in ordered)
    read = any(unknown.name == Cause.READINGS for unknown, _ in sized)
    more = "took most of it" if read else "takes most of this"
    groups = any(unknown.source == GROUPS_OWN for unknown, _ in sized)
    whose = "The group's readings" if groups else "Your own readings"
    whose = whose if read else "A UV index meter"
    end = "They contradict each other: read again." if contradict else f"{whose} {more} away."
    return Row(label="Why a range", text=f"{told}. {end}")


def screen_row_asked(asked: typed.Screen | None, screen: Screen, transmission: float) -> Row:
    """Return what the screen takes, or that the readings hold it."""
    if asked is not None:
        return screen_row(screen, transmission)
    return Row(
        label="Screen",
        text="not told, so taken as it was when you read: what is between now stays there. Where "
        "a screen is added or taken away, read again",
    )
