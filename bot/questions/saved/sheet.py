"""A care sheet of a kept enclosure: whoever looks after it sees what its animal needs, and where.

Words: ``words/<language>/mine-sheet.ftl``, ``needs.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date

from bot.command import Command
from bot.desk import Desk
from bot.facts import Say, Says, uvi
from bot.layered import Brief, Layered, Row, Teller
from bot.preferences import Context
from bot.queries.mine import NamedQuery
from bot.queries.needs import NeedsQuery
from bot.questions.general.care_sheet import SheetUvi, care_sheet
from bot.questions.general.needs import known_rows, needs, needs_care, needs_head, unwarmed
from bot.questions.general.needs_facts import Needs
from bot.questions.heat.gauges import GaugesTold, Told, gauges_told
from bot.questions.saved.enclosures import enclosure_asked
from bot.questions.saved.setup import SetupTold, setup_rows, setup_told
from bot.questions.saved.standing import animal_of, standing_rows
from bot.questions.saved.targets import note_told
from bot.questions.uv.judged import judged_uvi_read
from bot.reply import Picture
from bot.saved.keeper import KEPT_AS, Enclosure, Reading
from calc.animal import Animal
from calc.heat.readings import finding_for
from calc.limits import limits_of
from calc.quantities import Quantity
from calc.setup.bodies import body_for
from calc.setup.measured import measured_set_up
from calc.setup.set_up import SetUp, sign_of
from calc.uncertainty import Estimate
from calc.uv.section import Box
from calc.validity import OutsideModelError

__all__ = ["MINE_SHEET", "CareSheet", "sheet", "sheet_of", "sheet_picture", "tell_sheet"]


@dataclass(frozen=True, slots=True)
class CareSheet:
    """What stands on the sheet; without an animal nothing but the name is known."""

    name: str
    setup: SetupTold
    needs: Needs | None
    set_up: SetUp
    gauges: GaugesTold | None
    also: tuple[Told, ...]
    standing: tuple[Row, ...]
    read_on: date | None

    @property
    def since(self) -> date | None:
        """Return since when the tube is in use."""
        return self.setup.since


async def sheet(query: NamedQuery, context: Context, desk: Desk) -> CareSheet:
    """Find an enclosure, and put its animal's needs and its last readings together."""
    kept = await enclosure_asked(desk, query.name, "mine sheet")
    await note_told(desk, context, kept)
    return sheet_of(kept, context)


def sheet_of(kept: Enclosure, context: Context) -> CareSheet:
    """Return the sheet of an enclosure."""
    animal, setup = animal_of(kept.setup.animal, context), setup_told(kept.setup)
    if animal is None:
        return CareSheet(kept.name, setup, None, SetUp(), None, (), (), None)
    last = _last(kept)
    findings = [
        finding_for(of, read.value, animal) for of, read in last.items() if of is not Quantity.UVI
    ]
    body = body_for(animal)
    set_up = replace(
        measured_set_up(findings, animal),
        box=_box(kept),
        back_m=None if body is None else body.back_m,
        tube_to_back_m=_exact(kept.setup.distance_m),
        tube_long_m=kept.setup.tube_length_m,
    )
    known = needs(NeedsQuery.model_validate({"animal": animal.name}), context)
    return CareSheet(
        name=kept.name,
        setup=setup,
        needs=known,
        set_up=set_up,
        gauges=gauges_told(set_up, animal),
        also=tuple(_also(known, animal, last.get(Quantity.UVI))),
        standing=tuple(standing_rows(kept, context)),
        read_on=max((read.day for read in last.values()), default=None),
    )


def _last(kept: Enclosure) -> dict[Quantity, Reading]:
    """Return the newest reading of each kind."""
    of_kind = {of: [read for read in kept.readings if read.of is of] for of in KEPT_AS}
    return {of: max(reads, key=lambda r: r.day) for of, reads in of_kind.items() if reads}


def _exact(value_m: float | None) -> Estimate | None:
    return None if value_m is None else Estimate.exact(value_m)


def _box(kept: Enclosure) -> Box | None:
    told = kept.setup
    if not (told.length_m and told.depth_m and told.height_m):
        return None
    try:
        return Box(told.length_m, told.depth_m, told.height_m)
    except OutsideModelError:
        return None


def _also(known: Needs, animal: Animal, read: Reading | None) -> Iterator[Told]:
    """Yield what is wanted of light; the UV with its last reading and how that stands."""
    for one in unwarmed(known):
        wanted = animal.uvi
        if one.quantity is not Quantity.UVI or read is None or wanted is None:
            yield one
            continue
        judged = judged_uvi_read(
            (read.value,),
            wanted.low,
            wanted.high,
            limits_of(animal),
            unchecked=wanted.is_unchecked,
        )
        yield replace(
            one,
            read=Say("sheet-uvi", SheetUvi(uvi(read.value))),
            verdict=Say.by("verdict", judged.verdict),
            sign=sign_of(judged.verdict),
        )


def tell_sheet(facts: CareSheet) -> Layered:
    """Tell what whoever looks after it needs at a glance; the picture is the sheet itself."""
    say = Says("mine-sheet", facts)
    known = facts.needs
    if known is None:
        return Layered(
            command="mine sheet",
            title=say("title"),
            brief=Brief(head=say("no-animal"), steps=(say("do-animal"),)),
            numbers=tuple(setup_rows(facts.setup)),
            steps=(say("step-animal"),),
        )
    return Layered(
        command="mine sheet",
        title=say("title"),
        brief=Brief(head=needs_head(known), range=tuple(_days(facts)), steps=(say("do"),)),
        steps=(say("step-hand"), say("step-measure")),
        numbers=(*setup_rows(facts.setup), *facts.standing, *known_rows(known).values()),
        why=(*known.particular, *known.others),
        care=needs_care(known),
        guide=("measuring-temperatures", "when-to-call-a-vet"),
        sources=known.sources,
        picture=lambda teller: sheet_picture(facts, teller),
        set_up=facts.set_up,
    )


def _days(facts: CareSheet) -> Iterator[Say]:
    say = Says("mine-sheet", facts)
    if facts.since is not None:
        yield say("since")
    yield say("unread" if facts.read_on is None else "read-on")


def sheet_picture(facts: CareSheet, teller: Teller, over: Say | None = None) -> Picture:
    """Return the sheet as a picture, with these words ``over`` it in place of its own."""
    say = Says("mine-sheet", facts)
    gauges, known = facts.gauges, facts.needs
    assert gauges is not None
    assert known is not None
    days = tuple(_days(facts))
    told = known, gauges, facts.set_up, facts.also, over or say("over"), days, teller
    return Picture.later(care_sheet, *told)


MINE_SHEET = Command(
    name="mine sheet",
    query=NamedQuery,
    stored=sheet,
    tell=tell_sheet,
    examples=("mine sheet name:Pebble's box",),
    guide=("keeping-notes", "measuring-temperatures"),
)
