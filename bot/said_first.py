"""What every text at the door is listened to for, and the reply behind what was heard."""

from collections.abc import Iterable, Mapping

from bot.answers.linking import page_links
from bot.command import Command
from bot.dangers import first, listen
from bot.preferences import Preferences
from bot.reply import Alarm, PageLink, Reply

__all__ = ["heard_in", "said_first"]

_KIND = "kind"


def heard_in(command: Command | None, given: Mapping[str, str]) -> tuple[Alarm, ...]:
    """Return what cannot wait in the texts of the options, but for those of a file."""
    files = {o.name for o in command.query.options() if o.document} if command else set()
    return tuple(
        # The bare name of a kind is asked about, and tells of nothing that runs.
        alarm.model_copy(update={"asked": True}) if name == _KIND and alarm.words == text else alarm
        for name, text in given.items()
        if name not in files
        for alarm in listen(text)
    )


def said_first(reply: Reply, heard: Iterable[Alarm], preferences: Preferences) -> Reply:
    """Return the reply behind what cannot wait, if anything of that was heard or found."""

    def link(slug: str) -> PageLink:
        return page_links((slug,), preferences.guide_url)[0]

    return first(reply, heard, link)
