"""What a question in free words still lacks: in plain words, with where to find it out.

The example is the asker's own sentence with the missing words, if it is then surely understood;
else the question as a line with options, which always is.
"""

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from bot.facts import Say
from bot.language.quantities import Units
from bot.language.unsure import NOT_SURE
from bot.language.words import join_line
from bot.layered import Brief, Layered, Row
from bot.preferences import FIRST, Context
from bot.queries.question import Question
from bot.questions.animals import AnimalsMeant
from bot.questions.lacking import Behind
from bot.questions.record import AskedFor, record_of
from bot.routes.examples import examples_for, figures_of
from bot.routes.offered import ForExample, example_of, purpose_of

__all__ = ["Lacking", "still_needed"]


_ANIMAL_PAGE = "planning-a-set-up"
_PLAIN = re.compile(r"[A-Za-zÄÖÜäöüß0-9 .,%'°/+-]{3,160}")


@dataclass(frozen=True, slots=True)
class Lacking:
    """A question that was found in free words, and the options it lacks.

    ``said`` is the sentence, ``mesh`` says that mesh of an unknown kind was heard in it,
    ``animal`` is the one of the example, ``kin`` tells those that may be meant,
    ``kin_names`` is how they are typed,
    ``other`` is what else may have been meant, with its options.
    """

    name: str
    said: str
    given: Mapping[str, str]
    missing: Sequence[str]
    animal: str
    kin: AnimalsMeant | None = None
    kin_names: Sequence[str] = ()
    mesh: bool = False
    other: str = ""
    of_other: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Needed:
    """What is missing, and how many things that are."""

    things: tuple[Say, ...]
    count: int


def still_needed(
    lacking: Lacking,
    understands: Callable[[str], bool],
    context: Context,
    opening: Say | None = None,
) -> Layered:
    """Return what is missing and an example, behind an opening sentence.

    ``understands`` says whether a sentence is whole.
    """
    things = [_lack(name, lacking) for name in lacking.missing]
    asked = tuple(_asked(name, lacking) for name in lacking.missing)
    wanted = Say("ask-missing", Needed(asked, len(asked)))
    head = Say("refused-behind", Behind(opening, wanted)) if opening else wanted
    lines = [_example(lacking, things, understands, context)]
    steps = [Say("ask-example", ForExample(lines[0]))]
    if lacking.other:
        other = example_of(lacking.other, lacking.of_other, lacking.animal, context).line()
        steps.append(Say("ask-or", ForExample(other)))
        lines.append(other)
    return Layered(
        command=lacking.name,
        status="problem",
        title=purpose_of(lacking.name),
        brief=Brief(head, steps=tuple(steps)),
        numbers=_heard(lacking),
        offers=tuple(_of_kin(lacking)),
        lines=tuple(lines),
        lacking=tuple(lacking.missing),
        steps=tuple(steps),
        guide=tuple(dict.fromkeys(thing.page for thing in things if thing.page)),
    )


def _of_kin(lacking: Lacking) -> Iterator[Question]:
    """Yield the question for each animal that may be meant."""
    for name in lacking.kin_names:
        yield Question(lacking.name, {**lacking.given, "animal": name})


def _heard(lacking: Lacking) -> tuple[Row, ...]:
    told = {name: text for name, text in lacking.given.items() if text != NOT_SURE}
    if not told:
        return ()
    line = Say("ask-line", ForExample(join_line(lacking.name, told)))
    return (Row(Say("door-label-understood"), line),)


def _asked(name: str, lacking: Lacking) -> Say:
    """Return what is missing, as a clause."""
    if name == "animal" and lacking.kin:
        return Say("ask-which-both" if lacking.kin.others else "ask-which", lacking.kin)
    return _lack(name, lacking).say


def _lack(name: str, lacking: Lacking) -> AskedFor:
    if name == "animal":
        return AskedFor(name, _ANIMAL_PAGE, lacking.animal, de=lacking.animal)
    some_mesh = name == "screen" and lacking.mesh
    return record_of(lacking.name).lack("some_mesh" if some_mesh else name)


def _example(
    lacking: Lacking,
    things: Sequence[AskedFor],
    understands: Callable[[str], bool],
    context: Context,
) -> str:
    said = " ".join(lacking.said.rstrip("?!. ").split())
    examples = examples_for(lacking.name, lacking.given.get("animal", lacking.animal), context.own)
    in_german = context.language != FIRST
    figures = figures_of(examples, Units.CM if in_german else context.units)
    told = [thing.words(context.language, context.units).format(**figures) for thing in things]
    sentence = ", ".join((said, *told))
    if all(told) and _PLAIN.fullmatch(sentence) and understands(sentence):
        return join_line("ask", {"question": sentence}).replace("question:", "", 1)
    return example_of(lacking.name, lacking.given, lacking.animal, context).line()
