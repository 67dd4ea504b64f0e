"""The buttons under an answer. Their state lies in their custom ids, so they outlive a restart."""

import re
from typing import TYPE_CHECKING, Any, Final, Self

import discord

from bot.facts import Say
from bot.fronts.discord.ask_missing import AskMissingButton
from bot.fronts.discord.board_message import BoardButton
from bot.fronts.discord.board_preview import PostBoardButton
from bot.fronts.discord.carried import carried
from bot.fronts.discord.forms import EditButton
from bot.fronts.discord.guide_pages import PageButton, PageSelect, add_page_turners
from bot.fronts.discord.labels import PageTitle, label
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.missing import FactSelect, OfferSelect, rows_asking, rows_missing
from bot.fronts.discord.parts import PartButton, parts_behind_buttons
from bot.fronts.discord.people import (
    HelperButton,
    OfferButton,
    PostHelperButton,
    WrongButton,
    can_offer,
)
from bot.fronts.discord.pictures import PictureButton
from bot.fronts.discord.question import Question
from bot.fronts.discord.reminder_buttons import CaseButton, DoneButton, SnoozeButton
from bot.fronts.discord.seen import Row
from bot.fronts.discord.sending import guarded
from bot.fronts.discord.sharing import ReplyButton, ShareButton, Target
from bot.fronts.discord.show import ShowButton
from bot.fronts.discord.sure import AgreeButton, DeleteButton, SureButton
from bot.fronts.discord.welcome import WelcomeButton
from bot.language.quantities import Units
from bot.preferences import FIRST
from bot.reply import PageLink, PartName, Reply

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["BUTTONS", "SwapButton", "rows_for"]

_MOST_PAGES = 5
_LONGEST_ADDRESS = 512


class SwapButton(
    Limited,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"u:(?P<units>in|cm):(?P<asked>.+)",
):
    """Shows the same answer with the other unit first."""

    def __init__(self, units: Units, custom_id: str, language: str = FIRST) -> None:
        told = label(Say.of("button", units), language)
        super().__init__(discord.ui.Button(label=told, custom_id=custom_id, row=0))
        self.units = units

    @classmethod
    def to(cls, units: Units, question: Question, language: str) -> Self:
        """Return the button that shows ``units`` first."""
        return cls(units, question.custom_id(f"u:{units.value}:"), language)

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(Units(match["units"]), match[0])

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Answer again, in place where the presser may change the message."""
        async with guarded(interaction, "swapping the unit"):
            client: Noonstone = interaction.client
            if question := await carried(interaction, self):
                await client.answer(interaction, question, first=self.units, in_place=True)


BUTTONS: Final = (
    SwapButton,
    ShareButton,
    ReplyButton,
    AskMissingButton,
    PictureButton,
    PartButton,
    EditButton,
    PageButton,
    PageSelect,
    SnoozeButton,
    DoneButton,
    CaseButton,
    AgreeButton,
    BoardButton,
    PostBoardButton,
    WelcomeButton,
    SureButton,
    DeleteButton,
    ShowButton,
    WrongButton,
    OfferButton,
    HelperButton,
    PostHelperButton,
    FactSelect,
    OfferSelect,
)


def rows_for(
    reply: Reply,
    question: Question,
    *,
    private: bool,
    own: bool,
    swap_to: Units | None,
    about: Target | None = None,
    pictures: bool = False,
    part: PartName | None = None,
    group: bool = False,
    helped: bool = False,
) -> tuple[Row, ...]:
    """Return the buttons of a reply: the picture, the parts, the unit, a change; then the rest.

    ``private``: only the asker sees it, in a place where others are, and it may be shared.
    ``own``: nobody else presses its buttons. ``swap_to``: the unit that could stand first.
    ``about``: the message the question was taken from, whose writer can be answered.
    ``pictures``: there is somebody to draw them. ``part``: the part that is open.
    ``group``: a group's moderators hear what is wrong. ``helped``: its helpers can be asked.
    """
    view, language = discord.ui.View(timeout=None), reply.around
    units = Units(reply.units) if reply.units else None
    if pictures and reply.picture is not None and units is not None:
        view.add_item(PictureButton.of(question, units, language))
    pages = _pages_in_sight(reply, part)
    for each in parts_behind_buttons(reply, pages_shown=bool(pages)):
        view.add_item(PartButton.of(question, each, units, language, is_open=each.name is part))
    if swap_to is not None:
        view.add_item(SwapButton.to(swap_to, question, language))
    fills = bool(reply.lacking) and not reply.dangers
    if own and EditButton.fits(question):
        says = _says_of_form(fills=fills, about=about)
        view.add_item(EditButton.of(question, language, says))
    if private and about is not None:
        view.add_item(ReplyButton(about, ready=reply.status == "ok", language=language))
        if not reply.dangers and _lacks(reply, question):
            view.add_item(AskMissingButton(about, language))
    elif private and reply.status == "ok":
        view.add_item(ShareButton(language))
    if reply.command == "guide" and reply.status == "ok":
        add_page_turners(view, reply)
    for page in pages:
        view.add_item(_page_item(page, language))
    if group and reply.status == "ok":
        view.add_item(WrongButton.of(question, language))
        if can_offer(reply, question):
            view.add_item(OfferButton.of(question, language))
    if helped and (reply.status == "problem" or reply.dangers or reply.undecided):
        view.add_item(HelperButton(language))
    if pictures and reply.sheet is not None and units is not None:
        view.add_item(PictureButton.of(question, units, language, "sheet"))
    return rows_missing(reply, question, tuple(view.to_components()), language)


def _says_of_form(*, fills: bool, about: Target | None) -> Say | None:
    """Return what stands on the button of the form: what is heard of a message is corrected."""
    if fills:
        return Say("button-fill")
    return Say("button-correct") if about is not None else None


def _lacks(reply: Reply, question: Question) -> bool:
    """Say whether somebody else may be asked for what an answer lacks."""
    if reply.status == "problem":
        return bool(reply.lacking)
    return bool(rows_asking(question, FIRST))


def _pages_in_sight(reply: Reply, part: PartName | None) -> tuple[PageLink, ...]:
    """Return the pages that have buttons: with the sources, or where help must be one press away.

    A guide page has turners of its own.
    """
    if reply.command == "guide" and reply.status == "ok":
        return ()
    near = reply.status == "problem" or bool(reply.dangers)
    shown = near or part is PartName.SOURCES or PartName.SOURCES in reply.opened
    return reply.guide[:_MOST_PAGES] if shown else ()


def _page_item(page: PageLink, language: str) -> discord.ui.Item[Any]:
    """Return a link to the page on the site, or the button that opens it here."""
    if not page.url or len(page.url) > _LONGEST_ADDRESS:
        return PageButton.of("open", page.slug, page.title, language, row=2)
    told = label(Say("button-page-open", PageTitle(page.title)), language)
    return discord.ui.Button(style=discord.ButtonStyle.link, label=told, url=page.url, row=2)
