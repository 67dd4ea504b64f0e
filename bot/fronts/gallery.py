"""Pictures as files: drawn here and now, for the command line and the demo."""

import logging
from pathlib import Path

from bot.drawing import fingerprint
from bot.reply import Picture, Reply

__all__ = ["keep_picture", "keep_sheet"]

log = logging.getLogger(__name__)


def keep_picture(reply: Reply, folder: Path, stem: str = "") -> Path | None:
    """Write the reply's picture into a folder and return the file; None where there is none.

    Without a stem the file is named after the question and the picture itself, so that no
    picture takes the place of another. A picture that fails is logged: it never costs the answer.
    """
    return _kept(reply.picture, folder, stem, reply.command)


def keep_sheet(reply: Reply, folder: Path) -> Path | None:
    """Write the reply's care sheet into a folder and return the file; None where there is none."""
    return _kept(reply.sheet, folder, "", f"{reply.command} sheet")


def _kept(picture: Picture | None, folder: Path, stem: str, name: str) -> Path | None:
    if picture is None or picture.drawing is None:
        return None
    from bot.render.picture import draw

    drawing = picture.drawing
    own = f"{name.replace(' ', '-')}-{fingerprint(drawing)[:8]}"
    path = folder / f"{stem or own}.png"
    try:
        folder.mkdir(parents=True, exist_ok=True)
        path.write_bytes(draw(drawing))
    except Exception:
        log.exception("the picture could not be kept in %s", folder)
        return None
    return path
