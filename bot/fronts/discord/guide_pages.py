"""The guide inside the chat: a page opened from an answer, turned, or picked from the list."""

import re
from collections.abc import Sequence
from math import ceil
from typing import TYPE_CHECKING, Any, Self

import discord

from bot import guide
from bot.facts import Say
from bot.fronts.discord.labels import PagesFromTo, PageTitle, cut, label
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.question import Question
from bot.fronts.discord.sending import guarded
from bot.preferences import FIRST
from bot.reply import Reply

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["PageButton", "PageSelect", "add_page_turners"]

_PICK = "g:pick"
_ANOTHER = Say("button-pages")
_LONGEST_CHOICE = 100
_MOST_CHOICES = 25


class PageButton(
    Limited,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"g:(?P<how>open|back|on):(?P<slug>[a-z0-9-]+)",
):
    """Opens a page as a new message, or turns the page that is open."""

    def __init__(self, how: str, slug: str, told: str, row: int | None = None) -> None:
        button: discord.ui.Button[Any] = discord.ui.Button(
            label=told, custom_id=f"g:{how}:{slug}", row=row
        )
        super().__init__(button)
        self.how = how
        self.slug = slug

    @classmethod
    def of(cls, how: str, slug: str, title: str, language: str, row: int | None = None) -> Self:
        """Return the button that opens a page from an answer, or turns to it."""
        return cls(
            how, slug, label(Say.of("button-page", how, facts=PageTitle(title)), language), row
        )

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
        say: Say = _ANOTHER,
        language: str = FIRST,
    ) -> None:
        pages = [page for page in guide.pages(language) if page.slug in slugs]
        super().__init__(
            discord.ui.Select(
                custom_id=custom_id,
                placeholder=label(say, language),
                options=[
                    discord.SelectOption(
                        label=cut(page.title, _LONGEST_CHOICE),
                        value=page.slug,
                        description=cut(page.summary, _LONGEST_CHOICE),
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
    language = reply.around
    slugs = [page.slug for page in guide.pages()]
    here = slugs.index(reply.guide[0].slug) if reply.guide else -1
    if here > 0:
        before = guide.page(slugs[here - 1], language)
        view.add_item(PageButton.of("back", before.slug, before.title, language))
    if here + 1 < len(slugs):
        after = guide.page(slugs[here + 1], language)
        view.add_item(PageButton.of("on", after.slug, after.title, language))
    if here < 0:
        _add_all(view, slugs, language)
    elif near := _around(slugs, here):
        view.add_item(PageSelect(near, language=language))


def _add_all(view: discord.ui.View, slugs: list[str], language: str) -> None:
    """Add all pages, in as many lists of like length as it takes."""
    lists = ceil(len(slugs) / _MOST_CHOICES)
    length = ceil(len(slugs) / lists)
    for number, start in enumerate(range(0, len(slugs), length)):
        part = slugs[start : start + length]
        told = Say("button-pages-from", PagesFromTo(start + 1, start + len(part)))
        view.add_item(PageSelect(part, f"{_PICK}:{number}", told, language))


def _around(slugs: list[str], here: int) -> list[str]:
    """Return the other pages, the nearest where there are more than a list may hold."""
    start = max(0, min(here - _MOST_CHOICES // 2, len(slugs) - _MOST_CHOICES - 1))
    window = slugs[start : start + _MOST_CHOICES + 1]
    return [slug for slug in window if slug != slugs[here]][:_MOST_CHOICES]
