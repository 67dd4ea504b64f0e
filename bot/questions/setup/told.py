"""A set-up as it was told: each thing with the words it came from, options before words."""

from dataclasses import dataclass, field, replace
from functools import lru_cache
from typing import Generic, TypeVar

from bot.language.hearing import Ask, Fact, FactName, Heard, hear
from bot.language.hearing.facts import LampKind, Lid, Placement, Thermometer
from bot.language.hearing.lexicon import Mark, Names
from bot.language.lamps import Fixture, OtherLamp, TubeStrength
from bot.language.quantities import Measure
from bot.language.screens import NoScreen, Pane, Screen
from bot.language.sizes import Size
from bot.language.uv_lamps import UvLamp
from bot.queries.options import OwnTube
from bot.queries.query import Query
from bot.questions.setup.own_told import own_told
from bot.questions.setup.warmest import as_warmest
from bot.saved.group import NOTHING_OWN, Own
from calc.name_index import own_words, word_index
from calc.naming import Found, Known, Several, Unplaced, WithoutTargets, named, names_in

__all__ = [
    "Said",
    "SetUpTold",
    "has_figures",
    "heard_in",
    "kept_names",
    "names_an_animal",
    "told_by",
]

Kind = TypeVar("Kind")


@dataclass(frozen=True, slots=True)
class Said(Generic[Kind]):
    """A value with the asker's words; ``option`` is set where an option gave it."""

    value: Kind
    words: str
    option: bool = False
    hedged: bool = False
    assumed: bool = False


# option of the question → the fact it speaks of
_OPTIONS = {
    "animal": FactName.ANIMAL,
    "tube": FactName.TUBE,
    "reflector": FactName.REFLECTOR,
    "screen": FactName.SCREEN,
    "distance": FactName.DISTANCE_BACK,
    "length": FactName.TUBE_LENGTH,
    "age": FactName.AGE,
    "meter": FactName.UVI,
    "basking": FactName.BASKING,
    "cool": FactName.COOL,
    "warm": FactName.WARM,
    "night": FactName.NIGHT,
    "water": FactName.WATER,
    "room": FactName.ROOM,
    "lamp_on": FactName.ON_FOR,
    "hours": FactName.HOURS,
    "enclosure": FactName.ENCLOSURE,
    "material": FactName.MATERIAL,
    "lid": FactName.LID,
    "lamp": FactName.UV_LAMP,
    "tubes": FactName.TUBES,
    "gap": FactName.GAP,
}
_UV_LAMPS = {
    LampKind.T8: UvLamp.OTHER_TUBE,
    LampKind.COMPACT: UvLamp.COMPACT,
    LampKind.METAL_HALIDE: UvLamp.METAL_HALIDE,
    LampKind.MERCURY_VAPOUR: UvLamp.MERCURY,
    LampKind.UV_LED: UvLamp.LED,
}
# What is told of every animal, in whichever sentence it stands.
_OF_ALL = frozenset((FactName.ANIMAL, FactName.ROOM, FactName.ROOM_NIGHT))
# What a correction of one thing also settles.
_SETTLES = {
    FactName.DISTANCE_BACK: (
        FactName.DISTANCE,
        FactName.DISTANCE_PERCH,
        FactName.DISTANCE_FLOOR,
    ),
    FactName.SCREEN: (FactName.PLACEMENT,),
    FactName.NIGHT: (FactName.ROOM_NIGHT,),
}


@dataclass(frozen=True, slots=True)
class SetUpTold:
    """All that was said of a set-up by the fact, what is unclear, and the group's own figures."""

    facts: dict[FactName, tuple[Said[object], ...]]
    unclear: tuple[Ask, ...]
    order: tuple[FactName, ...] = field(default=())
    own: Own = NOTHING_OWN

    def all(self, name: FactName) -> tuple[Said[object], ...]:
        """Return all that was said under a name."""
        return self.facts.get(name, ())

    def one(self, name: FactName, kind: type[Kind]) -> Said[Kind] | None:
        """Return what was said under a name if it was said once and clearly."""
        rows = self.all(name)
        asked = any(ask.name is name for ask in self.unclear)
        if len(rows) != 1 or asked:
            return None
        only, value = rows[0], rows[0].value
        if not isinstance(value, kind):
            return None
        return Said(value, only.words, only.option, only.hedged, only.assumed)

    def measure(self, name: FactName) -> Said[Measure] | None:
        """Return the measure said under a name, if it was said once and clearly."""
        return self.one(name, Measure)

    @property
    def animal(self) -> str:
        """The animal: the option, else the first one named, else nothing."""
        rows = self.all(FactName.ANIMAL)
        return str(rows[0].value) if rows else ""

    @property
    def tube(self) -> Said[TubeStrength] | None:
        """The tube's strength."""
        return self.one(FactName.TUBE, TubeStrength)

    @property
    def tubes(self) -> int:
        """How many such tubes hang together."""
        counts = [said.value for said in self.all(FactName.TUBES) if isinstance(said.value, int)]
        return max(counts, default=1)

    @property
    def gap_m(self) -> float:
        """How far apart they hang, from middle to middle [m]; 0 where that was not said."""
        said = self.measure(FactName.GAP)
        return said.value.low if said else 0.0

    @property
    def lies_across(self) -> bool:
        """Whether the tube is said to lie the short way."""
        return bool(self.all(FactName.ACROSS))

    @property
    def uv_lamp(self) -> UvLamp | None:
        """The kind of UV lamp where no figures hold: no T5 HO tube, or several small ones kept."""
        kept = self.tube.value if self.tube else None
        if isinstance(kept, OwnTube):
            return kept.lamp.kind if kept.lamp.point and self.tubes > 1 else None
        for said in (*self.all(FactName.UV_LAMP), *self.all(FactName.TUBE)):
            kind = said.value.kind if isinstance(said.value, OtherLamp) else said.value
            if isinstance(kind, UvLamp) and kind is not UvLamp.T5_HO:
                return kind
        if any(said.option for said in self.all(FactName.TUBE)):
            return None
        kinds = (_UV_LAMPS.get(said.value) for said in self.lamps if not said.hedged)
        return next((kind for kind in kinds if kind), None)

    @property
    def reflector(self) -> Said[Fixture] | None:
        """What is behind the tube."""
        return self.one(FactName.REFLECTOR, Fixture)

    @property
    def screen(self) -> Said[Screen] | None:
        """What is between; a tube inside has nothing between."""
        rows = self.all(FactName.SCREEN)
        asked = any(ask.name is FactName.SCREEN for ask in self.unclear)
        value = rows[0].value if len(rows) == 1 and not asked else None
        if isinstance(value, Screen):
            return Said(value, rows[0].words, rows[0].option)
        inside = [x for x in self.all(FactName.PLACEMENT) if x.value is Placement.INSIDE]
        if inside and not self.is_over and not rows:
            return Said(NoScreen("inside"), inside[0].words)
        return None

    @property
    def pane(self) -> Said[Pane] | None:
        """Glass or plastic between, which stops the UV whatever else was said of it."""
        for said in self.all(FactName.SCREEN):
            if isinstance(said.value, Pane):
                return Said(said.value, said.words, said.option)
        return None

    @property
    def pane_lid(self) -> Said[object] | None:
        """A lid of glass or plastic where nobody said that the tube hangs under it."""
        inside = any(x.value is Placement.INSIDE for x in self.all(FactName.PLACEMENT))
        lids = (x for x in self.all(FactName.LID) if x.value in (Lid.GLASS, Lid.PLASTIC))
        return None if inside or self.screen else next(lids, None)

    @property
    def is_over(self) -> bool:
        """Whether the tube is said to lie over the mesh."""
        return any(x.value is Placement.OVER for x in self.all(FactName.PLACEMENT))

    @property
    def size(self) -> Said[Size] | None:
        """The enclosure."""
        return self.one(FactName.ENCLOSURE, Size)

    @property
    def lamps(self) -> tuple[Said[LampKind], ...]:
        """The kinds of lamp and heater that are there."""
        return tuple(
            Said(x.value, x.words, x.option, x.hedged, x.assumed)
            for x in self.all(FactName.LAMP)
            if isinstance(x.value, LampKind)
        )

    @property
    def thermometers(self) -> frozenset[Thermometer]:
        """What was measured with."""
        rows = self.all(FactName.THERMOMETER)
        return frozenset(x.value for x in rows if isinstance(x.value, Thermometer))

    def lacks(self, what: str) -> bool:
        """Say whether something is said not to be there."""
        return any(str(x.value) == what for x in self.all(FactName.WITHOUT))


@lru_cache(maxsize=1)
def heard_in(words: str, own: tuple[str, ...] = ()) -> Heard:
    """Return what free words tell; they are heard to find their question, and to answer it.

    ``own`` are the names of the animals that the asker's group added.
    """
    return hear(words, kept_names(own))


def told_by(words: str, query: Query, own: Own = NOTHING_OWN) -> SetUpTold:
    """Return what free words and the options of a question tell together, ``own`` the group's."""
    named_own = own_told(words, own)
    heard = _of_one(heard_in(named_own.rest, own.names)) if words.strip() else Heard((), ())
    given = {
        fact: value
        for option, fact in _OPTIONS.items()
        if (value := getattr(query, option, None)) not in (None, "")
    }
    settled = {*given, *(other for fact in given for other in _SETTLES.get(fact, ()))}
    facts: dict[FactName, tuple[Said[object], ...]] = {}
    for fact, value in given.items():
        facts[fact] = (Said(value, _typed(value), option=True),)
    for name, rows in (
        (FactName.TUBE, named_own.lamps),
        (FactName.SCREEN, named_own.screens),
    ):
        if rows and name not in settled:
            facts[name] = tuple(Said(value, quoted) for value, quoted in rows)
    for said in heard.facts:
        if said.name not in settled:
            facts[said.name] = (*facts.get(said.name, ()), _said(said))
    settled |= {FactName.SCREEN} if named_own.screens else set()
    unclear = tuple(ask for ask in heard.questions if ask.name not in settled)
    return SetUpTold(as_warmest(facts, own.names), unclear, tuple(facts), own)


def _of_one(heard: Heard) -> Heard:
    """Return what is told of one animal: the first of them that a figure was told of."""
    animals = heard.all(FactName.ANIMAL)
    if len(animals) < 2:
        return heard
    told = [fact.scope for fact in heard.facts if fact.name not in _OF_ALL]
    one = min(told, key=lambda scope: scope.animal) if told else animals[0].scope
    facts = [f for f in heard.facts if f.scope == one and f.name is not FactName.ANIMAL]
    first = sorted(animals, key=lambda fact: fact.scope != one)
    of_all = [f for f in heard.facts if f.name in _OF_ALL - {FactName.ANIMAL} and f.scope != one]
    return replace(heard, facts=(*first, *facts, *of_all))


def names_an_animal(words: str, own: tuple[str, ...] = ()) -> bool:
    """Say whether free words name an animal, of any kind, with figures here or without."""
    heard = heard_in(words, own)
    names = {row.name for row in heard.facts} | {row.name for row in heard.questions}
    return FactName.ANIMAL in names


def _said(fact: Fact) -> Said[object]:
    return Said(fact.value, fact.words, hedged=fact.hedged, assumed=fact.assumed)


def _typed(value: object) -> str:
    return str(getattr(value, "text", value))


def has_figures(name: str, own: tuple[str, ...] = ()) -> bool:
    """Say whether a name is that of an animal with targets here."""
    return isinstance(named(name, own).what, Known)


@lru_cache(maxsize=64)
def kept_names(own: tuple[str, ...] = ()) -> Names:
    """Return the names of animals as hearing wants them."""

    def marks(text: str, ordinary: frozenset[str]) -> list[Mark]:
        return [_mark(found) for found in names_in(text, ordinary, own)]

    return Names(marks, word_index()[1] | own_words(own))


def _mark(found: Found) -> Mark:
    kind, value = "animal", ""
    match found.what:
        case Known(name=name) | WithoutTargets(name=name):
            value = name
        case Several(word=word, candidates=candidates) if candidates and not any(
            candidate.slug for candidate in candidates
        ):
            # Whichever it is, there are no figures.
            value = word
        case Several(candidates=candidates):
            kind, value = "kin", "|".join(candidate.name for candidate in candidates)
        case Unplaced(words=words):
            kind, value = "strange", words
    return Mark(kind, value, found.start, found.end, found.slip)
