"""Where a person is better than the bot: an answer called wrong, a helper asked by consent."""

from dataclasses import replace
from typing import TYPE_CHECKING, Any, Final

import discord

from bot.commands import command_named
from bot.database.errors import StoreError
from bot.facts import Say
from bot.fronts.discord.carried import QuestionButton, carried
from bot.fronts.discord.labels import label
from bot.fronts.discord.limits import CarriesNothing
from bot.fronts.discord.question import Question, command_in
from bot.fronts.discord.rights import asker_of
from bot.fronts.discord.said import AskedBy, said
from bot.fronts.discord.seen import seen
from bot.fronts.discord.sending import Message, guarded, send, tell, view_of
from bot.preferences import FIRST
from bot.questions.saved.asked_values import values_of
from bot.reply import Reply
from bot.saved.wrongs import Wrong

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = [
    "HelperButton",
    "OfferButton",
    "PostHelperButton",
    "WrongButton",
    "can_offer",
    "of_group",
]

_HELPER, _POST = "helper", "helper-post"
_OFFER: Final = "mine offer"
_OFFERED_FROM: Final = frozenset({"meter", "uvi", "distance"})
_ROW: Final = 3


class WrongButton(QuestionButton, template=r"w:(?P<asked>.+)"):
    """Tells the moderators which question was answered wrong: its values, no text, no name."""

    says, prefix, in_row = Say("button-wrong"), "w:", _ROW

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Keep it, once from each person."""
        async with guarded(interaction, "noting what is wrong"):
            client: Noonstone = interaction.client
            asker, memory = asker_of(interaction), client.memory
            question = await carried(interaction, self)
            if question is None or memory is None or asker.server is None:
                return
            number = interaction.message.id if interaction.message else 0
            own = (await client.preferences_of(interaction)).own
            if not client.shares.take((asker.person, number)):
                given = values_of(command_named(question.command), question.given, own)
                day = memory.clock().date()
                wrong = Wrong(day=day, command=question.command, given=given)
                try:
                    await memory.store.wrongs.add(asker.server, wrong)
                except StoreError:
                    await tell(interaction, Say("front-wrong-lost"))
                    return
            await tell(interaction, Say("front-wrong-kept"))


class OfferButton(QuestionButton, template=r"f:(?P<asked>.+)"):
    """Shows what the group would get of the readings in a question; nothing is given yet."""

    says, prefix, in_row = Say("button-offer"), "f:", _ROW

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Ask for the yes, or for what the readings still lack."""
        question, command = await carried(interaction, self), command_named(_OFFER)
        if question is None or command is None:
            return
        names = {option.name for option in command.query.options()}
        given = {name: text for name, text in question.given.items() if name in names}
        await interaction.client.answer_saved(interaction, command, given)


def can_offer(reply: Reply, question: Question) -> bool:
    """Say whether an answer goes by readings under one lamp, which a group could use."""
    given = question.given
    asked = question.command in _OFFERED_FROM and "readings" in given
    return asked and reply.status == "ok" and given.get("tubes", "1") == "1"


class HelperButton(
    CarriesNothing, discord.ui.DynamicItem[discord.ui.Button[Any]], template=_HELPER
):
    """Shows what would be posted for the helpers, and where; nothing is posted yet."""

    def __init__(self, language: str = FIRST) -> None:
        told = label(Say("button-helper"), language)
        super().__init__(discord.ui.Button(label=told, custom_id=_HELPER, row=_ROW))

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Show it to the asker alone, with the button that posts it."""
        async with guarded(interaction, "asking a helper"):
            channel = await _channel(interaction)
            if channel is None or interaction.message is None:
                await tell(interaction, Say("front-helper-none"))
                return
            there = seen(interaction.message)
            asked = AskedBy(interaction.user.mention, link=f"<#{channel}>")
            language = (await interaction.client.preferences_of(interaction)).spoken
            view = discord.ui.View(timeout=None).add_item(PostHelperButton(language))
            words = await said(interaction, Say("front-helper-sure", asked))
            post = replace(there.post, part="")
            message = Message(words, post, view.to_components(), card=True, colour=there.colour)
            await send(interaction, message, private=True)


class PostHelperButton(
    CarriesNothing, discord.ui.DynamicItem[discord.ui.Button[Any]], template=_POST
):
    """Posts what was shown in the channel of the helpers, once."""

    def __init__(self, language: str = FIRST) -> None:
        blue = discord.ButtonStyle.primary
        told = label(Say("button-post-helper"), language)
        super().__init__(discord.ui.Button(label=told, custom_id=_POST, style=blue))

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Post it, and tell the asker where."""
        async with guarded(interaction, "posting for the helpers"):
            client: Noonstone = interaction.client
            channel, shown = await _channel(interaction), interaction.message
            if channel is None or shown is None:
                await tell(interaction, Say("front-helper-none"))
                return
            asked = AskedBy(interaction.user.mention, link=f"<#{channel}>")
            if not client.shares.take(shown.id):
                words = await said(interaction, Say("front-helper-asks", asked))
                message = Message(words, seen(shown).post)
                place = client.get_partial_messageable(channel, guild_id=interaction.guild_id)
                plain = message.is_plain
                try:
                    await place.send(
                        content=(message.content if plain else "") or None,
                        view=view_of(message, plain=plain) or discord.utils.MISSING,
                        allowed_mentions=discord.AllowedMentions.none(),
                    )
                except (discord.Forbidden, discord.NotFound):
                    await tell(interaction, Say("front-helper-cannot"))
                    return
                if client.memory is not None:
                    # Helpers are asked by consent and whatever else was posted.
                    asker = replace(asker_of(interaction), channel=channel, parent=None)
                    command = command_in(seen(shown).asked)
                    await client.memory.note_post(asker, command, 0, None)
            await tell(interaction, Say("front-helper-posted", asked))


async def of_group(interaction: discord.Interaction["Noonstone"]) -> tuple[bool, bool]:
    """Return whether moderators hear what is wrong here, and whether helpers can be asked."""
    memory, asker = interaction.client.memory, asker_of(interaction)
    if memory is None or asker.server is None:
        return False, False
    return True, await memory.helpers(asker) is not None


async def _channel(interaction: discord.Interaction["Noonstone"]) -> int | None:
    memory = interaction.client.memory
    return None if memory is None else await memory.helpers(asker_of(interaction))
