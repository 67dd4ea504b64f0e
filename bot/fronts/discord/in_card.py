"""The picture in the card of an answer, where it is ready at once.

Discord takes a picture in a card with a new message only, never by an edit: what is not ready
then has its button, and a card that is edited keeps the picture that it has.
"""

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING, Any, Final

from bot.fronts.discord.seen import Row, seen
from bot.fronts.discord.sending import LONGEST_WORDS, Attached, Message
from bot.reply import Picture
from bot.serving.failures import note_failure
from bot.serving.studio import fingerprint

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone
    from bot.serving.studio import Studio

__all__ = ["WITHIN_S", "CardPicture", "pictured"]

WITHIN_S: Final = 0.25
"""How long a card waits for its picture."""
_BUTTON: Final = "p:see:"


class CardPicture:
    """The picture of an answer that is kept: once looked at, only its name and words are."""

    def __init__(self, picture: Picture, command: str) -> None:
        self._picture: Picture | None = picture
        self._name = f"{command.replace(' ', '-')}.png"
        self._print, self._words = "", ""

    @property
    def words(self) -> str:
        """Return the picture in words."""
        self._looked_at()
        return self._words

    async def soon(self, studio: "Studio") -> Attached | None:
        """Return it where it is ready in time."""
        drawing = self._looked_at()
        png = await studio.soon(drawing, WITHIN_S) if drawing else studio.kept(self._print)
        return Attached(self._name, png, self._words) if png else None

    def _looked_at(self) -> Any:
        """Return what is drawn, the first time: it is too much to be kept with every answer."""
        picture, self._picture = self._picture, None
        drawing = picture.drawing if picture else None
        if picture and drawing:
            self._print, self._words = fingerprint(drawing), picture.alt[:LONGEST_WORDS]
        return drawing


async def pictured(
    client: "Noonstone", message: Message, picture: CardPicture | None, edited: Any = None
) -> Message:
    """Return a card with its picture, which then needs no button; without one as it is.

    A new card has it where it is ready in time. One that is ``edited`` keeps the one that it has
    as long as that says the same.
    """
    if picture is None or client.studio is None:
        return message
    try:
        if edited is not None:
            drawn = seen(edited).drawn
            kept = drawn is not None and drawn.words == picture.words
            return replace(message, drawn=drawn, rows=_rest(message.rows)) if kept else message
        attached = await picture.soon(client.studio)
    except Exception as error:
        # It costs nothing but the picture.
        note_failure(error, "drawing for a card")
        return message
    if attached is None:
        return message
    client.metrics.pictures.labels("card").inc()
    return replace(message, attached=(attached,), rows=_rest(message.rows))


def _rest(rows: Sequence[Row]) -> tuple[Row, ...]:
    kept = ({**row, "components": [p for p in row["components"] if not _draws(p)]} for row in rows)
    return tuple(row for row in kept if row["components"])


def _draws(part: Row) -> bool:
    return str(part.get("custom_id") or "").startswith(_BUTTON)
