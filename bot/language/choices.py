"""Words that stand for one of a few things: materials, lids, lamp shapes, thermometers.

Readers return the first name of the thing; the answer knows what it means to the engine.
"""

import re
from collections.abc import Collection, Iterable, Mapping

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.normal import normalise
from bot.language.sides import LONGEST
from bot.language.wanted import Choice

__all__ = [
    "GIVES",
    "LAMP_PLACES",
    "LAMP_SHAPES",
    "LEVELS",
    "LIDS",
    "MATERIALS",
    "MONTHS",
    "NEEDS",
    "SUN_PLACES",
    "SURFACES",
    "THERMOMETERS",
    "YES_NO",
    "choice_said",
    "one_of",
    "read_choice",
    "read_thermometers",
]

MATERIALS: Mapping[str, Collection[str]] = {
    "glass": ("glass tank", "tank", "aquarium", "all glass", "terrarium"),
    "wood": ("wooden", "plywood", "ply", "osb", "mdf", "timber", "pine", "oak"),
    "pvc": ("plastic", "pvc board", "foamed pvc", "expanded pvc", "acrylic", "polycarbonate"),
    "mesh": (
        "screen",
        "all mesh",
        "mesh cage",
        "screen cage",
        "mesh on all sides",
        "net",
        "wire mesh",
        "all screen",
    ),
    "melamine": ("chipboard", "particleboard", "laminate", "coated chipboard", "particle board"),
}
LIDS: Mapping[str, Collection[str]] = {
    "solid": ("closed", "wood", "glass", "pvc", "wooden", "none", "no mesh", "front opening"),
    "part mesh": (
        "partly mesh",
        "half mesh",
        "some mesh",
        "part screen",
        "partial",
        "part",
        "half",
    ),
    "full mesh": ("mesh", "screen", "all mesh", "wire", "screen top", "mesh top", "full", "open"),
}
SUN_PLACES: Mapping[str, Collection[str]] = {
    "open": ("outside", "outdoors", "pen", "outdoor pen", "run", "mesh pen", "garden", "balcony"),
    "window": ("behind glass", "glass", "window sill", "windowsill", "indoors", "through glass"),
    "greenhouse": ("glasshouse", "cold frame", "plastic", "conservatory", "polytunnel", "frame"),
}
LEVELS: Mapping[str, Collection[str]] = {
    "minimum": ("bare minimum", "least", "basic", "cheap", "only what it needs"),
    "good": ("normal", "usual", "proper"),
    "better": ("best", "more", "great", "deluxe"),
}
LAMP_SHAPES: Mapping[str, Collection[str]] = {
    "wide dome": ("dome", "wide", "bulb in a dome", "household bulb", "bulb", "wide reflector"),
    "flood": (
        "flood lamp",
        "flood light",
        "floodlight",
        "halogen flood",
        "par38",
        "par30",
        "halogen",
    ),
    "narrow": ("spot", "narrow spot", "spotlight", "spot lamp", "narrow beam"),
}
LAMP_PLACES: Mapping[str, Collection[str]] = {
    "inside": ("in", "inside the enclosure", "under the lid", "below the mesh", "under the mesh"),
    "above": ("outside", "on top", "above the mesh", "over the mesh", "on the mesh", "over"),
}
SURFACES: Mapping[str, Collection[str]] = {
    "slate": ("slate tile", "natural slate"),
    "tile": ("ceramic", "ceramic tile", "porcelain", "tiles"),
    "wood": ("branch", "log", "timber", "plywood", "wooden"),
    "brick": ("clay", "terracotta", "fired clay", "bricks", "paver"),
    "concrete": ("cement", "mortar"),
    "granite": ("stone", "rock", "rough stone", "flagstone", "basalt", "sandstone"),
    "sand": ("loose sand",),
    "soil": ("earth", "dirt", "substrate"),
    "painted": ("paint", "painted wood", "varnished", "lacquer", "coated", "grout"),
    "plastic": ("resin", "vinyl", "rubber", "acrylic"),
    "glass": ("pane", "glass pane"),
    "metal": ("bare metal", "aluminium", "aluminum", "steel", "foil", "galvanised", "galvanized"),
}
THERMOMETERS: Mapping[str, Collection[str]] = {
    "infrared gun": ("gun", "ir gun", "temp gun", "temperature gun", "infrared", "laser", "ir"),
    "digital probe": ("probe", "digital", "digital thermometer", "thermometer with a probe"),
    "dial or strip": ("dial", "strip", "analog", "analogue", "stick on", "gauge", "sticker"),
}
GIVES: Mapping[str, Collection[str]] = {
    "uv": ("uvb", "any uv"),
    "light": ("any light", "visible light"),
    "night": ("at night", "nights"),
    "use": ("purpose", "what for", "used for"),
}
NEEDS: Mapping[str, Collection[str]] = {
    "uv": ("uvb", "any uv", "whether uv"),
    "uvi": ("uv index", "index", "how much uv"),
    "basking": ("hot spot", "basking spot", "warm end", "warm side", "surface"),
    "cool": ("cool end", "cool side", "cold end", "cold side"),
    "night": ("nights", "at night", "how cold"),
    "water": ("water temperature",),
    "hours": ("light", "day", "hours of light"),
}
MONTHS: Mapping[str, Collection[str]] = {
    "own": ("theirs", "natural", "as they are", "same"),
    "turned": ("mine", "flipped", "reversed", "half a year later", "shifted"),
}
YES_NO: Mapping[str, Collection[str]] = {
    "yes": ("y", "true", "can", "it can"),
    "no": ("n", "false", "cannot", "it cannot"),
}
_BETWEEN = re.compile(r"\s*(?:,|;|/|&|\+|\band\b)\s*", re.I)


def read_choice(text: str, names: Mapping[str, Collection[str]]) -> str:
    """Return the first name of what is meant; case and hyphens do not count.

    >>> read_choice("Plywood", MATERIALS), read_choice("mesh", LIDS)
    ('wood', 'full mesh')
    """
    words = _plain(text) if len(text) <= LONGEST else ""
    for name, aliases in names.items():
        if words == name or words in aliases:
            return name
    every = [word for name, aliases in names.items() for word in (name, *aliases)]
    near = closest(words, every) if words else None
    raise NotUnderstoodError(text, one_of(names, near), near or next(iter(names)))


def one_of(names: Iterable[str], near: str | None = None) -> Say:
    """Return what is accepted where one of a few names is, each in the reader's language."""
    names = tuple(names)
    told = choice_said(near) if near in names else near
    return Say("wanted-choice", Choice(tuple(map(choice_said, names)), told))


def choice_said(name: str) -> Say | str:
    """Return what there is to choose, as the reader's language has it; a figure is itself.

    >>> choice_said("T5 HO tube"), choice_said("52")
    (Say(id='choice-t5-ho-tube', facts=None), '52')
    """
    if not re.search("[a-z]", name):
        return name
    return Say.of("choice", *re.findall(r"[a-z0-9]+", name.lower()))


def read_thermometers(text: str) -> frozenset[str]:
    """Return what measured; more than one may be named.

    >>> sorted(read_thermometers("IR gun and a probe"))
    ['digital probe', 'infrared gun']
    """
    if len(text) > LONGEST:
        wanted = one_of(THERMOMETERS)
        raise NotUnderstoodError(text, wanted, "infrared gun")
    whole = _plain(text)
    if any(whole == name or whole in aliases for name, aliases in THERMOMETERS.items()):
        return frozenset((read_choice(text, THERMOMETERS),))
    pieces = [re.sub(r"^\s*(?:an?|the|my)\s+", "", piece) for piece in _BETWEEN.split(text)]
    return frozenset(read_choice(piece, THERMOMETERS) for piece in pieces if piece.strip())


def _plain(text: str) -> str:
    return " ".join(normalise(text).lower().replace("-", " ").split())
