"""A question in free words as the rules look at it: its plain words and what was told in them."""

import re
from dataclasses import dataclass, replace
from functools import cache, cached_property

from bot.language.choices import SURFACES
from bot.language.hearing import Ask, FactName
from bot.language.hearing.facts import Lid, Material, Placement
from bot.language.quantities import Measure, Units, read_power, read_temperature
from bot.language.readings import PlacedReading
from bot.preferences import Context
from bot.questions.animals import ANY_ANIMAL
from bot.questions.setup.told import Said, SetUpTold, has_figures
from bot.saved.group import NOTHING_OWN, Own
from calc.animals import animals
from calc.heat.sources_of_heat import HeatSource, heat_sources
from calc.naming import Known, named

__all__ = ["Asked"]

_UV = (FactName.TUBE, FactName.REFLECTOR, FactName.SCREEN, FactName.PLACEMENT, FactName.UVI)
_WARMTH = (FactName.BASKING, FactName.COOL, FactName.WARM)
_TUBE_DISTANCES = (FactName.DISTANCE_BACK, FactName.DISTANCE, FactName.DISTANCE_PERCH)
_AMOUNT = re.compile(
    r"[-+]?\d[\d.,]*(?:\s*\d/\d+)?\s*(?:°\s*[fc]|degrees? (?:fahrenheit|celsius|[fc])"
    r"|inch(?:es)?|in|feet|foot|ft|cm|mm|m|[fc]|fahrenheit|celsius|centigrade)\b"
)
_DEGREES = re.compile(r"(?<![\d.])-?\d{1,3}(?:\.\d+)?\s*(?:°|degrees?|deg)?\s*(?:[fc]\b|°)")
_LENGTH = re.compile(r"(?<![\d.])\d+(?:\.\d+)? ?(?:inch(?:es)?|in|cm|ft|feet)\b")
_WATTS = re.compile(r"(?<![\d.])(\d{1,4}) ?w(?:atts?)?\b")
_WALLS = re.compile(
    r"\b(wood(?:en)?|glass|pvc|melamine) (?:viv\w*|tank|enclosure|box|cage|terrarium)"
)
_ANY_OF_MINE = re.compile(
    r"\b(?:my|the|our|a) (?:pet |baby )?(?:lizard|gecko|snake|python|tortoise|turtle|reptile"
    r"|dragon|skink|monitor|chameleon|iguana)s?\b"
)
_NUMBER = re.compile(
    r"(?<![\w.,%])\d{2,3}(?![\w.,]|\s?(?:%|°|w\b|in\b|inch|cm|mm|ft|f\b|c\b|gal|h\b))"
)
_PLACES_NAMED = (
    ("cool", r"\b(?:cool|cold) (?:side|end|spot|hide)\b|\bkühle\w* (?:seite|ecke)\b"),
    ("basking", r"\bbask\w*|\bhot ?spot\b|\bsonnenplatz\b"),
    ("warm", r"\b(?:warm|hot) (?:side|end|hide)\b|\bwarme\w* (?:seite|ecke)\b"),
)
# Between both ranges a bare number has no meaning; inside one of them it has one alone.
_COLDEST_C, _HOTTEST_C = 15.0, 52.0
_COLDEST_F, _HOTTEST_F = 60.0, 140.0
# Names of a kind that mean something else in a sentence: basking spot, a red stone, any UV bulb.
_TOO_SHORT = frozenset(
    (
        *(
            "spot",
            "red",
            "blue",
            "rock",
            "coil",
            "uv bulb",
            "basking bulb",
            "basking lamp",
            "projector",
        ),
        *("fluorescent", "spiral"),
    )
)
# What people call a kind beside the names of its table.
_ALSO_CALLED = {
    "red-lamp": ("red light", "red heat", "red bulb", "red night"),
    "night-lamp": ("black light", "black bulb", "moonlight", "coloured bulb", "colored bulb"),
    "heat-mat": ("heat mats", "heater mat"),
    "heat-rock": ("heated rock", "heating rock"),
    "compact-uv": ("coil bulb", "spiral bulb", "curly bulb", "screw in uvb"),
    "mercury-vapour": ("merc vapor", "mercury bulb"),
}


@dataclass(frozen=True)
class Asked:
    """What is asked: ``said`` as typed, ``words`` as hearing has them, and what was ``told``.

    ``typed`` are the words as typed too, in small letters, in whatever language they are;
    ``by_rule``: only rules say what is asked.
    """

    said: str
    words: str
    told: SetUpTold
    own: Own = NOTHING_OWN
    typed: str = ""
    by_rule: bool = False

    def says(self, pattern: str) -> bool:
        """Say whether the words match a pattern."""
        return re.search(pattern, self.words) is not None

    @cached_property
    def amount(self) -> str:
        """The first length or temperature with its unit, as the question convert reads it."""
        found = _AMOUNT.search(self.words)
        return found[0] if found else ""

    @cached_property
    def degrees(self) -> str:
        """The one temperature with its sign; nothing where there are several."""
        found = {match[0] for match in _DEGREES.finditer(self.words)}
        return found.pop() if len(found) == 1 else ""

    @cached_property
    def water(self) -> str:
        """The water's temperature: of what lives in water alone it is the one that was told."""
        if self.told.measure(FactName.WATER):
            return self.degrees
        other = self.says(r"\broom\b|\bnight|\bair\b|\bzimmer|\bnachts?\b")
        return self.degrees if self.lives_in_water and not other else ""

    @cached_property
    def lives_in_water(self) -> bool:
        """Whether the animal lives in water and nowhere else."""
        animal = named(self.told.animal).what if self.told.animal else None
        slug = animal.slug if isinstance(animal, Known) else ""
        return slug in animals() and animals()[slug].is_of_water_alone

    @cached_property
    def so_close(self) -> str:
        """The one length that is asked to be too close or too far; else nothing."""
        asks = (
            r"\btoo (?:close|far|near|high|low)\b"
            r"|\b\d+ ?(?:in|inch(?:es)?|cm) (?:\w+ ){0,2}"
            r"(?:ok\w*|fine|good|enough|away|right|safe)\b"
        )
        taken = (FactName.TUBE_LENGTH, FactName.ENCLOSURE, FactName.ENCLOSURE_LENGTH)
        if not self.says(asks) or any(self.told.all(fact) for fact in taken):
            return ""
        found = [match[0] for match in _LENGTH.finditer(self.words)]
        return found[0] if len(found) == 1 else ""

    @cached_property
    def bare_warmth(self) -> tuple[str, Measure] | None:
        """The one number without a unit at a place that is named, by its option.

        None where it may be either unit, or where there are several numbers.
        """
        found = _NUMBER.findall(self.words)
        place = next((name for name, said in _PLACES_NAMED if self.says(said)), "")
        if len(found) != 1 or not place or self.degrees or self.warmth:
            return None
        number = float(found[0])
        if _COLDEST_F <= number <= _HOTTEST_F:
            return place, read_temperature(found[0], Units.IN)
        likely = _COLDEST_C <= number <= _HOTTEST_C
        return (place, read_temperature(found[0], Units.CM)) if likely else None

    @cached_property
    def wattage(self) -> Measure | None:
        """The one wattage that is asked about; nothing where there are several."""
        found = {match[1] for match in _WATTS.finditer(self.words)}
        return read_power(found.pop()) if len(found) == 1 else None

    @cached_property
    def walls(self) -> str:
        """What the walls are made of, where a word for the enclosure follows it."""
        found = _WALLS.search(self.words)
        return {"wooden": "wood"}.get(found[1], found[1]) if found else ""

    @property
    def uv(self) -> bool:
        """Whether anything of the UV side was told."""
        return any(self.told.all(fact) for fact in _UV)

    @property
    def warmth(self) -> bool:
        """Whether a temperature of the enclosure was told."""
        return any(self.told.all(fact) for fact in _WARMTH)

    @property
    def at_a_distance(self) -> bool:
        """Whether a distance from the tube was told."""
        return any(self.told.all(fact) for fact in _TUBE_DISTANCES)

    @property
    def readings(self) -> tuple[PlacedReading, ...]:
        """The meter readings with their distances."""
        rows = (said.value for said in self.told.all(FactName.UVI_AT))
        return tuple(row for row in rows if isinstance(row, PlacedReading))

    @property
    def reading_here(self) -> float | None:
        """The one UV index that was read at the one distance told apart from it."""
        rows = [said.value for said in self.told.all(FactName.UVI)]
        value = rows[0] if len(rows) == 1 and self.at_a_distance else None
        return value[0] if isinstance(value, tuple) and value[0] == value[1] else None

    @property
    def about_an_animal(self) -> bool:
        """Whether an animal is named, or one of no kind is meant."""
        return bool(self.told.animal) or _ANY_OF_MINE.search(self.words) is not None

    @cached_property
    def unclear_animal(self) -> Ask | None:
        """What was said of the animal where that names none, or several."""
        if self.told.animal:
            return None
        return next((ask for ask in self.told.unclear if ask.name is FactName.ANIMAL), None)

    def for_animal(self, name: str) -> "Asked":
        """Return what would be asked if the animal had this name."""
        facts = dict(self.told.facts) | {FactName.ANIMAL: (Said(name, ""),)}
        unclear = tuple(ask for ask in self.told.unclear if ask.name is not FactName.ANIMAL)
        return replace(self, told=replace(self.told, facts=facts, unclear=unclear))

    @property
    def kin(self) -> tuple[str, ...]:
        """The animals that may be meant by a word for several, as in my gecko."""
        return self.unclear_animal.among if self.unclear_animal else ()

    @property
    def without_figures(self) -> str:
        """The animal that is named, where it is known by its name alone."""
        name = self.told.animal
        return name if name and not has_figures(name, self.own.names) else ""

    def animal_for_examples(self, context: Context) -> str:
        """Return the animal that an example is made for: the asker's own, if any is known."""
        kin = next((name for name in self.kin if has_figures(name, self.own.names)), "")
        return self.told.animal or kin or context.default_animal or ANY_ANIMAL

    @property
    def under_mesh(self) -> bool:
        """Whether mesh is said to be there, of a kind that was not told."""
        lids = {said.value for said in self.told.all(FactName.LID)}
        walls = {said.value for said in self.told.all(FactName.MATERIAL)}
        places = {said.value for said in self.told.all(FactName.PLACEMENT)}
        asked = any(ask.name is FactName.SCREEN for ask in self.told.unclear)
        over = Placement.OVER in places or (Material.MESH in walls and not places)
        return self.told.screen is None and (Lid.MESH in lids or over or asked)

    @cached_property
    def lamps(self) -> tuple[str, ...]:
        """The kinds of heat source that are named, as the question lamp knows them."""
        found: dict[str, int] = {}
        for name, form in _lamp_forms():
            match = form.search(self.words)
            if match:
                found.setdefault(name, match.start())
        return tuple(sorted(found, key=lambda name: found[name]))

    @cached_property
    def surface(self) -> str:
        """What an infrared gun was pointed at."""
        forms = ((name, form) for name, others in SURFACES.items() for form in (name, *others))
        spans = (
            (match.start(), name)
            for name, form in forms
            if (match := re.search(rf"\b{re.escape(form)}s?\b", self.words))
        )
        return min(spans, default=(0, ""))[1]


@cache
def _lamp_forms() -> tuple[tuple[str, re.Pattern[str]], ...]:
    return tuple(
        (kind.name, _form_of(slug, kind))
        for slug, kind in heat_sources().items()
        if slug != "t5-ho-tube"
    )


def _form_of(slug: str, kind: HeatSource) -> re.Pattern[str]:
    names = {kind.name, *kind.aliases, *_ALSO_CALLED.get(slug, ())} - _TOO_SHORT
    longest_first = sorted((name.lower() for name in names), key=len, reverse=True)
    forms = "|".join(re.escape(name).replace(r"\ ", "[ -]?") for name in longest_first)
    # A panel alone is one that warms, an LED panel or one sold for UV is not.
    other = "(?<!led )(?<!leds )(?<!uv )(?<!uvb )" if slug == "radiant-panel" else ""
    return re.compile(rf"(?<![a-z0-9]){other}(?:{forms})s?(?![a-z])")
