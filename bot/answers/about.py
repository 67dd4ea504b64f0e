"""What Noonstone is, what it stores, where its numbers come from, and the cautions."""

from collections import Counter

from bot.answers.linking import page_links
from bot.preferences import Context
from bot.queries.general import AboutQuery
from bot.reply import Reply, Row
from calc.sources import bibliography

__all__ = ["SAFETY", "answer_about"]

SAFETY = (
    "Do not look into a lit UV tube, and switch it off before you work near it.",
    (
        "Heat lamps burn skin and start fires: guard them, keep what can burn away, "
        "use a holder rated for the lamp."
    ),
    "Mains wiring follows your local electrical code; leave it to an electrician when in doubt.",
    "A broken mercury lamp: people and pets out, air the room, do not use a vacuum cleaner.",
    "For an animal that is weak, shaking, swollen, burnt or not eating, see a reptile vet now.",
)


def answer_about(query: AboutQuery, context: Context) -> Reply:
    """Answer what this bot is; the query has no options."""
    kinds = Counter(entry.kind.value for entry in bibliography().values())
    told = ", ".join(f"{count} {kind}" for kind, count in sorted(kinds.items()))
    return Reply(
        command="about",
        status="ok",
        title="About Noonstone",
        answer=(
            "I work out distances and temperatures for reptile enclosures from a model of "
            "lamps, screens and heat; I give ranges, and your own measurements beat me."
        ),
        rows=(
            Row(
                label="What is stored",
                text="nothing you type: a question is answered and forgotten; "
                "buttons carry their own question. Kept is what you ask me to keep (enclosures, "
                "readings, reminders, your unit and time zone) and what moderators set, with "
                "the number of who changed it. Counts of what is asked hold no text and no person",
            ),
            Row(
                label="Yours to take and delete",
                text="mine export hands you all of it, mine forget deletes it at once; a server's "
                "data are deleted 30 days after it removes me, or at once by server forget",
            ),
            Row(
                label="Where numbers come from",
                text=f"{len(bibliography())} sources, each named with its kind ({told}); "
                "“common practice” and “memory” mean that no published source was read",
            ),
            Row(
                label="What it will not do",
                text="name products, judge a sick animal, replace a meter, a thermometer or a vet",
            ),
        ),
        cautions=SAFETY,
        guide=page_links(("what-this-bot-cannot-know",), context.guide_url),
    )
