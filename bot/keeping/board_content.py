"""What a board says: a reply like any other, made from the group's animals, lamps and figures."""

import hashlib

from bot import guide
from bot.answering import answer_of
from bot.answers.animals import animal_asked, known_by, of_animal
from bot.answers.linking import page_links, source_lines
from bot.answers.targets import own_readings, wanted_by
from bot.kept.boards import Topic
from bot.language.errors import NotUnderstoodError
from bot.preferences import Context
from bot.queries.card import CardQuery
from bot.questions.uv.card import CARD
from bot.reply import PartName, Reply, Table
from calc.animals import Animal, animal_name

__all__ = ["board_reply", "fingerprint"]

_FIRST_DAY = (
    "Before the animal moves in, run lamps and heat for a day and measure: it is far easier now.",
    "Measure tube to back with a tape: from the underside of the lit tube straight down.",
    "After two to three hours of lamp time, read the basking surface with an infrared gun.",
    "Read the cool-end air with a digital probe at the animal's height on the far end.",
    "Only then the warm-end air, with the probe out of the beam.",
    "Note the lowest of the night. A drop at night is good.",
    "Lights 12 hours on, 12 hours off, by a timer.",
    "Check that there is shade to leave the UV and a hide at each end.",
    "Read everything again after a week, and after every change.",
)
_FIRST_DAY_PAGES = (
    "measuring-the-distance",
    "measuring-temperatures",
    "warm-end-and-cool-end",
    "reading-a-uv-meter",
)
_CARE = "These are starting values: your own readings beat them, and a reptile vet beats both."


def board_reply(topic: Topic, animal: str | None, context: Context) -> Reply:
    """Return what a board of this topic says, all of it in sight; some topics need an animal."""
    return _content(topic, animal, context).model_copy(update={"opened": tuple(PartName)})


def _content(topic: Topic, animal: str | None, context: Context) -> Reply:
    if topic is Topic.FIRST_DAY:
        return _first_day(context)
    if topic is Topic.GUIDE:
        return _guide(context)
    if animal is None:
        raise NotUnderstoodError(
            "no animal",
            "the animal that the board is for, or one that the group has set",
            f"board preview topic:{topic.value} animal:bearded dragon",
            "animal",
        )
    name = animal_name(animal)
    if topic is Topic.DISTANCES:
        card = answer_of(CARD, CardQuery.model_validate({"animal": name}), context)
        return card.model_copy(update={"picture": None})
    return _temperatures(animal_asked(name, context), context)


def fingerprint(reply: Reply) -> str:
    """Return what tells two contents of a board apart."""
    return hashlib.sha256(reply.model_dump_json().encode()).hexdigest()


def _temperatures(animal: Animal, context: Context) -> Reply:
    told = [
        (wanted, wanted.target)
        for wanted in wanted_by(animal, context.units)
        if wanted.target is not None
    ]
    return Reply(
        command="board preview",
        status="ok",
        title=f"What {of_animal(animal)} needs",
        answer="What to aim for, and how each figure is known.",
        table=Table(
            columns=("What", "From where to where", "How it is known"),
            rows=tuple((wanted.label, wanted.text, known_by(target)) for wanted, target in told),
        ),
        steps=(
            "Read the basking surface first, then the cool end, then the warm end.",
            f"Not right? Ask, with your own readings: {own_readings(animal, context.units)}",
        ),
        cautions=(_CARE,),
        guide=page_links(("measuring-temperatures", "the-basking-spot"), context.guide_url),
        sources=source_lines(target.source for _, target in told),
    )


def _first_day(context: Context) -> Reply:
    return Reply(
        command="board preview",
        status="ok",
        title="The first day: what to measure, in order",
        answer="Nine things, a tape measure, an infrared gun and a digital probe.",
        steps=_FIRST_DAY,
        cautions=(_CARE, "Mains wiring follows your local electrical code."),
        guide=page_links(_FIRST_DAY_PAGES, context.guide_url),
        sources=source_lines(("common_practice",)),
    )


def _guide(context: Context) -> Reply:
    pages = guide.pages()
    return Reply(
        command="board preview",
        status="ok",
        title="The beginner guide",
        answer=f"{len(pages)} short pages; start with “{pages[0].title}”.",
        table=None
        if context.guide_url
        else Table(
            columns=("Page", "What it explains"),
            rows=tuple((page.slug, page.title) for page in pages),
        ),
        steps=("Open one here: guide screens",),
        guide=page_links((page.slug for page in pages), context.guide_url)
        if context.guide_url
        else (),
    )
