"""What smokes, sparks or melts: the plug first, through whichever question it is told."""

from bot.answers.linking import page_links
from bot.language.shown import shown
from bot.preferences import Context
from bot.reply import Reply

__all__ = ["PULL_THE_PLUG", "fire_reply"]

PULL_THE_PLUG = (
    "Pull the plug now and get a grown-up: do not touch the lamp or heater and use no water. If "
    "it goes on smoking or you see flames, everybody goes out and calls the fire brigade. Do not "
    "use that lamp or heater again."
)
_THEN = (
    "When it is safe: keep the animal warm with a heater that is whole, or in a warm room.",
    "A bad burn or shock, of you or of the animal, needs a doctor or a reptile vet today.",
)


def fire_reply(words: str, context: Context) -> Reply:
    """Return what to do at once where free words tell of smoke, sparks, melting or a shock."""
    return Reply(
        command="ask",
        status="ok",
        title="Pull the plug first",
        answer=f"{PULL_THE_PLUG} I read “{shown(words)}” in your words; a lamp or heater in order "
        "never does that.",
        steps=_THEN,
        guide=page_links(("fire-and-electrical-safety", "when-to-call-a-vet"), context.guide_url),
    )
