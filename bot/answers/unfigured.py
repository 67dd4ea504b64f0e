"""An animal that is known by name alone: no figure of another, and what holds for any animal."""

from collections.abc import Sequence

from bot.answers.animals import either, perhaps_meant, with_article
from bot.answers.figures import length
from bot.answers.linking import page_links
from bot.language.shown import shown
from bot.preferences import Context
from bot.reply import Reply
from calc.naming import Known, Several, named
from calc.uv.placement import COMFORTABLE_MINIMUM_M

__all__ = [
    "among",
    "no_figures",
    "unfigured_reply",
    "whatever_it_is",
    "which_animal",
    "which_reply",
]

_ANSWERED = frozenset(("ask", "needs"))
_GUIDE = ("what-this-bot-cannot-know", "measuring-temperatures", "when-to-call-a-vet")


def unfigured_reply(command: str, name: str, context: Context) -> Reply:
    """Return that there are no figures for an animal, and what holds for any.

    That answers what an animal needs, and free words; to a question for figures it is a refusal.
    """
    return Reply(
        command=command,
        status="ok" if command in _ANSWERED else "problem",
        title=no_figures(name),
        answer=(
            f"{no_figures(name)}, and those of another animal could hurt it. Ask a reptile vet, or "
            "a keeper with years of experience with just this animal, for its own."
        ),
        steps=whatever_it_is(context),
        guide=page_links(_GUIDE, context.guide_url),
    )


def which_reply(words: str, among: Sequence[str], context: Context) -> Reply:
    """Return the question which animal is meant by words for several, or for none I know."""
    here = [name for name in among if isinstance(named(name).what, Known)]
    near = here if among else perhaps_meant(words)
    return Reply(
        command="ask",
        status="problem",
        title="Which animal is it?",
        answer=(
            f"{which_animal(words, among)} Every animal needs its own light and warmth, so I take "
            "none for it: ask again with its whole name."
        ),
        steps=tuple(f"If it is {with_article(name)}: needs {name}" for name in near),
        guide=page_links(_GUIDE, context.guide_url),
    )


def which_animal(words: str, among: Sequence[str]) -> str:
    """Return that words for an animal mean several, or none that is known."""
    here = [name for name in among if isinstance(named(name).what, Known)]
    if among:
        return f"“{shown(words)}” may be several animals: {either(among, here)}."
    return f"I do not know the animal “{shown(words)}”."


def among(words: str) -> tuple[str, ...]:
    """Return the animals that a word for several may mean."""
    what = named(words).what
    return tuple(one.name for one in what.candidates) if isinstance(what, Several) else ()


def no_figures(name: str) -> str:
    """Return that an animal has no figures here."""
    return f"I have no figures for {with_article(name)}"


def whatever_it_is(context: Context) -> tuple[str, ...]:
    """Return what holds for any animal."""
    nearest = length(COMFORTABLE_MINIMUM_M, context.units)
    return (
        f"Never hang a UV tube nearer than {nearest} above its back.",
        "Give it shade that no UV reaches and a cool place, both open to it at any time.",
        (
            "Measure before it moves in: the UV index with a meter, surfaces with an infrared gun, "
            "the air and the night with a digital probe."
        ),
        (
            "Once you were told the UV index it should have, I can work out a distance without its "
            "name: ask distance, and give that range with uvi."
        ),
    )
