"""The animals in a sentence; their names are the caller's, language knows none."""

import re
from collections.abc import Iterator
from dataclasses import replace

from bot.facts import Say
from bot.language.hearing.facts import Ask, Fact, FactName, Standing
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import ANIMALS, Scene
from bot.language.hearing.unplaced import MINE
from bot.language.wanted import Choice

__all__ = ["animals_heard"]

# Beside the animal that is kept: unlike a beardie, my old leopard gecko, rat snakes years ago.
_ARTICLE = r"(?:a |an |the |my |our |your |his |her |most |all )?(?:[a-z]+ )?"
_BEFORE = re.compile(
    rf"\b(?:unlike|like|than|compared (?:to|with)|everyone says|people say|they say|same as) "
    rf"{_ARTICLE}\Z"
    rf"|\b(?:used to (?:breed|have|keep|own)|previously had|had|lost|sold|rehomed|bred|kept"
    rf"|saw|grew up with|started with) {_ARTICLE}\Z"
    r"|\b(?:my|our|his|her|the) (?:old|last|late|previous|other|next|dead|former) \Z"
    r"|\bread (?:the|a|that|about)(?: the| a)? \Z"
)
_AFTER = re.compile(
    r"(?:'s?)? (?:care ?sheets?|sheets?|care guides?|guides?|pages?|articles?|books?|chart"
    r"|groups?|forums?|channel|section|people|owners|keepers|breeders?|food|pellets|died"
    r"|passed(?: away)?|is dead|years ago|only|instead|someday|one day)\b"
)
_NOT_KEPT = frozenset((Standing.WAS, Standing.WISHED, Standing.OTHERS))


def animals_heard(scene: Scene) -> Iterator[Fact | Ask]:
    """Return every animal once, and a question where only its kin was named, none, or two."""
    first: dict[str, Fact] = {}
    kept = _kept(scene)
    for mark in (mark for mark in kept if mark.kind == "animal"):
        fact = scene.fact(FactName.ANIMAL, mark.value, mark, assumed=mark.slip)
        first.setdefault(mark.value, fact)
    unsure = [mark for mark in kept if mark.kind != "animal"]
    for mark in unsure[:1]:
        if mark.kind == "strange":
            yield scene.ask(FactName.ANIMAL, Say("unclear-animal"), mark)
            continue
        names = tuple(mark.value.split("|")) if mark.value else ()
        which = Say("unclear-which-of", Choice(names)) if names else Say("unclear-which")
        asked = scene.ask(FactName.ANIMAL, which, mark)
        yield replace(asked, among=names)
    yield from first.values()
    if len(first) > 1:
        last = max(kept, key=lambda mark: mark.start)
        which = Say("unclear-which-of", Choice(tuple(first)))
        asked = scene.ask(FactName.ANIMAL, which, last)
        yield replace(asked, among=tuple(first))


def _kept(scene: Scene) -> list[Mark]:
    """Return the animals that are spoken of as one's own; where none is, all that are named."""
    named = [mark for mark in scene.marks if mark.kind in ANIMALS]
    named = [mark for mark in named if not scene.denial(mark)]
    own = [mark for mark in named if not scene.of_others(mark)]
    # "My friend's tegu gets 130F but mine only 112": mine is one as well.
    named = own or (named if MINE & set(scene.words(0, len(scene.text))) else [])
    if len(named) < 2:
        return named
    own = [mark for mark in named if not _only_spoken_of(scene, mark)]
    return own or named


def _only_spoken_of(scene: Scene, mark: Mark) -> bool:
    before = _BEFORE.search(scene.text, max(0, mark.start - 44), mark.start)
    after = _AFTER.match(scene.text, mark.end)
    return bool(before or after) or scene.standing(mark) in _NOT_KEPT
