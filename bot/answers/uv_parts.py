"""What every answer about UV shares: whose range, which lamp, what is between, how sure."""

from dataclasses import dataclass

from bot.answers.animals import GROUPS_OWN, animal_asked, doubtful_rows, known_by, of_animal
from bot.answers.figures import length, number, percent, uvi_range, uvi_wanted
from bot.answers.length_asked import length_asked
from bot.answers.together import COUNTED, added_told
from bot.answers.tube_length import length_known, shortest_told
from bot.answers.uv_limits import check_it_cannot_harm
from bot.kept.group import OwnLamp
from bot.language import screens as typed
from bot.language.errors import NotUnderstoodError
from bot.language.lamps import Fixture as TypedFixture
from bot.language.lamps import OtherLamp, TubeStrength
from bot.language.quantities import Measure, Units
from bot.language.sizes import Size
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.queries.options import OwnTube
from bot.reply import Row
from calc.animals import Subject
from calc.uncertainty import Doubt, Estimate
from calc.unknowns import Whole, combine
from calc.uv.lamp import CLASS_STRENGTH_PERCENT, Fixture, Lamp, OwnConstant, OwnPoint, of_length
from calc.uv.lamp_unknowns import Cause, screen_effects
from calc.uv.lengths import LengthKnown
from calc.uv.placement import HIGHEST_UVI, Spot
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave, open_area
from calc.uv.tube import STANDARD_T5_HO

__all__ = [
    "UV_CAUTIONS",
    "Wish",
    "doubt_row",
    "fixture_name",
    "fixture_of",
    "lamp_asked",
    "lamp_name",
    "lamp_row",
    "own_lamp",
    "passing_estimate",
    "screen_asked",
    "screen_phrase",
    "screen_row",
    "screen_row_asked",
    "set_up_phrase",
    "wish_asked",
]

UV_CAUTIONS = (
    "Do not look into the lit tube, and switch it off before you reach in.",
    "Give shade: the animal must be able to leave the UV.",
    "A tube that is unknown, older than a year or stronger than 12 % needs a UV index meter.",
)
# A single wanted UVI is met within this much either way.
_ABOUT_UVI = 0.5
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
    if uvi is not None:
        return _wish_given(uvi, animal, context)
    kept = animal_asked(animal, context)
    if kept.uvi is None:
        raise NotUnderstoodError(
            kept.name,
            "a UV index range, because none is known here for that animal: "
            "give one that a keeper or reptile vet you trust named",
            "uvi:1-2",
            "animal",
        )
    wanted = f"UVI {uvi_range(kept.uvi.low, kept.uvi.high)} ({known_by(kept.uvi)})"
    against = doubtful_rows(kept, Subject.ZONE, Subject.UVI)
    return Wish(
        kept.uvi.low,
        kept.uvi.high,
        of_animal(kept),
        Row(label="Wanted", text=" ".join([f"{wanted}.", *against]) if against else wanted),
        (kept.uvi.source, *(d.source for d in kept.disagreements_about(Subject.ZONE, Subject.UVI))),
    )


def _wish_given(uvi: tuple[float, float], animal: str, context: Context) -> Wish:
    low, high = uvi
    if not 0.0 < high <= HIGHEST_UVI:
        raise NotUnderstoodError(
            uvi_wanted(low) if low == high else uvi_range(low, high),
            f"a UV index above 0 and up to {number(HIGHEST_UVI)}",
            "uvi:3-5",
            "uvi",
        )
    told = f"UVI {uvi_range(low, high)}, as you gave it"
    if low == high:
        low, high = max(0.0, low - _ABOUT_UVI), min(high + _ABOUT_UVI, HIGHEST_UVI)
        told = f"about UVI {uvi_wanted(uvi[0])}, taken as {uvi_range(low, high)}"
    check_it_cannot_harm((low, high), animal, context)
    return Wish(low, high, "the animal", Row(label="Wanted", text=told), ())


def lamp_asked(
    tube: TubeStrength | OtherLamp | None,
    reflector: TypedFixture | None,
    tube_length: Measure | None,
    age: Measure | None,
    enclosure: Measure | Size | None = None,
) -> Lamp:
    """Return the lamp that the options describe, or the group's own that they name.

    Where a strength or a fixture was not told, readings take their place, and neither counts; so
    it is with a lamp that is no T5 HO tube, which has no figures without them. Where no length
    was told, the lamp may be as long as fits the enclosure.
    """
    if isinstance(tube, OwnTube):
        return own_lamp(tube.lamp)
    lamp = Lamp(
        tube.percent if isinstance(tube, TubeStrength) else CLASS_STRENGTH_PERCENT,
        fixture_of(reflector) if reflector else Fixture.POLISHED,
        age_s=None if age is None else age.low,
    )
    return of_length(lamp, length_asked(tube_length, enclosure))


def own_lamp(kept: OwnLamp) -> Lamp:
    """Return the engine's lamp for one of the group's own."""
    doubt = Doubt(Cause.READINGS, kept.doubt_factor, GROUPS_OWN)
    own = OwnConstant(kept.constant_uvi_m, doubt)
    return Lamp(CLASS_STRENGTH_PERCENT, Fixture.POLISHED, kept.lit_length_m, own=own)


def fixture_of(typed_fixture: TypedFixture) -> Fixture:
    """Return the fixture of the engine for a typed one."""
    return Fixture.POLISHED if typed_fixture is TypedFixture.POLISHED else Fixture.PLAIN


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


def screen_asked(screen: typed.Screen | typed.Pane | None) -> Screen:
    """Return the screen of the engine for a typed one.

    One that was not told is in the readings already, and nothing more is taken off.
    """
    match screen:
        case typed.Pane(_, text):
            raise NotUnderstoodError(text, typed.NO_PANE, "screen:none", "screen")
        case typed.NoScreen() | None:
            return NoScreen()
        case typed.Blocks(fraction):
            return FlatScreen(1.0 - fraction)
        case typed.Passes(fraction):
            return FlatScreen(fraction)
        case typed.Weave(mesh_x, mesh_y, wire):
            return Weave(mesh_x, mesh_y, wire)


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


def passing_estimate(spot: Spot, screen: Screen) -> Estimate:
    """Return the share [1] that the screen passes at a spot, with the doubt of the screen."""
    whole = combine(screen_effects(screen)).around(spot.screen_transmission)
    return Estimate(whole.low, whole.best, min(1.0, whole.high))
