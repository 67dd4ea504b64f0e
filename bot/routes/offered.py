"""Several questions that words may mean, each as a line that works when it is copied."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from pydantic import ValidationError

from bot import guide
from bot.facts import Name, Say
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import read_length
from bot.language.shown import copies_well
from bot.layered import Brief, Layered
from bot.preferences import Context
from bot.queries.question import Question
from bot.queries.typed import typed_all
from bot.questions.record import record_of
from bot.routes.asked import Asked
from bot.routes.examples import examples_for, typed_in
from bot.routes.filled import filled
from bot.routes.pages import page_near
from calc.heat.sources_of_heat import find_heat_source

__all__ = ["ForExample", "example_of", "offer", "offer_lamps", "purpose_of"]

_MOST = 3


@dataclass(frozen=True, slots=True)
class ForExample:
    """A question as a line that works when it is copied."""

    example: str


@dataclass(frozen=True, slots=True)
class Offered:
    """A question that may be meant: what it is for, and as a line."""

    purpose: Say
    example: str


@dataclass(frozen=True, slots=True)
class ToRead:
    """A page of the guide, or its part, by its title."""

    title: str


@dataclass(frozen=True, slots=True)
class AboutLamp:
    """A kind of lamp that may be meant, and the question about it."""

    lamp: Name
    example: str


def purpose_of(name: str) -> Say:
    """Return what a question is for."""
    return Say.of("ask-purpose", name)


def offer(
    names: tuple[str, ...],
    asked: Asked,
    context: Context,
    *pages: str,
    parts: Sequence[tuple[str, str]] = (),
) -> Layered:
    """Return the questions that may be meant, filled with what was heard and with examples.

    ``parts`` are those of guide pages that may answer, first; ``pages`` are guide pages that help
    beside those of the questions.
    """
    animal = asked.animal_for_examples(context)
    names = names[: _MOST - min(len(parts), 1)]
    told_of = {name: filled(name, asked) for name in names}
    examples = [
        example_of(name, typed_all(values), animal, context) for name, values in told_of.items()
    ]
    reading = [
        Question("guide", {"page": page, "part": part} if part else {"page": page})
        for page, part in parts
    ]
    if (near := page_near(asked)) and not reading and len(examples) < _MOST:
        reading = [Question("guide", {"page": near})]
    reading = reading[: _MOST - len(examples)]
    told = tuple(
        Say("ask-offer", Offered(purpose_of(each.command), each.line())) for each in examples
    )
    told += tuple(Say("ask-read", ForExample(page.line())) for page in reading)
    short = (
        *(purpose_of(each.command) for each in examples),
        *(Say("ask-read-of", ToRead(_title(page, context.language))) for page in reading),
    )
    near_pages = [*(page for page, _ in parts), *(record_of(name).page for name in names)]
    found = _choice(told, [*examples, *reading], [*pages, *near_pages], short)
    page, part = parts[0] if parts else ("", "")
    read = Question("guide", {"page": page, "part": part} if part else {"page": page})
    return replace(found, perhaps=Question(names[0], told_of[names[0]]) if names else read)


def _title(page: Question, language: str) -> str:
    """Return what a page of the guide, or a part of it, is called."""
    slug, part = str(page.values["page"]), page.values.get("part")
    return str(part) if part else guide.page(slug, language).title


def offer_lamps(asked: Asked) -> Layered:
    """Return one question for each kind of lamp that is set against another."""
    offers = {
        Question("lamp", {"kind": kind}): source
        for kind in asked.lamps[:_MOST]
        if (source := find_heat_source(kind)) is not None
    }
    lines = tuple(
        Say("ask-about-lamp", AboutLamp(Name(f"lamp-{source.slug}"), asked_of.line()))
        for asked_of, source in offers.items()
    )
    return _choice(lines, [*offers], [record_of("lamp").page, "heat-sources"])


def _choice(
    lines: tuple[Say, ...], offers: list[Question], pages: list[str], short: tuple[Say, ...] = ()
) -> Layered:
    """Return the choice of several questions, ``short`` as the brief says each of them."""
    several = len(lines) > 1
    return Layered(
        command="ask",
        status="problem",
        title=Say("ask-title-which" if several else "ask-title-this"),
        brief=Brief(Say("ask-unsure" if several else "ask-unsure-this"), steps=short or lines),
        steps=lines,
        guide=tuple(dict.fromkeys(pages)),
        offers=tuple(offers),
    )


def example_of(name: str, given: Mapping[str, str], animal: str, context: Context) -> Question:
    """Return the question as one that is answered: as given, for this animal if for none."""
    return Question(name, _complete(name, given, animal, context))


def _complete(name: str, given: Mapping[str, str], animal: str, context: Context) -> dict[str, str]:
    """Return the options of a question that is answered: the given ones and examples."""
    record = record_of(name)
    model = record.model
    safe = {
        option: text
        for option, text in given.items()
        if copies_well(text)
        and not _QUOTES & set(text)
        and not (option == "distance" and _is_a_slip(text))
    }
    examples = dict(model.examples())
    fitting = examples_for(name, safe.get("animal", animal), context.own)
    examples |= {option: text for option, text in fitting.items() if option in examples}
    examples = {option: typed_in(text, context.units) for option, text in examples.items()}
    whole = {option: examples[option] for option in model.lacking(safe)} | safe
    if "animal" in examples and "animal" not in whole:
        whole["animal"] = animal
    said = dict(record.least) | dict(record.least_in.get(context.language, {}))
    least = {o: examples[o] if o in fitting else text for o, text in said.items()}
    whole = least | whole
    try:
        model.model_validate(whole)
    except ValidationError:
        return least | {o.name: examples[o.name] for o in model.options() if o.required}
    return whole


def _is_a_slip(distance: str) -> bool:
    """Say whether no lamp hangs so near or so far: the words then meant something else."""
    try:
        measure = read_length(distance)
    except NotUnderstoodError:
        return True
    return not _NEAREST_M <= measure.low <= measure.high <= _FARTHEST_M


_NEAREST_M, _FARTHEST_M = 0.15, 1.2
_QUOTES = frozenset("\"'")
