"""What the message of a board is made of: its words, its pictures, its buttons."""

import re
from dataclasses import replace
from typing import TYPE_CHECKING, Any, Final, Self

import discord

from bot.asker import merged
from bot.facts import Say
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.said import said_in
from bot.fronts.discord.sending import Attached, Message, guarded, send
from bot.fronts.discord.welcome import welcome_buttons
from bot.preferences import Context
from bot.render.post import MOST_TEXT, render_post
from bot.reply import Reply
from bot.saved.boards import Board, Topic
from bot.saved.keeper import KeeperSettings
from bot.serving.boards import BoardShown, board_shown

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone
    from bot.serving.memory import Memory

__all__ = ["BoardButton", "board_text", "board_view", "content_of", "drawn"]

# No words of our own stand above a board.
_ROOM: Final = MOST_TEXT + 150


async def content_of(client: "Noonstone", memory: "Memory", board: Board) -> BoardShown:
    """Return what a board shows, in the language and unit of its group."""
    settings, own = await memory.group(board.server)
    spoken = merged(client.preferences(), KeeperSettings(), settings, own)
    context = Context(spoken.shown, spoken.guide_url, "", own, language=spoken.spoken)
    content = board_shown(board.topic, board.animals, context, board.news)
    return content if client.studio is not None else replace(content, pictures=())


def board_text(content: BoardShown) -> str:
    """Return the words of a board as they stand in its message."""
    return render_post(content.reply, most=_ROOM).text


async def drawn(client: "Noonstone", content: BoardShown) -> tuple[Attached, ...]:
    """Return the pictures of a board as far as they could be drawn just now."""
    found = []
    for number, picture in enumerate(content.pictures, 1):
        if client.studio is None or picture.drawing is None:
            break
        png = await client.studio.png(picture.drawing)
        if not isinstance(png, bytes):
            break
        found.append(Attached(f"board-{number}.png", png, picture.alt))
    return tuple(found)


def board_view(board: Board, content: Reply) -> discord.ui.View:
    """Return the buttons under a board."""
    view = discord.ui.View(timeout=None)
    if board.topic is Topic.WELCOME:
        for button in welcome_buttons(content.language):
            view.add_item(button)
    view.add_item(BoardButton.of(board, content.language))
    for page in content.guide[:4]:
        if page.url:
            link = discord.ButtonStyle.link
            view.add_item(discord.ui.Button(style=link, label=page.title[:80], url=page.url))
    view.stop()
    return view


class BoardButton(
    Limited,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"board:(?P<number>\d{1,18})",
):
    """Says what a board is; its id is how the bot knows its own board again."""

    def __init__(self, number: int, label: str = "") -> None:
        button: discord.ui.Button[Any] = discord.ui.Button(
            label=label or None, custom_id=f"board:{number}"
        )
        super().__init__(button)

    @classmethod
    def of(cls, board: Board, language: str) -> Self:
        """Return the button of a board, in the language of its content."""
        return cls(board.id, said_in(language, Say("board-button")))

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(int(match["number"]))

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Say how up to date it is."""
        async with guarded(interaction, "telling of a board"):
            asker = await interaction.client.preferences_of(interaction)
            words = said_in(asker.spoken, Say("board-about"))
            await send(interaction, Message(words), private=True)
