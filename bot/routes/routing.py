"""From a free question to one of the questions that are answered, with its options filled in.

Nothing is computed here: the words choose the question, hearing fills its options, and what is
still missing is asked for in plain words. Where the words may mean several things, or nothing that
is answered here, the reply says so at once.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot import guide
from bot.command import Routed
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.glossary import glossed
from bot.language.hearing import Ask, FactName
from bot.language.hearing.facts import LampKind
from bot.language.normal import normalise
from bot.layered import Layered
from bot.preferences import Context
from bot.queries.setup import AskQuery
from bot.queries.typed import typed_all
from bot.questions.animals import animals_meant
from bot.questions.lacking import Behind
from bot.questions.record import record_of
from bot.questions.setup.own_told import own_told
from bot.questions.setup.told import has_figures, told_by
from bot.questions.shared import FEW_KIN
from bot.questions.unfigured import unfigured, which_animal, which_asked
from bot.routes.advised import advised
from bot.routes.asked import Asked
from bot.routes.beyond import BEYOND, asks_to_buy, is_beyond, not_mine
from bot.routes.filled import filled, is_asked_freely
from bot.routes.missing import Lacking, still_needed
from bot.routes.of_another import of_another
from bot.routes.offered import offer, offer_lamps
from bot.routes.pages import page_asked, page_explaining
from bot.routes.part import part_answering, part_asked
from bot.routes.perhaps import possible
from bot.routes.placed import placed_nowhere
from bot.routes.rule import tube_at_a_place
from bot.routes.rules import fitting
from bot.routes.second import OFF, Opinion, likely_of, sure_of, torn_between
from bot.routes.strangers import other_pet, stranger_in, stranger_told

__all__ = ["asked_in", "lacking_reply", "route"]

_FEWEST_FACTS = 2
# Lamps that give UV and no warmth worth asking about.
_OF_UV_ALONE = frozenset(
    (LampKind.T5_HO, LampKind.T5, LampKind.T8, LampKind.COMPACT, LampKind.UV_LED)
)
_READS = r"^basking (?:\w+ )?(?:is|says|reads|at|gets|hits|of|temp\w*|spot|surface)\b"
# A question stands at the beginning or the end of what is told; the rules look at no more of it.
_MOST_AN_END = 300
_EXAMPLE = "how far should a 12% tube be with a polished reflector and no screen, bearded dragon"


def route(query: AskQuery, context: Context, *, by_rule: bool = False) -> Routed | Layered:
    """Return the question that free words ask, the reply where none is asked, or raise.

    ``by_rule``: what was learned has no say, as it knows whole questions alone.
    """
    asked = replace(asked_in(query, context), by_rule=by_rule)
    if other_pet(asked):
        return not_mine(asked, context)
    if asked.without_figures:
        return _without_figures(asked, context)
    if stranger := stranger_in(asked):
        return _unknown(stranger, _tried(asked, context))
    if asked.unclear_animal:
        return _unclear_animal(asked, asked.unclear_animal, context)
    return _found(asked, context)


def _unclear_animal(asked: Asked, about: Ask, context: Context) -> Routed | Layered:
    """Return the question that is asked, for no animal yet; else which animal is meant."""
    found = _tried(asked.for_animal(asked.animal_for_examples(context)), context)
    of_itself = isinstance(found, Routed) and _is_told_of(found)
    if of_itself and isinstance(found, Routed) and found.command == "guide":
        # A page that only sentences like it lead to says nothing of an animal nobody knows.
        of_itself = _by_rule(asked, context) is not None
    if isinstance(found, Layered) and found.title is BEYOND:
        return found
    if not about.among and not (of_itself and isinstance(found, Routed) and not _is_about(found)):
        return _unknown(about.words, found)
    if isinstance(found, Routed):
        values = {name: value for name, value in found.values.items() if name != "animal"}
        # How hot it may be for the few that it may be knows the question itself.
        told = found.command == "temps" and 1 < len(about.among) <= FEW_KIN
        kin = {"animal": about.words} if told else {}
        return Routed(found.command, values | kin, animal_unclear=True)
    if isinstance(found, Layered):
        both = Behind(which_animal(about.words, about.among), found.brief.head)
        return replace(found, brief=replace(found.brief, head=Say("refused-behind", both)))
    return found or which_asked(about.words, about.among)


def _tried(asked: Asked, context: Context) -> Routed | Layered | None:
    """Return what the words ask; None where they ask nothing."""
    try:
        return _found(asked, context)
    except NotUnderstoodError:
        return None


def _unknown(name: str, found: Routed | Layered | None) -> Layered:
    """Return that an animal is not known; the same may be asked of another."""
    told = which_asked(name, ())
    return replace(told, perhaps=of_another(found)) if isinstance(found, Routed) else told


def _is_told_of(found: Routed) -> bool:
    """Say whether a question tells more than its animal, which is then asked for alone."""
    return not _is_about(found) or any(name not in ("animal", "about") for name in found.values)


def _is_about(found: Routed) -> bool:
    """Say whether a question cannot be answered without its animal."""
    return "animal" in found.values and found.command != "check"


def _without_figures(asked: Asked, context: Context) -> Routed | Layered:
    """Return the question that an animal without figures leaves open, else that there are none."""
    found = _tried(asked, context)
    if isinstance(found, Routed) and not _is_about(found):
        return found
    if isinstance(found, Layered) and found.title is BEYOND:
        return found
    told = unfigured("ask", asked.without_figures)
    # The same may be asked of another animal.
    return replace(told, perhaps=of_another(found)) if isinstance(found, Routed) else told


def _found(asked: Asked, context: Context) -> Routed | Layered:
    ruled = _by_rule(asked, context)
    if isinstance(ruled, Layered) and ruled.title is not BEYOND and ruled.offers:
        # Of which place a temperature is, or which lamp is meant, nothing learned can know.
        return ruled
    opinion = _said_by(ruled)
    sure = sure_of(asked, opinion)
    if (sure is None or ruled is None) and (both := torn_between(asked, opinion)):
        return _offered(both, asked, context)
    if sure:
        if sure.name == "lamp" and len(asked.lamps) > 1:
            return offer_lamps(asked)
        return not_mine(asked, context) if sure.name == OFF else _as_meant(sure, asked, context)
    if ruled is not None:
        return ruled
    if stranger := stranger_told(asked):
        return which_asked(stranger, ())
    likely = likely_of(asked)
    also = possible(asked)
    if also or any(one.page or _can_be_offered(one.name) for one in likely):
        return _offered(likely, asked, context, also)
    if asked.about_an_animal:
        return offer(_OF_ANY_ANIMAL, asked, context, "when-to-call-a-vet")
    raise NotUnderstoodError(asked.said, Say("wanted-question"), _EXAMPLE, "question")


def _offered(
    opinions: Sequence[Opinion], asked: Asked, context: Context, also: Sequence[str] = ()
) -> Layered:
    """Return the choice of what words may ask; ``also`` are questions that they may mean too."""
    names = (*(one.name for one in opinions if _can_be_offered(one.name)), *also)
    parts = [
        (one.page, guide.heading_in(one.page, one.part, context.language))
        for one in opinions
        if one.page
    ]
    return offer(tuple(dict.fromkeys(names)), asked, context, parts=parts)


def _can_be_offered(name: str) -> bool:
    return is_asked_freely(name) and bool(record_of(name).query)


def _by_rule(asked: Asked, context: Context) -> Routed | Layered | None:
    """Return what the rules of words say that is asked; None where none fits."""
    if asks_to_buy(asked):
        return not_mine(asked, context)
    if placed := placed_nowhere(asked):
        return placed
    if found := part_answering(asked, context.language):
        return Routed("guide", {"page": found[0], "part": found[1]})
    if is_beyond(asked):
        return not_mine(asked, context)
    names = fitting(asked)
    named = asked.words.split(maxsplit=1)[:1]
    # "Braucht mein Gecko" and "Röhre 12% 40 cm" begin with no question's name, "needs gecko" does.
    verb = (named == ["needs"] or asked.at_a_distance) and not asked.typed.startswith(named[0])
    # "Basking says 40, ok?" begins with a place.
    verb = verb or (named == ["basking"] and asked.says(_READS))
    if named and not verb and is_asked_freely(named[0]) and (not names or named[0] in names):
        return _to(named[0], asked)
    page = page_asked(asked)
    if page and (not names or record_of(names[0]).page_first):
        return _to_page(page, asked)
    if names[:1] == ("lamp",) and len(asked.lamps) > 1:
        return offer_lamps(asked)
    if name := (names[0] if names else _told_much(asked)):
        return _to(name, asked)
    page = page_explaining(asked)
    return _to_page(page, asked) if page else None


def _said_by(ruled: Routed | Layered | None) -> Opinion | None:
    """Return what a rule said as an opinion."""
    if isinstance(ruled, Routed):
        told = ruled.given
        return Opinion(
            ruled.command, told.get("about", ""), told.get("page", ""), told.get("part", "")
        )
    if ruled is None:
        return None
    return Opinion(OFF) if ruled.title is BEYOND else Opinion("lamp")


_OF_ANY_ANIMAL = ("needs", "check")


def lacking_reply(
    query: AskQuery,
    routed: Routed,
    missing: Sequence[str],
    context: Context,
) -> Layered:
    """Return what the question that was found still needs."""
    asked = asked_in(query, context)
    given = routed.given
    usual = context.default_animal and not routed.animal_unclear
    unnamed = not (usual or given.keys() & {"animal", "want", "uvi"})
    here = [name for name in asked.kin if has_figures(name, asked.own.names)]
    kin = animals_meant(asked.kin, here, asked.own.names) if here else None
    opening = None
    if asked.unclear_animal and not asked.kin:
        opening = which_animal(asked.unclear_animal.words, ())
    if unnamed and record_of(routed.command).needs_animal and "animal" not in missing:
        missing = ("animal", *missing)
    others = (name for name in fitting(asked) if name != routed.command)
    other = next(others, "needs" if asked.told.animal else "")
    lacking = Lacking(
        routed.command,
        asked.said,
        given,
        missing,
        asked.animal_for_examples(context),
        kin,
        here,
        mesh=asked.under_mesh,
        other=other if routed.command != other else "",
        of_other=typed_all(filled(other, asked)) if other else {},
    )

    def understands(sentence: str) -> bool:
        try:
            again = route(AskQuery(question=sentence), context)
        except NotUnderstoodError:
            return False
        if not isinstance(again, Routed) or again.command != routed.command:
            return False
        told = again.given
        return all(told.get(name) for name in missing) and all(
            told.get(name) == text for name, text in given.items()
        )

    return still_needed(lacking, understands, context, opening)


def asked_in(query: AskQuery, context: Context) -> Asked:
    """Return free words as the rules look at them."""
    said = query.question
    # The name of a lamp of the group's own is no word about anything else.
    words = glossed(own_told(said, context.own).rest).text.lower()
    if len(words) > 2 * _MOST_AN_END:
        words = f"{words[:_MOST_AN_END]} {words[-_MOST_AN_END:]}"
    told = told_by(advised(said), query, context.own)
    for animal in told.all(FactName.ANIMAL):
        # A name is no word about a lamp or an illness: fire skink, soft-shelled turtle.
        if not has_figures(str(animal.value), context.own.names):
            words = words.replace(normalise(animal.words).lower(), "it")
    return Asked(said, words, told, context.own, normalise(said).lower())


def _to(name: str, asked: Asked) -> Routed:
    values = filled(name, asked)
    if name == "night" and values.keys() == {"animal"}:
        # Of a room that was not told, it is how cold it may get that answers.
        return Routed("needs", {**values, "about": "night"})
    return Routed(name, values)


def _as_meant(opinion: Opinion, asked: Asked, context: Context) -> Routed:
    if opinion.page:
        if not opinion.part:
            return _to_page(opinion.page, asked)
        part = guide.heading_in(opinion.page, opinion.part, context.language)
        return Routed("guide", {"page": opinion.page, "part": part})
    found = _to(opinion.name, asked)
    if not opinion.about or "about" in found.values:
        return found
    return replace(found, values={**found.values, "about": opinion.about})


def _to_page(slug: str, asked: Asked) -> Routed:
    part = part_asked(slug, asked)
    return Routed("guide", {"page": slug, "part": part} if part else {"page": slug})


def _told_much(asked: Asked) -> str:
    """Return the question of who asked none but told a tube and its place, or a set-up."""
    told = asked.told
    heats = any(lamp.value not in _OF_UV_ALONE for lamp in told.lamps)
    if tube_at_a_place(asked) and not (asked.warmth or told.size or heats):
        return "uvi"
    if len(told.facts) - bool(told.animal) < _FEWEST_FACTS and not asked.warmth:
        return ""
    return "check" if asked.uv or asked.warmth or told.lamps else ""
