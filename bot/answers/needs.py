"""What an animal needs, every figure with who says so, and how to find out what yours has."""

from collections.abc import Iterator

from bot.answers.animals import animal_asked, known_by, of_animal
from bot.answers.figures import length, number, temperature, temperature_range, uvi_range
from bot.answers.heat_parts import HEAT_CAUTIONS, Kept, body_rows
from bot.answers.linking import page_links, source_lines
from bot.answers.targets import Wanted, own_readings, subject_name, wanted_by
from bot.answers.temps_picture import temps_picture
from bot.answers.uv_parts import UV_CAUTIONS
from bot.language.quantities import Units
from bot.language.words import join_line
from bot.preferences import Context
from bot.queries.needs import NeedsQuery
from bot.reply import Picture, Reply, Row, Value
from calc.animals import Animal, Target
from calc.setup.bodies import body_of
from calc.setup.measured import measured_set_up

__all__ = ["answer_needs"]

_GUIDE = ("planning-a-set-up", "measuring-temperatures", "reading-a-uv-meter", "nights")
_SHELF_M = 0.3048


def answer_needs(query: NeedsQuery, context: Context) -> Reply:
    """Answer with every target of the animal; what is not known is named as such."""
    animal = animal_asked(query.animal, context)
    wanted = wanted_by(animal, context.units)
    set_up = measured_set_up((), animal)
    return Reply(
        command="needs",
        status="ok",
        title=f"What {of_animal(animal)} needs",
        answer=_sentence(animal, context.units),
        values=tuple(_value(w, w.target) for w in wanted if w.target is not None),
        rows=tuple(_rows(animal, wanted, context.units)),
        steps=_steps(animal, context.units),
        cautions=(*UV_CAUTIONS[:2], *HEAT_CAUTIONS),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(_sources(animal, wanted)),
        picture=Picture.later(temps_picture, set_up, Kept(animal, ()), context.units),
        set_up=set_up,
    )


def _sentence(animal: Animal, units: Units) -> str:
    """Return the targets a newcomer needs first, without their best values and their sources."""

    def span(target: Target) -> str:
        return temperature_range(target.low, target.high, units)

    told = []
    if animal.uvi is not None:
        place = "where it basks" if animal.basking else "at its brightest place"
        told.append(f"UVI {uvi_range(animal.uvi.low, animal.uvi.high)} {place}")
    if animal.basking_surface_c is not None:
        kind = "basking" if animal.basking else "warmest"
        told.append(f"a {kind} surface of {span(animal.basking_surface_c)}")
    if animal.cool_air_c is not None:
        told.append(f"a cool end of {span(animal.cool_air_c)}")
    if animal.night_floor_c is not None:
        warm_enough = temperature(animal.night_floor_c.high, units)
        told.append(f"a dark night without heat while it stays above {warm_enough}")
    if animal.light_hours is not None:
        ends = dict.fromkeys(map(number, (animal.light_hours.low, animal.light_hours.high)))
        told.append(f"{' to '.join(ends)} hours of light")
    whom = of_animal(animal)
    if not told:
        return f"Too little is known here of what {whom} wants: ask a reptile vet."
    return f"{whom[0].upper()}{whom[1:]} wants {'; '.join(told)}."


def _value(wanted: Wanted, target: Target) -> Value:
    return Value(
        name=wanted.name, low=target.low, best=target.aim, high=target.high, unit=wanted.unit
    )


def _rows(animal: Animal, wanted: tuple[Wanted, ...], units: Units) -> Iterator[Row]:
    for one in wanted:
        known = f" ({known_by(one.target)})" if one.target is not None else ""
        yield Row(label=one.label, text=f"{one.text}{known}")
    if animal.zone is not None:
        zone = animal.zone
        yield Row(label="UV zone", text=f"{zone.number} of 4: {zone.description}")
    for other in animal.disagreements:
        yield Row(label=f"Others say of the {_lower(subject_name(other.about))}", text=other.text)
    yield from body_rows(animal, units)


def _lower(heading: str) -> str:
    return heading if heading.startswith("UV") else heading[0].lower() + heading[1:]


def _steps(animal: Animal, units: Units) -> tuple[str, ...]:
    """Return what to measure and what to ask next, each with a question that works."""
    name = animal.name
    shelf = length(_SHELF_M, units).partition(" (")[0].replace(" ", "")
    tube = join_line("tube", {"distance": shelf, "screen": "none", "animal": name})
    box = "48x24x24in" if units is Units.IN else "120x60x60cm"
    air = ("70F", "62F") if units is Units.IN else ("21C", "17C")
    plan = {"animal": name, "enclosure": box, "lid": "full mesh", "room": air[0], "night": air[1]}
    of_uv = (
        f"For the UV ask, with your own distance and screen: {tube}",
        f"Nothing bought yet? Ask, with your own box and room: {join_line('plan', plan)}",
    )
    # Of an animal that a group added neither may be known, and a plan needs its body.
    told = 0 if animal.uvi is None else 2 if body_of(animal.slug) else 1
    return (
        (
            "Measure the surface where it lies with an infrared gun, and the cool end with a "
            f"digital probe. Then ask, with your own readings: {own_readings(animal, units)}"
        ),
        *of_uv[:told],
        (
            "Measure again after every change: these are ranges to aim for, and your own meters "
            "and your animal decide."
        ),
    )


def _sources(animal: Animal, wanted: tuple[Wanted, ...]) -> Iterator[str]:
    yield from (one.target.source for one in wanted if one.target is not None)
    if animal.zone is not None:
        yield animal.zone.source
    yield from (other.source for other in animal.disagreements)
    yield from (body.source for body in animal.bodies)
