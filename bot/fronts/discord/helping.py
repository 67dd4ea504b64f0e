"""What a helper asks about somebody's message: heard, joined with the next, and asked on.

What was heard of the last message of a writer is kept for a quarter of an hour, in memory alone,
as the question and its options: nothing of a message is kept but what was heard.
"""

import time
from collections.abc import Callable
from dataclasses import replace
from typing import TYPE_CHECKING, Any, Final

import discord
from cachetools import TTLCache

from bot.ask import ask
from bot.command import Command
from bot.dialogue import Dialogue
from bot.dialogue.messages import message_added, message_heard
from bot.facts import Say
from bot.fronts.discord.answering import Finished, Way
from bot.fronts.discord.forms import EditButton
from bot.fronts.discord.missing import has_lists, rows_asking, rows_of_plain
from bot.fronts.discord.public import named_in, post_once
from bot.fronts.discord.question import Question
from bot.fronts.discord.said import AskedBy, said
from bot.fronts.discord.seen import custom_ids, seen
from bot.fronts.discord.sending import Message, tell
from bot.fronts.discord.sharing import Target

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["Helpers", "ask_writer", "asks_writer", "told_on"]

_KEPT_S: Final = 900.0
_MOST_KEPT: Final = 5_000

_Key = tuple[int, int, int]


class Helpers:
    """What helpers were told of a writer's message a moment ago."""

    def __init__(self, clock: Callable[[], float] = time.monotonic) -> None:
        self._last: TTLCache[_Key, Dialogue] = TTLCache(_MOST_KEPT, _KEPT_S, clock)

    async def answer(
        self,
        interaction: discord.Interaction[Any],
        message: discord.Message,
        command: Command,
        *,
        more: bool = False,
    ) -> None:
        """Answer what a message asks or tells, to the helper alone.

        ``command`` takes its words; ``more``: what it tells is added to the last one of its writer.
        """
        words = message.content.strip()
        if not words:
            photo = any((f.content_type or "").startswith("image/") for f in message.attachments)
            await tell(interaction, Say("door-photo" if photo else "front-no-words"))
            return
        client: Noonstone = interaction.client
        preferences = await client.preferences_of(interaction)
        key = interaction.user.id, interaction.channel_id or 0, message.author.id
        before = self._last.get(key)
        if more and before is None:
            await tell(interaction, Say("front-no-message-before"))
            return
        found = None
        if before is not None and more:
            found = message_added(before, words, preferences)
            if found is None:
                await tell(interaction, Say("front-nothing-to-add"))
                return
        asked, after = found or message_heard(command, words, preferences, ask)
        if after is not None:
            self._last[key] = after
        question = Question(asked.command, asked.values)
        await client.answer(interaction, question, about=Target(message.author.id, message.id))


def asks_writer(message: discord.Message) -> bool:
    """Say whether a message asks the writer of another for what is missing."""
    rows = seen(message).rows
    form = EditButton.__discord_ui_compiled_template__
    # No other answer that everybody sees can be changed by a form.
    return has_lists(rows) or any(form.fullmatch(each) for each in custom_ids(rows))


async def told_on(
    interaction: discord.Interaction[Any], finished: Finished, message: Message
) -> Message:
    """Return what such a message says once its writer has told more: what is left, or the answer.

    It stays plain text, and its lists go when nothing is left to pick.
    """
    language = (await interaction.client.preferences_of(interaction)).spoken
    lists = rows_asking(finished.meant, language) if finished.status == "ok" else ()
    rows = rows_of_plain((*message.rows, *lists))
    named = interaction.message and named_in(interaction.message)
    if not named or not named[0] or has_lists(rows) or finished.status != "ok":
        return replace(message, rows=rows, card=False)
    done = AskedBy(f"<@{named[1]}>", f"<@{named[0]}>")
    words = await said(interaction, Say("front-asked-for", done))
    return replace(message, words=words, rows=rows, card=False)


async def ask_writer(
    interaction: discord.Interaction[Any], question: Question, about: Target
) -> None:
    """Ask the writer of a message, in the channel, for what a question still lacks."""
    client: Noonstone = interaction.client
    preferences = await client.preferences_of(interaction)
    way = Way(public=False, alone=False, pictures=False, shareable=False)
    finished = await client.answers.finished(question, preferences, way)
    lists = rows_asking(finished.meant, preferences.spoken) if finished.status == "ok" else ()
    asked = AskedBy(interaction.user.mention, f"<@{about.author_id}>")
    words = await said(interaction, Say("front-asked-missing", asked))
    pings = client.pings.of(interaction.user.id, about.author_id)
    rows = rows_of_plain((*finished.message.rows, *lists))
    await post_once(interaction, Message(words, finished.message.post, rows, pings=pings))
