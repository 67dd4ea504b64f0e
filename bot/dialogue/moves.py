"""How a line says that a lamp or the place under it was moved or dimmed, and what is so then."""

import re
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure, convert, read_length
from bot.language.units import Units

__all__ = ["Change", "Moved", "changed_in", "moved_on"]


class Change(StrEnum):
    """What was changed: the lamp above, the place under it, or how strong the lamp is."""

    LAMP = "lamp"
    PLACE = "place"
    POWER = "power"


@dataclass(frozen=True, slots=True)
class Moved:
    """What a line says was changed, and the rest of the line.

    ``by`` is how far, as it was typed, ``unit`` its unit where one was typed; nothing of ``by``
    is a move without a figure. ``nearer``: lamp and animal are nearer to each other then.
    """

    change: Change
    by: str
    unit: str
    nearer: bool
    rest: str


_PLACE = re.compile(
    r"\b(?:log|rock|stone|perch|branch|platform|ledge|shelf|slate|tile|basking (?:spot|place)|dock"
    r"|hammock|ast|stein|brett|platte|wurzel|sonnenplatz|liegeplatz|korkröhre)\b"
)
_UP = re.compile(r"\b(?:up|higher|höher|hoch|hinauf|nach oben|raised?|lifted|angehoben|hoch\w+)\b")
_DOWN = re.compile(
    r"\b(?:down|lower(?:ed)?|tiefer|runter|herunter|nach unten|dropped|abgesenkt|runter\w+)\b"
)
_NEAR = re.compile(r"\b(?:closer|nearer|näher)\b")
_FAR = re.compile(r"\b(?:further|farther|away|back|weiter (?:weg|entfernt))\b")
# These say by themselves which way it went; the next need a word for it.
_BY_ITSELF = r"raised?|lifted|lowered|lower|dropped|angehoben|hochgehängt|abgesenkt|runtergehängt"
_WITH_A_WAY = r"moved?|shifted|brought|pushed|pulled|slid|verschoben|gerückt|runter|hoch"
_COMPARED = re.compile(
    r"\b(?:higher|lower|closer|nearer|further|farther|höher|tiefer|näher|weiter (?:weg|entfernt))\b"
)
_VERB = re.compile(
    rf"\b(?:(?P<sure>{_BY_ITSELF})|(?P<way>{_WITH_A_WAY})"
    r"|(?P<put>put|hung|hang|set|mounted|fixed|gehängt|gesetzt|gestellt|gelegt|gemacht))\b"
)
_BY = re.compile(
    r"(?<![\w.,])(\d+(?:[.,]\d+)?) ?(inch(?:es)?|in|\"|cm|zentimeter|zoll)?(?=\W|$)"
    r"(?! ?(?:%|°|w\b|watt|[fc]\b|degree|grad|hour|min|branch|x))"
)
_POWER = re.compile(
    r"\b(?:dimmed|turned (?:it|that|this|the (?:lamp|heat|light|bulb|dimmer)) (?:down|up)"
    r"|turned (?:down|up) (?:the )?(?:lamp|heat|light|bulb|dimmer)"
    r"|(?:smaller|weaker|bigger|stronger) bulb in|swapped the (?:heat |basking )?(?:bulb|lamp)"
    r"|(?:put|fitted|changed|swapped|switched|screwed)(?: (?:it|in|to|for|a|an|the|my|new|bulb"
    r"|lamp))*"
    r" \d{2,3} ?w(?:atts?)?(?: (?:bulb|lamp|in|one))*"
    r"|gedimmt|(?:runter|herunter|hoch)gedreht)\b"
    r"(?: (?:it|that|this|the lamp|a bit|a little|down))*"
)
# So it is told where it hangs now, or asked about, or it is no lamp that went up or down.
_NOT_BY = re.compile(
    r"\b(?:to|auf|at|bei) (?:about )?\d"
    r"|\b(?:should|shall|could|can|can'?t|would|if|how|why|soll\w*|kann|wenn|wie)\b|\?"
    r"|\b(?:temp\w*|degrees?|grad|watts?|humidity|room|light cycle)\b"
    r"|\b(?:it|he|she|they|him|her|animal|er)(?: has| just|'s)? "
    r"(?:moved?|dropped|slid|lowers?|raised?)\b"
    r"|\bmoved (?:him|her|them|house)\b"
)
_CLAUSE = re.compile(r"[.;!]+(?= |$)|, |\b(?:but|aber|and|und|now|jetzt)\b")
_LEAST_M = 0.02


def changed_in(line: str) -> Moved | None:
    """Return what a line says was moved or dimmed; None where it says nothing of the kind.

    >>> moved = changed_in("i moved the log up 5 inches, its 118 now")
    >>> (moved.change, moved.by, moved.unit, moved.nearer, moved.rest)
    (<Change.PLACE: 'place'>, '5', 'inches', True, 'its 118 now')
    >>> changed_in("raised it to 14 inches") is None
    True
    """
    plain = " ".join(line.lower().replace("’", "'").split())
    bounds = [0, *(found.end() for found in _CLAUSE.finditer(plain)), len(plain)]
    for start, end in pairwise(bounds):
        rest = f"{plain[:start]}{plain[end:]}".strip(" ,.;")
        clause = plain[start:end]
        if found := _POWER.search(clause):
            rest = f"{plain[:start]}{clause[found.end() :]}{plain[end:]}".strip(" ,.;")
            return Moved(Change.POWER, "", "", nearer=False, rest=rest)
        if moved := _moved_in(clause, rest):
            return moved
    return None


def _moved_in(clause: str, rest: str) -> Moved | None:
    verb = _VERB.search(clause)
    if verb is None or _NOT_BY.search(clause):
        return None
    if verb["put"] and not _COMPARED.search(clause):
        return None
    change = Change.PLACE if _PLACE.search(clause) else Change.LAMP
    nearer = _is_nearer(clause, change)
    if nearer is None:
        return None
    by = _BY.search(clause)
    told = (by[1].replace(",", "."), by[2] or "") if by else ("", "")
    return Moved(change, *told, nearer, rest)


def _is_nearer(clause: str, change: Change) -> bool | None:
    """Return whether what is moved so comes nearer to the other; None: nobody can tell."""
    if _NEAR.search(clause):
        return True
    up, down = _UP.search(clause) is not None, _DOWN.search(clause) is not None
    if up != down:
        return up if change is Change.PLACE else down
    return False if _FAR.search(clause) and not up else None


def moved_on(distance: Measure, moved: Moved, units: Units | None) -> Measure | None:
    """Return the distance after a move; None where no figure, or no distance, is left of it."""
    unit = moved.unit or ("cm" if (distance.system or units) is Units.CM else "in")
    try:
        by = read_length(f"{moved.by} {unit.replace('zentimeter', 'cm').replace('zoll', 'in')}")
    except NotUnderstoodError:
        return None
    sign = -1.0 if moved.nearer else 1.0
    low, high = distance.low + sign * by.low, distance.high + sign * by.high
    if low < _LEAST_M:
        return None
    shown = "cm" if distance.system is Units.CM else "in"
    ends = dict.fromkeys(f"{convert(end, 'm', shown):.4g}" for end in (low, high))
    return read_length(f"{' to '.join(ends)} {shown}")
