"""Stand-ins for the drawing, in a module of their own: another process imports it each time."""

import threading

from bot.drawing import Drawing

__all__ = ["hopeless", "never", "told"]


def told(drawing: Drawing) -> bytes:
    """Return what the picture would be of."""
    return drawing.title.encode()


def hopeless(_: Drawing) -> bytes:
    """Fail at every picture."""
    raise ValueError("this one never works")


def never(_: Drawing) -> bytes:
    """Hang at every picture."""
    threading.Event().wait()
    return b""
