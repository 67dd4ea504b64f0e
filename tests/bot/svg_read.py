"""Reading a picture back from its SVG: shapes and words as they are drawn."""

from xml.etree import ElementTree

from bot.drawing import Drawing
from bot.render.picture import Theme, page_of
from bot.render.picture.inks import Ink, shown

__all__ = ["SVG", "elements", "floats", "ink", "root_of", "words"]

SVG = "{http://www.w3.org/2000/svg}"


def root_of(drawing: Drawing, theme: Theme = Theme.LIGHT) -> ElementTree.Element:
    return ElementTree.fromstring(page_of(drawing).svg(theme))


def elements(drawing: Drawing, tag: str) -> list[dict[str, str]]:
    return [dict(found.attrib) for found in root_of(drawing).iter(f"{SVG}{tag}")]


def words(drawing: Drawing) -> list[str]:
    return [found.text or "" for found in root_of(drawing).iter(f"{SVG}text")]


def ink(which: Ink) -> str:
    return shown(which, Theme.LIGHT)


def floats(given: dict[str, str], *names: str) -> tuple[float, ...]:
    return tuple(float(given[name]) for name in names)
