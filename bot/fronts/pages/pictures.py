"""The pictures of the site: drawn while it is built, and named after what they show."""

import logging
from functools import lru_cache

from bot.drawing import Drawing, fingerprint
from bot.reply import Reply

__all__ = ["picture_file"]

log = logging.getLogger(__name__)


def picture_file(reply: Reply) -> tuple[str, bytes] | None:
    """Return the name and the bytes of the reply's picture; None where there is none to show.

    A picture that fails is logged; the page is then built without it.
    """
    if reply.picture is None or reply.picture.drawing is None:
        return None
    drawing = reply.picture.drawing
    try:
        return f"picture-{fingerprint(drawing)[:16]}.png", _drawn(drawing)
    except Exception:
        log.exception("a picture of the site could not be drawn")
        return None


@lru_cache(maxsize=64)
def _drawn(drawing: Drawing) -> bytes:
    from bot.render.picture import draw

    return draw(drawing)
