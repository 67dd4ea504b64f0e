"""Several questions that words may mean, each as a line that works when it is copied."""

from collections.abc import Mapping

from pydantic import ValidationError

from bot.answers.examples import examples_for
from bot.answers.linking import page_links
from bot.answers.routes.asked import Asked
from bot.answers.routes.filled import filled
from bot.answers.routes.pages import page_near
from bot.answers.routes.questions import QUESTIONS
from bot.kept.group import NOTHING_OWN, Own
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import read_length
from bot.language.shown import copies_well
from bot.language.words import join_line
from bot.preferences import Context
from bot.reply import Reply

__all__ = ["example_of", "offer", "offer_lamps"]

_MOST = 3


def offer(names: tuple[str, ...], asked: Asked, context: Context, *pages: str) -> Reply:
    """Return the questions that may be meant, filled with what was heard and with examples.

    ``pages`` are guide pages that help beside those of the questions.
    """
    animal = asked.animal_for_examples(context)
    lines = tuple(
        f"{QUESTIONS[name].purpose}: {example_of(name, filled(name, asked), animal, context.own)}"
        for name in names[:_MOST]
    )
    if near := page_near(asked):
        lines += (f"Read about it: {join_line('guide', {'page': near})}",)
    return _choice(lines, [*pages, *(QUESTIONS[name].page for name in names[:_MOST])], context)


def offer_lamps(asked: Asked, context: Context) -> Reply:
    """Return one question for each kind of lamp that is set against another."""
    lines = tuple(
        f"About {'an' if kind[0] in 'aeiou' else 'a'} {kind}: {join_line('lamp', {'kind': kind})}"
        for kind in asked.lamps[:_MOST]
    )
    return _choice(lines, [QUESTIONS["lamp"].page, "heat-sources"], context)


def _choice(lines: tuple[str, ...], pages: list[str], context: Context) -> Reply:
    several = len(lines) > 1
    return Reply(
        command="ask",
        status="problem",
        title="Which one do you mean?" if several else "Do you mean this?",
        answer=(
            "I am not sure what you want to know. "
            f"{'Copy the line that fits' if several else 'If it is this, copy the line'} and put "
            "in your own animal and figures."
        ),
        steps=lines,
        guide=page_links(dict.fromkeys(pages), context.guide_url),
    )


def example_of(name: str, given: Mapping[str, str], animal: str, own: Own = NOTHING_OWN) -> str:
    """Return the question as a line that is answered: as given, for this animal if for none."""
    return join_line(name, _complete(name, given, animal, own))


def _complete(name: str, given: Mapping[str, str], animal: str, own: Own) -> dict[str, str]:
    """Return the options of a question that is answered: the given ones and examples."""
    question = QUESTIONS[name]
    safe = {
        option: text
        for option, text in given.items()
        if copies_well(text)
        and not _QUOTES & set(text)
        and not (option == "distance" and _is_a_slip(text))
    }
    examples = {option.name: option.example for option in question.query.options()}
    fitting = examples_for(name, safe.get("animal", animal), own)
    examples |= {option: text for option, text in fitting.items() if option in examples}
    whole = {option: examples[option] for option in question.query.lacking(safe)} | safe
    if "animal" in examples and "animal" not in whole:
        whole["animal"] = animal
    least = {o: examples[o] if o in fitting else text for o, text in question.least.items()}
    whole = least | whole
    try:
        question.query.model_validate(whole)
    except ValidationError:
        return least | {o.name: examples[o.name] for o in question.query.options() if o.required}
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
