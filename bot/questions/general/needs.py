"""What an animal needs, every figure with who says so. Words: ``words/<language>/needs.ftl``."""

from collections.abc import Iterator, Mapping

from bot.command import Command
from bot.facts import Say, Says
from bot.layered import Brief, Care, Layered, Row, Teller
from bot.queries.needs import NeedsQuery
from bot.questions.general.needs_asked import About
from bot.questions.general.needs_facts import Needs, Start, needs
from bot.questions.general.needs_targets import Need, OneNeed
from bot.questions.heat.gauges import BoxHead, Told, box_picture
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.shared import body_rows
from bot.questions.uv.shared import EYES_CARE, SHADE_CARE
from bot.reply import Picture
from calc.quantities import Quantity
from calc.setup.lives import Life

__all__ = ["NEEDS", "known_rows", "needs", "needs_care", "needs_head", "tell", "unwarmed"]

_GUIDE = ("planning-a-set-up", "measuring-temperatures", "reading-a-uv-meter", "nights")


def tell(facts: Needs) -> Layered:
    """Tell what a newcomer needs first, then every target with who says so."""
    say = Says("needs", facts)
    brief = _brief(facts, say)
    return Layered(
        command="needs",
        title=say("title"),
        brief=brief,
        steps=tuple(_steps(facts, say)),
        numbers=(*known_rows(facts).values(), *body_rows(facts.bodies)),
        why=(*facts.particular, *facts.others),
        care=needs_care(facts),
        values=tuple((one.need.value, one.figure) for one in facts.needs),
        guide=(*facts.pages, *_GUIDE),
        sources=facts.sources,
        picture=lambda teller: _picture(facts, brief.head, teller),
        set_up=facts.set_up,
    )


def _picture(facts: Needs, head: Say, teller: Teller) -> Picture:
    over, also = BoxHead(Say("needs-title", facts), head), tuple(unwarmed(facts))
    return Picture.later(box_picture, facts.gauges, facts.set_up, over, also, teller)


def unwarmed(facts: Needs) -> Iterator[Told]:
    """Yield what is known of light: UV where it basks, and the hours."""
    for one in facts.needs:
        if one.uvi is not None and one.uvi.high > 0.0:
            yield Told(Quantity.UVI, _label(one), Say("needs-aim-uvi", one))
        elif one.light is not None:
            yield Told(Quantity.LIGHT_HOURS, _label(one), Say("needs-aim-light", one))


def needs_head(facts: Needs) -> Say:
    """Return the answer in one line."""
    return _brief(facts, Says("needs", facts)).head


def needs_care(facts: Needs) -> tuple[Care, ...]:
    """Return the cautions of what an animal needs."""
    return tuple(_care(facts, Says("needs", facts)))


def _care(facts: Needs, say: Says) -> Iterator[Care]:
    if facts.too_hot is not None:
        short = None if facts.has_air else say("too-hot")
        yield Care(say("too-hot"), short)
    if facts.uvi is not None:
        yield from (EYES_CARE, SHADE_CARE)
    if facts.has_air:
        yield from HEAT_CARE


_FIRST = (
    *(Need.UVI, Need.BASKING_SURFACE, Need.WATER, Need.COOL_AIR, Need.NIGHT_FLOOR),
    Need.LIGHT_HOURS,
)


def _brief(facts: Needs, say: Says) -> Brief:
    known = [one for one in facts.needs if one.figure is not None and one.need in _FIRST]
    if not known:
        return Brief(head=say("nothing"), steps=(say("do-ask"),))
    lines = tuple(_line(one) for one in known if one.need is not Need.UVI)
    # That no lamp warms it comes before what it needs.
    heads: list[Say] = []
    if not facts.may_bask:
        heads.append(say("no-heat" if facts.has_air else "no-lamp"))
    if facts.uvi or not heads:
        heads.append(say("head"))
    head, unwarmed = heads[0], tuple(heads[1:])
    first = tuple(_first(facts, say))
    if first:
        asked = facts.asked
        lines = tuple(_line(one) for one in known if one is not asked and one.need is not Need.UVI)
        also = () if asked and asked.need is Need.UVI else (say("head"),) if facts.uvi else ()
        unwarmed = ()
        lines = (*first[1:], *lines, *also)
    return Brief(
        head=first[0] if first else head,
        range=(*unwarmed, *_depth(facts, say), *lines),
        assumed=(say("unchecked"),) if facts.is_unchecked else (),
        steps=(say("do-climbs") if Life.CLIMBS in facts.lives else say("do"),),
    )


def _depth(facts: Needs, say: Says) -> Iterator[Say]:
    """Yield how deep its water is, where its water was asked about and it lives in it."""
    if facts.about is not About.WATER or facts.water is None:
        return
    if facts.deep_known is not None:
        yield say("deep-own")
    else:
        yield say("deep" if facts.water_deep is not None else "deep-unknown")


def _first(facts: Needs, say: Says) -> Iterator[Say]:
    """Yield the answer to the one thing that was asked about, if one was."""
    if facts.fits is not None:
        yield say.by("heard", facts.fits)
    if facts.about is About.UV:
        yield say.by("uv", facts.wants_uv)
    elif facts.asked is not None:
        yield say.by("about", facts.about or About.UVI)
    elif facts.about is About.BASKING and not facts.may_bask:
        yield say("no-spot")
    elif facts.about is not None and facts.fits is None:
        yield say("about-unknown")


def _steps(facts: Needs, say: Says) -> Iterator[Say]:
    if facts.water is not None:
        yield say("step-water")
    if facts.cool is not None or facts.basking is not None:
        yield say("step-measure")
    yield from (say.by("step-life", life) for life in facts.lives)
    if facts.start is not Start.NOTHING:
        yield say("step-tube")
    if facts.start is Start.PLAN:
        yield say("step-plan")
    yield say("step-again")


def known_rows(facts: Needs) -> Mapping[str, Row]:
    """Return the rows of what the animal needs and how it lives, by name, in their order."""
    say = Says("needs", facts)
    rows = {one.need.value: Row(_label(one), _known(one)) for one in facts.needs}
    if facts.zone is not None:
        rows["zone"] = Row(say("label-zone"), say("zone"))
    if facts.awake is not None:
        rows["awake"] = Row(say("label-awake"), say.by("awake", facts.awake))
    if facts.adult is not None:
        rows["adult"] = Row(say("label-adult"), say("adult"))
    if facts.floor_long is not None:
        rows["floor"] = Row(say("label-floor"), say("floor-told"))
    if facts.water_deep is not None:
        deep = say("water-deep-own") if facts.deep_known else say("water-deep")
        rows["water_deep"] = Row(say("label-water-deep"), deep)
    return rows


def _line(one: OneNeed) -> Say:
    if one.light is not None:
        return Say("needs-line-light", one)
    return Say("needs-line-warmth", one)


def _known(one: OneNeed) -> Say:
    if one.uvi is not None:
        return Say("needs-known-uvi", one)
    if one.warmth is not None:
        return Say("needs-known-warmth", one)
    return Say("needs-unknown", one) if one.light is None else Say("needs-known-light", one)


def _label(one: OneNeed) -> Say:
    return Say.by("needs-label", one.need, one)


NEEDS = Command(
    name="needs",
    query=NeedsQuery,
    facts=needs,
    tell=tell,
    examples=(
        "needs bearded dragon",
        "needs animal:leopard gecko about:uv",
        "needs animal:crested gecko about:basking heard:120F",
    ),
    guide=_GUIDE,
    positional="animal",
)
