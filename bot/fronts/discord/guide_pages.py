"""The guide inside the chat: a page opened from an answer, turned, or picked from the list."""

import re
from collections.abc import Sequence
from math import ceil
from typing import TYPE_CHECKING, Any, Self

import discord

from bot import guide
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.question import Question
from bot.fronts.discord.sending import guarded
from bot.reply import Reply

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["PageButton", "PageSelect", "add_page_turners"]

_PICK = "g:pick"
_PLACEHOLDER = "Another page of the guide"
_LONGEST_LABEL = 80
_LONGEST_CHOICE = 100
_MOST_CHOICES = 25


class PageButton(
    Limited,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"g:(?P<how>open|back|on):(?P<slug>[a-z0-9-]+)",
):
    """Opens a page as a new message, or turns the page that is open."""

    def __init__(self, how: str, slug: str, label: str, row: int | None = None) -> None:
        button: discord.ui.Button[Any] = discord.ui.Button(
            label=_cut(label, _LONGEST_LABEL), custom_id=f"g:{how}:{slug}", row=row
        )
        super().__init__(button)
        self.how = how
        self.slug = slug

    @classmethod
    def opening(cls, slug: str, title: str, row: int | None = None) -> Self:
        """Return the button that opens a page from an answer."""
        return cls("open", slug, f"Guide: {title}", row)

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(match["how"], match["slug"], item.label)

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Show the page."""
        await _show(interaction, self.slug, in_place=self.how != "open")


class PageSelect(
    Limited, discord.ui.DynamicItem[discord.ui.Select[Any]], template=rf"{_PICK}(?::[0-9]+)?"
):
    """A list of pages to pick from; where there are several, each has its number in its id."""

    def __init__(
        self,
        slugs: Sequence[str] = (),
        custom_id: str = _PICK,
        placeholder: str = _PLACEHOLDER,
    ) -> None:
        pages = [page for page in guide.pages() if page.slug in slugs]
        super().__init__(
            discord.ui.Select(
                custom_id=custom_id,
                placeholder=placeholder,
                options=[
                    discord.SelectOption(
                        label=_cut(page.title, _LONGEST_CHOICE),
                        value=page.slug,
                        description=_cut(page.summary, _LONGEST_CHOICE),
                    )
                    for page in pages
                ],
            )
        )

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the list that was used."""
        return cls(custom_id=match.string)

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Show the page that was picked."""
        await _show(interaction, self.item.values[0], in_place=True)


async def _show(interaction: discord.Interaction[Any], slug: str, *, in_place: bool) -> None:
    async with guarded(interaction, "opening a guide page"):
        question = Question("guide", {"page": slug})
        client: Noonstone = interaction.client
        await client.answer(interaction, question, in_place=in_place)


def add_page_turners(view: discord.ui.View, reply: Reply) -> None:
    """Add the pages before and after the one shown, and the list of the others."""
    slugs = [page.slug for page in guide.pages()]
    here = slugs.index(reply.guide[0].slug) if reply.guide else -1
    if here > 0:
        before = guide.page(slugs[here - 1])
        view.add_item(PageButton("back", before.slug, f"Back: {before.title}"))
    if here + 1 < len(slugs):
        after = guide.page(slugs[here + 1])
        view.add_item(PageButton("on", after.slug, f"Next: {after.title}"))
    if here < 0:
        _add_all(view, slugs)
    elif near := _around(slugs, here):
        view.add_item(PageSelect(near))


def _add_all(view: discord.ui.View, slugs: list[str]) -> None:
    """Add all pages, in as many lists of like length as it takes."""
    lists = ceil(len(slugs) / _MOST_CHOICES)
    length = ceil(len(slugs) / lists)
    for number, start in enumerate(range(0, len(slugs), length)):
        part = slugs[start : start + length]
        told = f"Pages {start + 1} to {start + len(part)} of the guide"
        view.add_item(PageSelect(part, f"{_PICK}:{number}", told))


def _around(slugs: list[str], here: int) -> list[str]:
    """Return the other pages, the nearest where there are more than a list may hold."""
    start = max(0, min(here - _MOST_CHOICES // 2, len(slugs) - _MOST_CHOICES - 1))
    window = slugs[start : start + _MOST_CHOICES + 1]
    return [slug for slug in window if slug != slugs[here]][:_MOST_CHOICES]


def _cut(text: str, most: int) -> str:
    return text if len(text) <= most else f"{text[: most - 1]}…"
