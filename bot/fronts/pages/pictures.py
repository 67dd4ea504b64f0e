"""Pictures for pages: the site's are drawn while it is built, an answer's when it is looked at."""

import logging
from functools import lru_cache
from hashlib import sha256

from cachetools import LRUCache

from bot.drawing import Drawing, fingerprint
from bot.render.html import Image
from bot.reply import Picture
from bot.serving.studio import Missing, Studio

__all__ = ["Album", "Drawn"]

_MOST_WAITING = 64

log = logging.getLogger(__name__)


class Album:
    """The picture files that the pages of a site show, each once, named after their bytes."""

    def __init__(self) -> None:
        self.files: dict[str, bytes] = {}

    def put(self, picture: Picture | None) -> Image | None:
        """Keep a picture and return how to show it; None where there is none to show.

        A picture that fails is logged; the page is then built without it.
        """
        drawing = _shown(picture)
        if drawing is None:
            return None
        try:
            png = _drawn(drawing)
        except Exception:
            log.exception("a picture of the site could not be drawn")
            return None
        name = f"picture-{sha256(png).hexdigest()[:16]}.png"
        self.files[name] = png
        return Image(name, *_size(png))


class Drawn:
    """The pictures of the latest answers: known by name, drawn beside the event loop.

    Only what an answer has put here can be fetched, and it is drawn once, so that asking for
    pictures costs no more than asking questions.
    """

    def __init__(self, studio: Studio) -> None:
        self._studio = studio
        self._drawings: LRUCache[str, Drawing] = LRUCache(_MOST_WAITING)

    def put(self, picture: Picture | None) -> Image | None:
        """Remember what to draw and return where it can be fetched for a while.

        May be called beside the event loop: what a picture shows is worked out here.
        """
        drawing = _shown(picture)
        if drawing is None:
            return None
        name = f"drawn-{fingerprint(drawing)}.png"
        self._drawings[name] = drawing
        return Image(name)

    async def png(self, name: str) -> bytes | Missing | None:
        """Return the picture, why it is missing, or None for a name that is not known."""
        drawing = self._drawings.get(name)
        if drawing is None:
            return None
        png = await self._studio.png(drawing)
        if png is Missing.FAILED:
            # What failed once would fail again: nobody can make it be tried for ever.
            self._drawings.pop(name, None)
        return png

    async def close(self) -> None:
        """End the drawing."""
        await self._studio.close()


def _shown(picture: Picture | None) -> Drawing | None:
    """Return what a picture shows; None also where working it out fails, which is logged."""
    try:
        return None if picture is None else picture.drawing
    except Exception:
        log.exception("a picture could not be worked out")
        return None


@lru_cache(maxsize=64)
def _drawn(drawing: Drawing) -> bytes:
    from bot.render.picture import draw

    return draw(drawing)


def _size(png: bytes) -> tuple[int, int]:
    """Return width and height [px], which stand at a fixed place in every PNG."""
    return int.from_bytes(png[16:20]), int.from_bytes(png[20:24])
