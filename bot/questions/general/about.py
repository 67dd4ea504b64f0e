"""What Noonstone is, what it stores, where its numbers come from, and the cautions.

Words: ``words/<language>/about.ftl``.
"""

from collections import Counter
from dataclasses import dataclass

from bot.command import Command
from bot.facts import Say, Says
from bot.layered import Brief, Care, Layered, Row, Weight
from bot.preferences import Context
from bot.queries.general import AboutQuery
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.uv.shared import EYES_CARE
from calc.sources import Kind, bibliography

__all__ = ["ABOUT", "About", "about", "tell"]


@dataclass(frozen=True, slots=True)
class AboutSources:
    """How many sources there are of a kind."""

    kind: Kind
    count: int


@dataclass(frozen=True, slots=True)
class About:
    """How many sources there are, and of which kinds."""

    count: int
    each: tuple[AboutSources, ...]

    @property
    def kinds(self) -> tuple[Say, ...]:
        """Return how many there are of each kind."""
        return tuple(_of_kind(one) for one in self.each)


def _of_kind(sources: AboutSources) -> Say:
    return Say.by("about-kind", sources.kind, sources)


def about(query: AboutQuery, context: Context) -> About:
    """Count the sources; the question has no options."""
    found = Counter(entry.kind for entry in bibliography().values())
    return About(sum(found.values()), tuple(AboutSources(kind, found[kind]) for kind in Kind))


def tell(facts: About) -> Layered:
    """Tell what it is, what is kept and what it cannot do."""
    say = Says("about", facts)
    return Layered(
        command="about",
        title=say("title"),
        brief=Brief(
            head=say("head"),
            range=(say("ranges"), say("kept"), say("known")),
            steps=(say("do-delete"),),
        ),
        steps=(say("step-export"), say("step-forget"), say("step-server")),
        numbers=(
            Row(say("label-not-kept"), say("not-kept")),
            Row(say("label-kept"), say("is-kept")),
            Row(say("label-counts"), say("counts")),
            Row(say("label-sources"), say("sources")),
            Row(say("label-will-not"), say("will-not")),
        ),
        care=(
            Care(say("care-vet"), say("care-vet-short"), Weight.STEP),
            EYES_CARE,
            *HEAT_CARE,
            Care(say("care-mercury")),
        ),
        guide=("what-this-bot-cannot-know",),
    )


ABOUT = Command(
    name="about",
    query=AboutQuery,
    facts=about,
    tell=tell,
    examples=("about",),
)
