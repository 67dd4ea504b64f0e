"""Ages in a sentence: of the animal or of its tube, with their unit or without."""

import re
from collections.abc import Iterator

from bot.language.hearing.facts import THERE, Ask, Fact, FactName
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import LIVING, Scene
from bot.language.hearing.strengths import STRONGEST_TUBE
from bot.language.hearing.word_lists import word_list
from bot.language.quantities import read_duration

__all__ = ["age_of", "alone", "bare_ages", "is_of_somebody"]

# An entry of a list has no more characters than this on either side of its figure.
_LIST_ENTRY = 60
_CHANGED = frozenset(("changed", "replaced", "bought", "installed", "swapped", "got", "new", "put"))
# A child or somebody else whose age is told.
_SOMEBODY = re.compile(
    r"(?: old)? (?:sons?|daughters?|kids?|child|children|boys?|girls?|brother|sister)\b"
)
_OLD_ANIMAL = re.compile(
    r" (?:old )?(?:(?:fe)?male|lady|gecko|snake|lizard|tortoise|turtle|dragon|python|skink"
    r"|chameleon|monitor|boa|iguana|frog)s?\b"
)
# A kind of animal right before an age, where another name tells which one it is.
_OF_A_KIND = re.compile(
    r"\b(?:lizard|gecko|snake|tortoise|turtle|dragon|python|skink|chameleon|monitor|boa|animal|pet"
    r"|guy"
    r"|girl|boy)(?: (?:is|of|aged|about|around|now|approx|has|have))* ?\(?\Z"
)
# An age without its unit: my corn snake is 2, aged 7, she turned 3 in may.
_IS = re.compile(
    r"(?: (?:about|around|only|just|now|nearly|almost|like))* is(?: (?:about|only|now|nearly))* \Z"
)
_ABOUT = re.compile(r"(?: (?:about|only|now|nearly|almost|just))* \Z")
# "Had it 4 months": the lamp that was named last.
_HAD_IT = re.compile(
    r"\b(?:had|used|running|run|been using|using|have) (?:it|this (?:one|tube|bulb|lamp))"
    r"(?: (?:for|about|like|now))* \Z"
)
_AGED_SO = re.compile(r"\b(?:aged|age:?|turned|turns|turning)(?: about| around)? \Z")
_AGE_ENDS = re.compile(
    r" ?(?:[,.;!?)\n]|\Z|now\b|and\b|but\b|in (?:jan|feb|mar|apr|may|ju|aug|sep|oct|nov|dec))"
)
_OLDEST_BARE, _OLDEST = 12, 120
_STRIP = re.compile(r"\bstrip\b")
_LAMPS = frozenset(("tube", "heat", "lamp"))


def bare_ages(scene: Scene) -> Iterator[Fact | Ask]:
    """Return an animal's age that is told in years without the word: my corn snake is 2."""
    for figure in scene.loose("plain"):
        if len(figure.sides) > 1 or figure.low.denominator > 2 or not 0 < figure.low <= _OLDEST:
            continue
        start = max(scene.sentence(figure.start)[0], figure.start - 40)
        living = scene.before(figure.start, LIVING, start)
        lamp = scene.before(figure.start, _LAMPS, living.end if living else start)
        aged = _AGED_SO.search(scene.text, start, figure.start) is not None
        bare = (
            living is not None
            and _tells_age(scene, living, figure)
            and figure.low <= _OLDEST_BARE
            and not figure.text.endswith(".0")
        )
        if lamp or not (aged or bare) or not _AGE_ENDS.match(scene.text, figure.end):
            continue
        if scene.standing(figure) in THERE:
            scene.take(figure)
            years = read_duration(f"{float(figure.low):g} years")
            yield scene.fact(FactName.ANIMAL_AGE, years, figure, assumed=True)


def _tells_age(scene: Scene, living: Mark, figure: Figure) -> bool:
    """Say whether nothing but "is" stands between an animal and a number: she's about 6."""
    short = scene.text[living.start : living.end].replace("'", "") in ("hes", "shes")
    between = _ABOUT if short else _IS
    return between.fullmatch(scene.text, living.end, figure.start) is not None


def age_of(scene: Scene, figure: Figure) -> FactName | None:
    """Return whose age a duration is: the animal's or the tube's; None: of neither."""
    start, end = scene.sentence(figure.start)
    following = scene.words(figure.end, min(end, figure.end + 12))[:2]
    start = max(start, figure.start - 200)
    said = set(scene.words(start, figure.start))
    before = scene.before(figure.start, _LAMPS | LIVING, start)
    figures = scene.figures.within(max(start, figure.start - 60), figure.start)
    strengths = [f for f in figures if _is_strength(f)]
    if strengths and (before is None or before.end < strengths[-1].start):
        lamp, living = True, False
    else:
        lamp = before is not None and before.kind in _LAMPS
        living = before is not None and before.kind in LIVING
    if following in (["in", "use"], ["of", "use"]):
        any_lamp = scene.before(figure.start, _LAMPS, start)
        return FactName.AGE if any_lamp else None
    if "ago" in following:
        object_words = {"it", "tube", "bulb", "uvb", "lamp", "light"}
        own = bool(said & object_words) or lamp
        return FactName.AGE if said & _CHANGED and own else None
    if is_of_somebody(scene, figure):
        return None
    if _OLD_ANIMAL.match(scene.text, figure.end):
        return FactName.ANIMAL_AGE
    if _OF_A_KIND.search(scene.text, max(0, figure.start - 36), figure.start):
        return FactName.ANIMAL_AGE
    if figure.unit != "week" and alone(scene, figure) and _of_animal_only(scene, figure):
        return FactName.ANIMAL_AGE
    if _HAD_IT.search(scene.text, max(0, figure.start - 36), figure.start):
        last = scene.before(figure.start, _LAMPS | LIVING, max(0, figure.start - 160))
        strip = any(_is_strength(f) for f in scene.figures.within(0, figure.start))
        lit = last is not None and last.kind in _LAMPS
        return FactName.AGE if lit or (strip and _STRIP.search(scene.text)) else None
    if living and before is not None:
        return _of_living(scene, before, figure, said)
    if lamp and before is not None and scene.denial(before):
        # "He had no uv for 2 years."
        return None
    if lamp:
        near = before is None or len(scene.words(before.end, figure.start)) <= 4
        return FactName.AGE if "old" in following or near else None
    if "old" in following or figure.text.endswith(("yo", "y/o")):
        return _of_what_is_near(scene, figure, start, end)
    return None


def is_of_somebody(scene: Scene, figure: Figure) -> bool:
    """Say whether an age is that of a child or of somebody else: my 6 year old son."""
    return _SOMEBODY.match(scene.text, figure.end) is not None


def _of_living(scene: Scene, living: Mark, figure: Figure, said: set[str]) -> FactName | None:
    """Return that it is the age of the animal that was named before it, if it is an age."""
    young = scene.text[living.start : living.end] in ("baby", "juvenile", "hatchling")
    following = scene.words(figure.end, figure.end + 12)[:2]
    aged = "old" in following or following == ["of", "age"] or figure.text.endswith("o")
    bare = _is_bare_age(scene, living, figure, said)
    return FactName.ANIMAL_AGE if aged or young or bare else None


def _of_what_is_near(scene: Scene, figure: Figure, start: int, end: int) -> FactName | None:
    """Return whose age it is by what is named next, or in the sentence before."""
    near = scene.after(figure.end, _LAMPS | LIVING, end)
    near = near or scene.before(start, _LAMPS | LIVING, max(0, start - 200))
    if near is None:
        return None
    return FactName.AGE if near.kind in _LAMPS else FactName.ANIMAL_AGE


def alone(scene: Scene, figure: Figure) -> bool:
    """Say whether a figure is all there is in its clause, as in a list."""
    start, end = scene.clause(figure.start)
    if figure.start - start > _LIST_ENTRY or end - figure.end > _LIST_ENTRY:
        return False
    around = [*scene.words(start, figure.start), *scene.words(figure.end, end)]
    return set(around) <= {"currently", "now", "about", "around", "its", "for", "is", "at"}


def _is_bare_age(scene: Scene, living: Mark, figure: Figure, said: set[str]) -> bool:
    """Say whether the age stands right behind the animal: iguana 4 years; shes abt 3 yrs."""
    between = set(scene.words(living.end, figure.start))
    kept = living.kind != "person" and said & word_list("kept_for")
    # "My beardie Pepper is 7 months": one more word, the name.
    told = "is" in between or scene.text[figure.start - 1 : figure.start] == "("
    named = len(between - word_list("before_age")) == 1 and told
    return (named or between <= word_list("before_age")) and not kept


def _of_animal_only(scene: Scene, figure: Figure) -> bool:
    """Say whether a lone age stands in a list about the animal: leopard gecko female, 2 years."""
    start, end = scene.sentence(figure.start)
    around = [*scene.marks.within(start, end), *scene.marks.before(start, max(0, start - 60))]
    kinds = {mark.kind for mark in around}
    return bool(kinds & LIVING) and not kinds & _LAMPS


def _is_strength(figure: Figure) -> bool:
    label = figure.kind == "plain" and figure.text.endswith((".0", ",0"))
    return label or (figure.kind == "percent" and figure.high <= STRONGEST_TUBE)
