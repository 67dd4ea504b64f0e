"""The reply of a question that could not be read or answered, in the asker's language."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.commands import command_named
from bot.database.errors import (
    Full,
    LimitError,
    StoreAddressError,
    StoreError,
    StoreTooNewError,
    StoreUnavailableError,
)
from bot.facts import Say
from bot.layered import Brief, Layered
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.reply import Reply
from bot.saying.said import said
from bot.saying.voice import voice
from bot.unread import OfQuestion, in_short

__all__ = ["problem", "store_told"]


@dataclass(frozen=True, slots=True)
class AtMost:
    """What there is no room for any more."""

    most: int
    what: Full


def problem(
    name: str,
    sentence: Say,
    preferences: Preferences,
    meant: Question | None = None,
    also: Sequence[Say] = (),
) -> Reply:
    """Return the Reply that tells in plain words what went wrong; ``also`` is more to be done."""
    command = command_named(name)
    all_of_them = name == "help" or command is None
    more = Say("refused-step-all") if all_of_them else Say("refused-step-more", OfQuestion(name))
    layered = Layered(
        command=name,
        status="problem",
        title=Say("refused-title"),
        brief=Brief(sentence, steps=(more,)),
        steps=(*also, more),
        guide=command.guide[:1] if command else (),
    )
    speaker = voice(preferences.spoken, preferences.shown)
    reply = said(layered, speaker, preferences.guide_url)
    # There is no other unit to show it in.
    short = speaker.text(in_short(sentence))
    return reply.model_copy(update={"meant": meant, "units": "", "short": short})


def store_told(error: StoreError) -> Say:
    """Return what is wrong with saved data, for the asker."""
    match error:
        case LimitError(most=most, what=what):
            return Say("refused-full", AtMost(most, what))
        case StoreUnavailableError(cause=cause) if cause.passes:
            return Say("refused-store-away")
        # These two stop a bot before anybody can ask it: at a console the asker is who runs it.
        case StoreAddressError():
            return Say("refused-store-address")
        case StoreTooNewError():
            return Say("refused-store-newer")
        case _:
            # Of the database itself: its log says more, to whoever runs it.
            return Say("refused-store-broken")
