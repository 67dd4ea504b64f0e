"""A whole set-up judged: a verdict on each part, what to change first, what is missing.

Words: ``words/<language>/check.ftl``, and those of what was read in ``read.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import partial

from bot.command import Command
from bot.facts import Bound, Length, Say, Says, metres
from bot.layered import Brief, Care, Layered, Row, Table, Teller, Weight
from bot.queries.setup import CheckQuery
from bot.questions.general.care_for import CareFor
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.setup.check_facts import Checked, NothingTold, check
from bot.questions.setup.check_parts import (
    Part,
    Piece,
    find_out,
    first_of,
    mark_of,
    piece_of,
    rests_on_memory,
)
from bot.questions.setup.check_set_up import has_a_place
from bot.questions.setup.check_whom import Named
from bot.questions.setup.read import joined
from bot.questions.setup.way_up import (
    WAY_UP_SOURCES,
    way_up_care,
    worked_out,
)
from bot.questions.uv.shared import EYES_CARE, SHADE_CARE
from bot.reply import Picture
from calc.setup.ladder import LevelUp
from calc.setup.set_up import SetUp, Sign
from calc.uv.placement import COMFORTABLE_MINIMUM_M

__all__ = ["CHECK", "check", "tell"]

_GUIDE = (
    "how-to-ask",
    "uv-and-heat-together",
    "measuring-the-distance",
    "measuring-temperatures",
)


@dataclass(frozen=True, slots=True)
class CheckPieces:
    """Parts of a set-up that have the same verdict; ``more`` are those beside the first."""

    pieces: tuple[Say, ...]
    more: int

    @property
    def first(self) -> Say:
        """Return the first of them."""
        return self.pieces[0]


@dataclass(frozen=True, slots=True)
class CheckNearest:
    """How close no tube may hang to any animal."""

    nearest: Length


def tell(facts: Checked | NothingTold) -> Layered:
    """Tell what to change first, then what is fine and what nobody can tell."""
    if isinstance(facts, NothingTold):
        return _nothing_told(facts)
    say = Says("check", facts.whom)
    return Layered(
        command="check",
        title=say("title"),
        brief=_brief(facts),
        steps=tuple(_steps(facts)),
        numbers=tuple(_numbers(facts)),
        table=_table(facts.parts),
        why=tuple(why for part in facts.parts for why in _why(part)),
        care=_care(facts),
        values=tuple(value for part in facts.parts for value in part.values),
        guide=(*_GUIDE, *(("up-from-the-minimum",) if facts.up else ())),
        sources=tuple(dict.fromkeys(_sources(facts))),
        alarms=facts.alarms,
        set_up=facts.set_up,
        picture=partial(_picture, facts) if has_a_place(facts.set_up) else None,
        sheet=partial(_sheet, facts.care, facts.set_up) if facts.care else None,
    )


def _picture(facts: Checked, teller: Teller) -> Picture:
    from bot.questions.setup.check_picture import check_picture

    head, first = _brief(facts).head, facts.todo[0].short if facts.todo else None
    if facts.alarms:
        first = Say("check-picture-danger")
    return Picture.later(check_picture, facts, head, first, teller)


def _sheet(care: CareFor, set_up: SetUp, teller: Teller) -> Picture:
    from bot.questions.general.care_sheet import care_sheet_of

    return care_sheet_of(care, set_up, teller)


@dataclass(frozen=True, slots=True)
class CheckWhy:
    """Why a part has its verdict."""

    piece: Say
    why: Say


def _why(part: Part) -> tuple[Say, ...]:
    return Say("check-why", CheckWhy(piece_of(part), part.why)), *part.more


def _nothing_told(facts: NothingTold) -> Layered:
    say = Says("check", facts)
    return Layered(
        command="check",
        status="problem",
        title=say("nothing-title"),
        brief=Brief(head=say("nothing"), range=(say("nothing-needs"),), steps=(say("nothing-do"),)),
        steps=(say("nothing-do"),),
        guide=_GUIDE[:1],
    )


def _sources(facts: Checked) -> Iterator[str]:
    yield "common_practice"
    for part in facts.parts:
        yield from part.sources
    if facts.up is not None:
        yield from WAY_UP_SOURCES


def _pieces(parts: tuple[Part, ...], sign: Sign) -> tuple[Say, ...]:
    return tuple(dict.fromkeys(_short_piece(part) for part in parts if part.sign is sign))


def _short_piece(part: Part) -> Say:
    return Say.by("check-short", part.piece)


def _brief(facts: Checked) -> Brief:
    whom, parts, wrong = facts.whom, facts.parts, facts.wrong
    told = []
    if whom.named is not Named.ONE:
        told.append(Say("check-whom-short", whom))
    spot = next((p for p in parts if whom.kept.needs_no_basking and p.piece is Piece.BASKING), None)
    fine = _pieces(tuple(part for part in parts if part is not spot), Sign.FINE)
    # What stands in the head is not said twice.
    depends = next((part for part in parts if part.depends is not None), None)
    met = [part.brief for part in parts if part.brief is not None and part.sign is Sign.FINE]
    open_ = _pieces(tuple(p for p in parts if p not in (wrong, depends)), Sign.CANNOT_TELL)
    lines = [] if facts.up is None else met
    if spot is not None and spot.sign is Sign.FINE:
        lines.append(Say("check-no-spot"))
    if fine and (open_ or wrong):
        lines.append(Say("check-fine", CheckPieces(fine, len(fine) - 1)))
    if open_:
        lines.append(Say("check-open", CheckPieces(open_, len(open_) - 1)))
    on = depends.depends if depends is not None and wrong in (None, depends) else None
    cases = depends.more if depends else ()
    return Brief(
        head=on or _head(wrong, fine=any(map(_is_read_fine, parts)), open_=bool(open_)),
        range=(*cases, *told, *lines),
        assumed=(Say("memory-short"),) if rests_on_memory(parts, whom.kept) else (),
        steps=tuple(dict.fromkeys(_short_steps(facts))),
    )


def _is_read_fine(part: Part) -> bool:
    """Say whether a part is right by a figure; a kind of lamp alone tells nothing so far."""
    return part.sign is Sign.FINE and part.piece not in (Piece.LAMPS, Piece.SAFETY)


def _head(wrong: Part | None, *, fine: bool, open_: bool) -> Say:
    if wrong is not None and wrong.head is not None:
        return wrong.head
    if not open_:
        return Say("check-head-fine")
    return Say("check-head-so-far") if fine else Say("check-head-unknown")


def _short_steps(facts: Checked) -> Iterator[Say]:
    """Yield the first thing to do, and the one reading that would tell most."""
    if facts.todo:
        yield facts.todo[0].short
    first = facts.missing[:1]
    if first and not (facts.todo and facts.todo[0].is_reading):
        yield find_out(first[0]).short
    if facts.todo or first:
        return
    if facts.up is None or facts.up.step is LevelUp.NOTHING:
        yield Say("check-do-keep-short")
        return
    yield Say.by("next-head", facts.up.step)
    yield Say.by("next-do", facts.up.step)


def _steps(facts: Checked) -> Iterator[Say]:
    yield from (item.say for item in first_of(facts.todo))
    if facts.warmed:
        yield Say("step-after-change")
    if facts.up is not None:
        yield Say.by("next-step", facts.up.step)
        yield from worked_out(facts.up)
        yield Say.by("next-measure", facts.up.step)
    if not facts.whom.is_known:
        nearest = metres(COMFORTABLE_MINIMUM_M, bound=Bound.AT_LEAST)
        yield Say("check-any-nearest", CheckNearest(nearest))
        yield from (Say("check-any-shade"), Say("check-any-measure"), Say("check-any-range"))


def _numbers(facts: Checked) -> Iterator[Row]:
    if facts.whom.named is not Named.ONE:
        yield Row(Say("check-label-whom"), Say("check-whom", facts.whom))
    missing = tuple(Say.by("check-missing", one) for one in facts.missing)
    if missing:
        yield Row(Say("check-label-missing"), joined(missing))
    yield from facts.read
    if facts.told:
        yield Row(Say("check-label-correct"), Say("check-correct"))


def _table(parts: tuple[Part, ...]) -> Table:
    columns = (
        Say("check-column-part"),
        Say("check-column-verdict"),
        Say("check-column-read"),
        Say("check-column-aim"),
    )
    nothing = Say("check-cell-nothing")
    rows = tuple(
        (
            piece_of(part),
            mark_of(part),
            part.read or nothing,
            part.aim or nothing,
        )
        for part in parts
    )
    return Table(columns, rows)


def _care(facts: Checked) -> tuple[Care, ...]:
    if facts.whom.kept.is_of_water_alone:
        return (Care(Say("check-care-water"), Say("check-care-water-short"), Weight.STEP),)
    # One of them stands in the brief: shade where the UV is changed, else the guard.
    shade = replace(SHADE_CARE, weight=Weight.STEP) if facts.lit else SHADE_CARE
    up = () if facts.up is None else way_up_care(facts.up)
    # Where no UV comes through there is none to get out of.
    out_of_uv = () if facts.is_shut else (shade,)
    return (*up, replace(EYES_CARE, weight=Weight.ALWAYS), *out_of_uv, *HEAT_CARE)


CHECK = Command(
    name="check",
    query=CheckQuery,
    facts=check,
    tell=tell,
    examples=(
        "check beardie, 12% in a shiny hood, no mesh, 16in to his back, basking 98, cool 75",
        (
            "check leopard gecko, 6% tube over the mesh, warm side 32C, cool side 24C, "
            "nights 20C distance:30cm screen:45%"
        ),
    ),
    guide=("how-to-ask", "uv-and-heat-together", "measuring-temperatures"),
    positional="setup",
)
