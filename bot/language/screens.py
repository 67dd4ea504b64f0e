"""What is between the tube and the animal: nothing, a share taken or let through, a weave."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.normal import normalise
from bot.language.numerals import NUMERAL, numeral
from bot.language.sides import LONGEST
from bot.language.units import Dimension, alias_pattern, exact, unit_named
from calc.tables import read_table

__all__ = [
    "NO_PANE",
    "Blocks",
    "NoScreen",
    "Pane",
    "Passes",
    "Screen",
    "Weave",
    "is_some_mesh",
    "pane_in",
    "read_between",
    "read_screen",
    "weaves_in",
]


@dataclass(frozen=True, slots=True)
class NoScreen:
    """Nothing is between tube and animal."""

    text: str


@dataclass(frozen=True, slots=True)
class Blocks:
    """A screen that takes this share (0 to 1) of the light."""

    fraction: float
    text: str


@dataclass(frozen=True, slots=True)
class Passes:
    """A screen that lets this share (0 to 1) of the light through."""

    fraction: float
    text: str


@dataclass(frozen=True, slots=True)
class Weave:
    """A round-wire weave: openings per metre both ways and the thickness of the wire."""

    mesh_x_per_m: float
    mesh_y_per_m: float
    wire_m: float
    text: str


@dataclass(frozen=True, slots=True)
class Pane:
    """Glass or clear plastic, through which no useful UVB comes."""

    material: str
    text: str


Screen = NoScreen | Blocks | Passes | Weave
"""What lets UV through, or a share of it."""

_ACCEPTED = Say("wanted-screen")
_EXAMPLE = "18x16 0.011in"
_GO_ON = Say("wanted-screen-go-on")
_NONE = (
    "none|no|nothing|without|no screen|no mesh|no lid|open|open top|0|inside|under|below|off"
    "|under the screen|below the screen|under the mesh|below the mesh|inside the enclosure"
    "|inside the tank|no screen between|nothing between"
)
_SOME = (
    "screen|mesh|yes|lid|screen top|mesh top|screen lid|mesh lid|a screen|a mesh|wire|net|over"
    "|fine mesh|insect screen|fly screen|through the screen|on the screen|on the mesh|on top"
    "|on top of the screen|on top of the mesh|above the screen|above the mesh|over the screen"
    "|over the mesh|over a mesh|over mesh"
)
_MESHY = re.compile(r"\b(?:mesh|screen|net|netting|wire|gauze)\b")
NO_PANE = Say("wanted-no-pane")
"""What is needed where a pane was told."""

_PERCENT = r"\s*(?:%|percent|per cent|pct)"
_BLOCKS = r"(?:block(?:s|ed|ing)?|takes?|cuts?|stops?|absorbs?)"
_PASSES = r"(?:pass(?:es|ed|ing)?|lets? through|through|transmit(?:s|ted|ting)?|open(?: area)?)"


def read_screen(text: str) -> Screen:
    """Read a screen; a bare percentage is the share it blocks, mesh counts are per inch.

    >>> read_screen("45%"), read_screen("passes 55%")
    (Blocks(fraction=0.45, text='45%'), Passes(fraction=0.55, text='passes 55%'))
    """
    if len(text) > LONGEST:
        raise NotUnderstoodError(text, _ACCEPTED, _EXAMPLE)
    words = " ".join(text.split())
    plain = _plain(words)
    if plain in _NONE.split("|"):
        return NoScreen(words)
    if pane_in(words) is not None:
        raise NotUnderstoodError(text, NO_PANE, "none")
    if is_some_mesh(words):
        raise NotUnderstoodError(text, _GO_ON, "45%")
    return _share(plain, words) or _weave(plain, words)


def read_between(text: str) -> Screen | Pane:
    """Read what is between: a screen, or a pane that stops the UV.

    >>> read_between("glass lid").material, read_between("45%").fraction
    ('glass', 0.45)
    """
    pane = pane_in(text) if len(text) <= LONGEST else None
    return read_screen(text) if pane is None else pane


def pane_in(words: str) -> Pane | None:
    """Return the pane that words tell of, if they tell of no mesh beside it."""
    plain = _plain(words)
    found = _pane_pattern().search(plain)
    if found is None or _MESHY.search(plain) or plain in _NONE.split("|"):
        return None
    return Pane(_panes()[found[0]], " ".join(words.split()))


@cache
def _panes() -> Mapping[str, str]:
    rows = read_table("bot/language/panes.toml")
    return {word: name for name, row in rows.items() for word in row["words"]}


@cache
def _pane_pattern() -> re.Pattern[str]:
    longest_first = sorted(_panes(), key=len, reverse=True)
    return re.compile(rf"(?<![a-z])(?:{'|'.join(map(re.escape, longest_first))})(?![a-z])")


def is_some_mesh(words: str) -> bool:
    """Say whether the words tell of a mesh and of nothing that it takes."""
    return _plain(words) in _SOME.split("|")


def _plain(words: str) -> str:
    return normalise(words).lower().strip(" .")


def _share(plain: str, words: str) -> Blocks | Passes | None:
    match = _share_pattern().fullmatch(plain)
    if match is None:
        return None
    number = numeral(match["number"])
    if number is None or number.doubtful or not 0 <= number.value <= 100:
        raise NotUnderstoodError(words, Say("wanted-share"), "45%")
    kind = match["before"] or match["after"] or ""
    fraction = float(number.value / 100)
    if re.fullmatch(_PASSES, kind):
        if fraction == 0:
            raise NotUnderstoodError(words, Say("wanted-through"), "passes 55%")
        return Passes(fraction, words)
    if fraction == 1:
        raise NotUnderstoodError(words, Say("wanted-through"), "45%")
    return Blocks(fraction, words)


@cache
def _share_pattern() -> re.Pattern[str]:
    kind = f"{_BLOCKS}|{_PASSES}"
    noun = r"(?:(?:a |the )?(?:screen|mesh|lid)(?: that)? )?"
    tail = r"(?: (?:of )?(?:the |its )?(?:uv-?b?|light))?"
    return re.compile(
        rf"{noun}(?:(?P<before>{kind}) *)?(?P<number>{NUMERAL}){_PERCENT}{tail}"
        rf"(?: *(?P<after>{kind}))?(?: screen| mesh)?",
        re.A,
    )


@cache
def _weave_pattern() -> re.Pattern[str]:
    count = r"[0-9]{1,3}(?:\.[0-9]{1,2})?"
    per = r"(?: ?(?P<per>(?:(?:openings|holes|wires) ?)?(?:per |/ ?)(?:inch|in|cm)(?![a-z])))?"
    return re.compile(
        rf"(?P<x>{count})(?: ?(?:x|by) ?(?P<y>{count}))?(?P<mesh> ?mesh)?{per}(?P<mesh2> ?mesh)?"
        rf"(?:,? *(?:with |of )?(?:an? )?(?:wire |thread )?(?:of )?"
        rf"(?P<wire>{NUMERAL}) ?(?P<unit>{alias_pattern(Dimension.LENGTH)})?\.?"
        rf"(?: ?(?:wires?|threads?|thick))?)?",
        re.A,
    )


def _weave(plain: str, words: str) -> Weave:
    match = _weave_pattern().fullmatch(plain)
    if match is None or not (match["y"] or match["mesh"] or match["mesh2"] or match["per"]):
        if not any(sign.isdigit() for sign in plain):
            raise NotUnderstoodError(words, _GO_ON, "45%")
        raise NotUnderstoodError(words, _ACCEPTED, _EXAMPLE)
    wire = numeral(match["wire"]) if match["wire"] else None
    if wire is None or wire.doubtful or not match["unit"]:
        raise NotUnderstoodError(words, Say("wanted-wire"), _EXAMPLE)
    per_unit = "cm" if (match["per"] or "").endswith("cm") else "in"
    pitch = float(exact(Fraction(1), per_unit, "m"))
    x, y = float(match["x"]), float(match["y"] or match["x"])
    wire_m = float(exact(wire.value, unit_named(match["unit"], Dimension.LENGTH), "m"))
    if min(x, y) <= 0 or wire_m <= 0 or wire_m * max(x, y) / pitch >= 1:
        raise NotUnderstoodError(words, Say("wanted-thin-wire"), _EXAMPLE)
    return Weave(x / pitch, y / pitch, wire_m, words)


def weaves_in(text: str) -> Iterator[tuple[Weave, int, int]]:
    """Return the weaves told with their wire in a normalised lower-case text, and their places."""
    for match in _weave_pattern().finditer(text):
        touching = text[match.start() - 1 : match.start()]
        if not (match["wire"] and match["unit"]) or touching.isalnum() or touching in (".", ","):
            continue
        if not (match["y"] or match["mesh"] or match["mesh2"] or match["per"]):
            continue
        try:
            yield _weave(match[0], match[0]), match.start(), match.end()
        except NotUnderstoodError:
            continue
