"""The reply of a question that could not be read or answered, in the asker's language."""

from bot.answers.linking import page_links
from bot.answers.unread import Way
from bot.commands import command_named
from bot.facts import Say
from bot.preferences import FIRST, Preferences
from bot.reply import Reply
from bot.saying.voice import voice

__all__ = ["problem"]


def problem(name: str, sentence: str | Say, preferences: Preferences, asked: str = "") -> Reply:
    """Return the Reply that tells one plain sentence of what went wrong.

    A sentence that is no message is English, and so is the whole reply.
    """
    command = command_named(name)
    spoken = preferences.spoken if isinstance(sentence, Say) else FIRST
    say = voice(spoken, preferences.shown).text
    all_of_them = name == "help" or command is None
    step = Say("refused-step-all") if all_of_them else Say("refused-step-more", Way(name))
    return Reply(
        command=name,
        status="problem",
        title=say(Say("refused-title")),
        answer=say(sentence) if isinstance(sentence, Say) else sentence,
        steps=(say(step),),
        guide=page_links(command.guide[:1] if command else (), preferences.guide_url),
        asked=asked,
        language=spoken,
    )
