"""What a board would say beside what stands in its message now, and the button that posts it."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import SequenceMatcher
from typing import TYPE_CHECKING, Any, Final

import aiohttp
import discord

from bot.commands import command_named
from bot.facts import Say
from bot.fronts.discord.board_message import board_text, content_of, drawn
from bot.fronts.discord.carried import QuestionButton, carried
from bot.fronts.discord.question import IN_MESSAGE, Question
from bot.fronts.discord.rights import asker_of
from bot.fronts.discord.said import said
from bot.fronts.discord.seen import seen
from bot.fronts.discord.sending import Message, in_direct_messages, send, sent, think
from bot.preferences import Preferences
from bot.queries.server import BoardQuery
from bot.question_context import context_of
from bot.questions.saved.boards import animals_wanted
from bot.render.escaping import units_long
from bot.render.post import MOST_CARD, Post
from bot.saved.boards import Board, BoardState
from bot.saved.reminders import Trouble
from bot.serving.boards import with_targets

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone
    from bot.serving.memory import Memory

__all__ = ["PREVIEW", "PostBoardButton", "show_preview"]

PREVIEW: Final = "board preview"
_POST: Final = "board post"
# What stands before the words of a line: a heading, small text, a number, a point.
_BEFORE: Final = re.compile(r"(\s*(?:#{1,3} |-# |- |\d+\. )?)(.*)", re.S)
_CODE: Final = "```"
_LEFT_OUT: Final = "…"
# For the ends of lines between the texts.
_SPARE: Final = 20


@dataclass(frozen=True, slots=True)
class BoardBeside:
    """How many lines of a board go, and how many come."""

    gone: int
    come: int


class PostBoardButton(QuestionButton, template=r"board-post:(?P<asked>.+)"):
    """Posts the board that was previewed, or changes the one that stands."""

    says, prefix, style = Say("button-board-post"), "board-post:", discord.ButtonStyle.primary

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Want it, as if it was asked for; who may is looked at there."""
        question, command = await carried(interaction, self), command_named(_POST)
        if question is not None and command is not None:
            await interaction.client.answer_saved(interaction, command, question.given)


async def show_preview(
    interaction: discord.Interaction["Noonstone"],
    memory: "Memory",
    given: Mapping[str, Any],
    asker: Preferences,
) -> None:
    """Show what a board would say beside what stands, to the moderator alone, then its pictures."""
    client, private = interaction.client, not in_direct_messages(interaction)
    where, query = asker_of(interaction), BoardQuery.model_validate(dict(given))
    assert where.server is not None
    assert where.channel is not None
    wanted = animals_wanted(query, context_of(query, given, asker))
    here = [
        board
        for board in await memory.store.boards.all(where.server)
        if (board.channel, board.topic) == (where.channel, query.topic)
    ]
    board = here[0] if here else _new(where.server, where.channel, query)
    _, own = await memory.group(where.server)
    board = board.model_copy(update={"animals": wanted})
    await think(interaction, private=private)
    content = await content_of(client, memory, with_targets(board, own, memory.clock().date()))
    would, stands = board_text(content), await _standing(client, board)
    message = await _compared(interaction, stands, would, posted=board.message is not None)
    question = Question(_POST, dict(given))
    button = PostBoardButton.of(question, asker.spoken)
    rows = []
    if stands != would and not button.custom_id.endswith(IN_MESSAGE):
        rows = discord.ui.View(timeout=None).add_item(button).to_components()
    await send(interaction, Message(message[0], message[1], rows, card=True), private=private)
    pictures = await drawn(client, content)
    if pictures:
        words = await said(interaction, Say("front-board-pictures"))
        await sent(interaction, Message(words, attached=pictures), private=private)


def _new(server: int, channel: int, query: BoardQuery) -> Board:
    return Board(
        id=0,
        server=server,
        channel=channel,
        topic=query.topic,
        animals=(),
        message=None,
        pinned=False,
        fingerprint="",
        state=BoardState.SHOWN,
        trouble=Trouble.NONE,
        wish=0,
    )


async def _standing(client: "Noonstone", board: Board) -> str:
    """Return what the message of a board says; nothing where there is none to be seen."""
    if board.message is None:
        return ""
    place = client.get_partial_messageable(board.channel, guild_id=board.server)
    try:
        return seen(await place.fetch_message(board.message)).post.text
    except (discord.HTTPException, aiohttp.ClientError):
        return ""


async def _compared(
    interaction: discord.Interaction["Noonstone"], stands: str, would: str, *, posted: bool
) -> tuple[str, Post]:
    """Return our words on what changes, and both texts, one under the other."""
    if stands == would:
        return await said(interaction, Say("front-board-same")), Post(would)
    if not stands:
        why = Say("front-board-unseen") if posted else Say("front-board-new")
        return await said(interaction, why), Post(would)
    old, new = stands.split("\n"), would.split("\n")
    steps = SequenceMatcher(None, old, new, autojunk=False).get_opcodes()
    gone = {n for how, a, b, _, _ in steps if how != "equal" for n in range(a, b) if old[n]}
    come = {n for how, _, _, a, b in steps if how != "equal" for n in range(a, b) if new[n]}
    words = await said(interaction, Say("front-board-other", BoardBeside(len(gone), len(come))))
    new_told = "\n".join(_marked(new, come, "__"))
    below = f"**{await said(interaction, Say('front-board-would'))}**\n{new_told}"
    above = f"**{await said(interaction, Say('front-board-stands'))}**"
    room = MOST_CARD - units_long(words) - units_long(above) - units_long(below) - _SPARE
    old_told = _fitted(_marked(old, gone, "~~"), gone, room)
    return words, Post(f"{above}\n{old_told}", below)


def _fitted(lines: list[str], gone: set[int], room: int) -> str:
    """Return the lines that stand, all of them, or those that go with some that stay, or fewer."""
    if units_long("\n".join(lines)) <= room:
        return "\n".join(lines)
    near = {n + step for n in gone for step in (-1, 0, 1)}
    kept = [line if n in near else _LEFT_OUT for n, line in enumerate(lines)]
    told = [line for n, line in enumerate(kept) if line != _LEFT_OUT or kept[n - 1 : n] != [line]]
    while units_long("\n".join(told)) > room:
        told = [*told[:-2], _LEFT_OUT]
    return "\n".join(told)


def _marked(lines: list[str], which: set[int], mark: str) -> list[str]:
    """Return the lines, those that differ struck through or underlined; a block of code stays."""
    told, in_code = [], False
    for number, line in enumerate(lines):
        in_code ^= line.startswith(_CODE)
        if number in which and not in_code and not line.startswith(_CODE):
            found = _BEFORE.fullmatch(line)
            line = f"{found[1]}{mark}{found[2]}{mark}" if found else line
        told.append(line)
    return told
