"""What is told of a UV lamp by its age alone. Words: ``decline.ftl``."""

from collections.abc import Iterator

from bot.facts import Says
from bot.layered import Brief, Layered, Row
from bot.questions.uv.age_picture import age_picture
from bot.questions.uv.decline_age import Aged, ByAge
from bot.questions.uv.group_fading import pace_rows
from bot.questions.uv.shared import EYES_CARE, SHADE_CARE
from bot.reply import Picture

__all__ = ["tell_by_age"]


def tell_by_age(facts: ByAge) -> Layered:
    """Tell whether its age says to replace it, and that only a meter can tell."""
    say = Says("decline", facts)
    known, untold = facts.aged is not Aged.UNKNOWN, facts.aged is Aged.UNTOLD
    head = say("usual") if untold else say.by("aged", facts.aged)
    return Layered(
        command="decline",
        title=say("age-title"),
        brief=Brief(
            head=head,
            range=(say.by("aged", facts.aged),) if untold else (say("usual"),) if known else (),
            steps=(say("do-meter") if known else say("do-other"), say("do-note")),
        ),
        steps=(say("step-note"), say("step-borrow")),
        numbers=tuple(_numbers(facts, say)),
        why=(say("why-meter"), say("why-ages")),
        care=(EYES_CARE, SHADE_CARE),
        values=(("age", facts.age), ("replace_after", facts.replace_after)),
        guide=("when-a-lamp-is-worn-out", "how-to-take-a-reading"),
        sources=facts.sources,
        picture=(lambda teller: Picture.later(age_picture, facts, head, teller)) if known else None,
    )


def _numbers(facts: ByAge, say: Says) -> Iterator[Row]:
    yield Row(say("label-age"), say("age"))
    yield from pace_rows(facts.pace)
    if facts.others:
        yield Row(say("label-others"), say("others"))
