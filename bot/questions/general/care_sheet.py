"""A care sheet for whoever looks after an animal: its needs, each place, the days, who says so.

Words: ``words/<language>/sheet.ftl``.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from bot.facts import Say, Says, Uvi, uvi
from bot.layered import Teller
from bot.questions.general.care_for import CareFor
from bot.questions.general.needs import needs_head, unwarmed
from bot.questions.general.needs_facts import Needs, needs_of
from bot.questions.heat.gauges import BoxHead, GaugesTold, Told, box_picture, gauges_told
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.uv.shared import EYES_CARE
from bot.reply import Picture
from calc.quantities import Quantity
from calc.setup.measured import measured_set_up
from calc.setup.set_up import SetUp, Spot, sign_of
from calc.sources import source

__all__ = ["SheetUvi", "care_sheet", "care_sheet_of"]

# Keys that stand for a kind of knowing, and for nothing that could be looked up.
_NO_WORK = frozenset(("common_practice", "memory", "keepers_memory"))


@dataclass(frozen=True, slots=True)
class SheetUvi:
    """A UV index that was read last."""

    read: Uvi


@dataclass(frozen=True, slots=True)
class SheetSource:
    """Who says so, and how well that is known; ``citation`` is None where no work is behind it."""

    citation: str | None
    kind: Say


def care_sheet(
    known: Needs,
    gauges: GaugesTold,
    set_up: SetUp,
    also: Sequence[Told],
    over: Say,
    days: Sequence[Say],
    teller: Teller,
) -> Picture:
    """Return the sheet: the box with needs and readings in place, days, cautions, sources."""
    cautions = (*((EYES_CARE,) if known.uvi else ()), *(HEAT_CARE if known.has_air else ()))
    notes = (*days, *(care.short or care.say for care in cautions), *_who_says(known))
    head = BoxHead(over, needs_head(known))
    return box_picture(gauges, set_up, head, also, teller, notes)


def care_sheet_of(care: CareFor, set_up: SetUp, teller: Teller) -> Picture:
    """Return the sheet of a set-up that was told or planned."""
    return Picture.later(_told_sheet, care, set_up, teller)


def _told_sheet(care: CareFor, set_up: SetUp, teller: Teller) -> Picture:
    animal = care.kept
    say = Says("sheet", care)
    known = needs_of(animal, care.own)
    every = measured_set_up((), animal).spots
    spots = tuple(_as_read(spot, set_up) for spot in every)
    day = say("told-on" if care.is_read else "planned-on")
    also = tuple(_also(known, set_up.spot_of(Quantity.UVI)))
    shown = replace(set_up, spots=spots)
    gauges = gauges_told(shown, animal)
    return care_sheet(known, gauges, shown, also, say("title"), (day,), teller)


def _as_read(spot: Spot, set_up: SetUp) -> Spot:
    """Return a place with what was read there and the sign of the answer."""
    found = set_up.spot_of(spot.quantity)
    if found is None or found.value is None or found.judged is None or not found.is_read:
        return spot
    plain = found.held is None or found.held is sign_of(found.judged.verdict)
    return replace(found, wanted=spot.wanted, held=None if plain else found.held)


def _also(known: Needs, read: Spot | None) -> Iterator[Told]:
    """Yield what is wanted of light; the UV as it was read or worked out, with its verdict."""
    for one in unwarmed(known):
        if one.quantity is not Quantity.UVI or read is None or read.value is None:
            yield one
            continue
        judged = read.judged
        yield replace(
            one,
            read=Say("sheet-uvi", SheetUvi(uvi(read.value))),
            verdict=None if judged is None else Say.by("verdict", judged.verdict),
            sign=read.sign,
        )


def _who_says(known: Needs) -> Iterator[Say]:
    """Yield who says each figure of the sheet, a work once."""
    yield Say("sheet-who-says")
    keys = (one.source for one in known.needs if one.source is not None)
    told = []
    for key in dict.fromkeys(keys):
        found, is_work = source(key), key not in _NO_WORK
        kind = Say.by("source", found.kind) if is_work else Say.by("sheet-known", found.kind)
        told.append(SheetSource(found.citation if is_work else None, kind))
    for one in dict.fromkeys(told):
        yield Say("sheet-source", one)
