"""What a question in free words still lacks: in plain words, with where to find it out.

The example is the asker's own sentence with the missing words, if it is then surely understood;
else the question as a line with options, which always is.
"""

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field

from bot.answers.examples import examples_for, figures_of
from bot.answers.linking import page_links
from bot.answers.routes.offered import example_of
from bot.answers.routes.questions import QUESTIONS
from bot.language.quantities import Units
from bot.language.unsure import NOT_SURE
from bot.language.words import join_line
from bot.preferences import Context
from bot.reply import Reply, Row

__all__ = ["Lacking", "still_needed"]


@dataclass(frozen=True, slots=True)
class _Thing:
    """One thing that is missing: what it is, where to find it out, words that tell it."""

    what: str
    page: str
    inches: str
    cm: str = ""

    def told(self, units: Units, examples: Mapping[str, str]) -> str:
        """Return words that tell it, in the asker's units, with figures that suit the animal."""
        words = self.cm if self.cm and units is Units.CM else self.inches
        return words.format(**figures_of(examples, units))


_TUBE_DISTANCE = _Thing(
    "how far it is from the tube to your animal's back",
    "measuring-the-distance",
    "{distance} inches from the tube to its back",
    "{distance} cm from the tube to its back",
)
_LAMP_DISTANCE = _Thing(
    "how far it is from the front of the lamp to the basking surface",
    "the-basking-spot",
    "lamp 10 inches from the basking surface",
    "lamp 25 cm from the basking surface",
)
_THINGS = {
    "tube": _Thing(
        "how strong the tube is: it is printed on one end, such as 12% or 5.0",
        "measuring-the-distance",
        "{tube} tube",
    ),
    "reflector": _Thing(
        "what is behind the tube: shiny metal like a mirror (polished), or something white or "
        "dull (plain)",
        "reflectors",
        "polished reflector",
    ),
    "screen": _Thing(
        "whether there is mesh between the tube and your animal, and how much it blocks",
        "screens",
        "no mesh",
    ),
    "enclosure": _Thing(
        "how big the box is inside: length, depth and height",
        "planning-a-set-up",
        "enclosure 48x24x24 in",
        "enclosure 120x60x60 cm",
    ),
    "material": _Thing(
        "what the walls are made of: glass, wood, PVC or melamine", "the-cool-end", "glass tank"
    ),
    "lid": _Thing("whether the lid is mesh or solid", "the-cool-end", "mesh lid"),
    "room": _Thing("how warm the room is", "measuring-temperatures", "room {room}", "room {room}"),
    "surface": _Thing(
        "how hot the basking surface is now, read with an infrared gun",
        "measuring-temperatures",
        "basking surface {surface}",
        "basking surface {surface}",
    ),
    "air": _Thing(
        "how warm the air beside the basking spot is, out of the beam",
        "measuring-temperatures",
        "warm side air {air}",
        "warm side air {air}",
    ),
    "reading": _Thing(
        "what the infrared gun shows",
        "measuring-temperatures",
        "gun shows {reading}",
        "gun shows {reading}",
    ),
    "value": _Thing(
        "which length or temperature, with its unit", "how-to-ask", "convert 14 in", "convert 35 cm"
    ),
    "readings": _Thing(
        "what the meter shows, and at what distance",
        "how-to-take-a-reading",
        "UVI {uvi_at} in",
        "UVI {uvi_at} cm",
    ),
}
_OF_ONE = {
    ("distance", "watts"): _LAMP_DISTANCE,
    ("distance", "basking"): _LAMP_DISTANCE,
    ("distance", "tube"): _TUBE_DISTANCE,
    ("distance", "uvi"): _TUBE_DISTANCE,
    ("room", "night"): _Thing(
        "how cold the room gets at night",
        "nights",
        "room drops to {room} at night",
        "room drops to {room} at night",
    ),
    ("material", "surface"): _Thing(
        "what you pointed the gun at: slate, tile, wood, brick",
        "measuring-temperatures",
        "on slate",
    ),
}
_CALLED = {
    "surface": "basking surface",
    "watts": "lamp of",
    "lid": "lid:",
    "material": "walls of",
    "reading": "the gun shows",
    "lamp_on": "lamp on for",
    "setup": "your set-up:",
    "screen": "screen:",
    "reflector": "fixture:",
}
_ANIMAL = "which animal it is"
_NUMBERS = (
    "",
    "one more thing",
    "two more things",
    "three more things",
    "four more things",
    "five more things",
)
_PLAIN = re.compile(r"[A-Za-z0-9 .,%'°/+-]{3,160}")


@dataclass(frozen=True, slots=True)
class Lacking:
    """A question that was found in free words, and the options it lacks.

    ``said`` is the sentence, ``mesh`` says that mesh of an unknown kind was heard in it,
    ``animal`` is the one of the example, ``kin`` tells those that may be meant,
    ``other`` is what else may have been meant, with its options.
    """

    name: str
    said: str
    given: Mapping[str, str]
    missing: Sequence[str]
    animal: str
    kin: str = ""
    mesh: bool = False
    other: str = ""
    of_other: Mapping[str, str] = field(default_factory=dict)


def still_needed(
    lacking: Lacking, understands: Callable[[str], bool], context: Context, opening: str = ""
) -> Reply:
    """Return what is missing and an example, behind an opening sentence.

    ``understands`` says whether a sentence is whole.
    """
    things = [_thing(name, lacking) for name in lacking.missing]
    many = _NUMBERS[len(things)] if len(things) < len(_NUMBERS) else "a few more things"
    wanted = "; ".join(thing.what for thing in things)
    example = _example(lacking, things, understands, context)
    steps = [f"For example: {example}"]
    if lacking.other:
        other = example_of(lacking.other, lacking.of_other, lacking.animal, context.own)
        steps.append(f"Or did you mean: {other}")
    return Reply(
        command=lacking.name,
        status="problem",
        title=QUESTIONS[lacking.name].purpose,
        answer=f"{opening}Tell me {many}: {wanted}. Then ask again and add {_it(things)}.",
        rows=_heard(lacking.given),
        steps=tuple(steps),
        guide=page_links(dict.fromkeys(thing.page for thing in things), context.guide_url),
    )


def _it(things: Sequence[_Thing]) -> str:
    return "it" if len(things) == 1 else "them"


def _heard(given: Mapping[str, str]) -> tuple[Row, ...]:
    told = ", ".join(
        text if name == "animal" else f"{_CALLED.get(name, name)} {text}"
        for name, text in given.items()
        if text != NOT_SURE
    )
    return (Row(label="I understood", text=told),) if told else ()


def _thing(name: str, lacking: Lacking) -> _Thing:
    if name == "animal":
        which = f"which one it is: {lacking.kin}" if lacking.kin else _ANIMAL
        return _Thing(which, "planning-a-set-up", lacking.animal)
    if name == "screen" and lacking.mesh:
        return _Thing(
            "how much UV your mesh blocks (the page tells how to find out; if you do not know, "
            "try 45%)",
            "screens",
            "mesh blocks 45%",
        )
    return _OF_ONE.get((name, lacking.name)) or _THINGS[name]


def _example(
    lacking: Lacking,
    things: Sequence[_Thing],
    understands: Callable[[str], bool],
    context: Context,
) -> str:
    said = " ".join(lacking.said.rstrip("?!. ").split())
    examples = examples_for(lacking.name, lacking.given.get("animal", lacking.animal), context.own)
    told = (thing.told(context.units, examples) for thing in things)
    sentence = ", ".join((said, *told))
    if _PLAIN.fullmatch(sentence) and understands(sentence):
        return join_line("ask", {"question": sentence}).replace("question:", "", 1)
    return example_of(lacking.name, lacking.given, lacking.animal, context.own)
