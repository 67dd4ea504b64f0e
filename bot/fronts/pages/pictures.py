"""Pictures for pages: drawn into the page itself, in the page's own inks and letters."""

import logging
from dataclasses import replace
from functools import lru_cache

from markupsafe import Markup

from bot.drawing import Drawing, Figure, Side, fingerprint
from bot.reply import Picture

__all__ = ["inline", "parted", "silhouette"]

log = logging.getLogger(__name__)


def inline(picture: Picture | None) -> Markup | None:
    """Return a picture as a part of a page; None where there is none to show.

    A picture that fails is logged; the page then stands without it. May be called beside the
    event loop: what a picture shows is worked out and laid out here.
    """
    try:
        drawing = None if picture is None else picture.drawing
        if picture is None or drawing is None:
            return None
        return _drawn(drawing, picture.alt)
    except Exception:
        log.exception("a picture of a page could not be drawn")
        return None


def parted(picture: Picture | None) -> tuple[Markup | None, tuple[str, ...]]:
    """Return a picture of a box as a part of a page, and the lines below it, to stand beside it."""
    drawing = None if picture is None else picture.drawing
    if picture is None or not isinstance(drawing, Side):
        return inline(picture), ()
    bare = Picture(picture.alt, replace(drawing, note=""))
    return inline(bare), tuple(drawing.note.splitlines())


@lru_cache(maxsize=64)
def _drawn(drawing: Drawing, told: str) -> Markup:
    from bot.render.picture import Theme, page_of

    # Written by an element tree of our own shapes: every word in it is escaped.
    svg = page_of(drawing).svg(Theme.PAGE, f"picture-{fingerprint(drawing)[:12]}", told)
    return Markup(svg)


def silhouette(figure: Figure, told: str) -> Markup:
    """Return an animal alone, as a part of a page."""
    from bot.render.picture import Theme
    from bot.render.picture.animals import animal_alone

    return Markup(animal_alone(figure, Theme.PAGE, f"figure-{figure.value}", told))
