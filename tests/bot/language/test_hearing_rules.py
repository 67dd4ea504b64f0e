"""One rule of the hearing each: what is heard, and whether a unit or a name was assumed."""

from itertools import pairwise

import pytest

from tests.bot.language.hearing_score import heard_in, told

HEARD: dict[str, set[tuple[str, str, bool]]] = {
    # A meter reading with its distance, however they are joined.
    "uvi 4 from 12in": {("uvi_at", "4 from 12in", False)},
    "uvi 4.2 @ 12in": {("uvi_at", "4.2 @ 12in", False)},
    "4.2 uvi at 12in": {("uvi_at", "4.2 uvi at 12in", False)},
    # A lamp's holder and its high output belong to the lamp named before them.
    "a coil uvb in a dome, 6in to the log": {
        ("lamp", "compact", False),
        ("distance_perch", "6 in", False),
    },
    "halogen in a dome, 9in to the log": {
        ("lamp", "halogen", False),
        ("lamp_distance", "9 in", False),
    },
    "T5 12% HO": {("tube", "12", False), ("lamp", "t5 ho", False)},
    # A name cut short, in brackets, or turned round.
    "russian tort": {("animal", "Horsfield's tortoise", False)},
    "chameleon (veiled)": {("animal", "veiled chameleon", False)},
    "python, carpet": {("animal", "carpet python", False)},
    "slider turtle, box 4 ft": {
        ("animal", "slider turtle", False),
        ("enclosure_length", "4 ft", False),
    },
    "tortoise: russian": {("animal", "Horsfield's tortoise", False)},
    # The same in two units is one thing, and so is a figure with the one it replaces.
    "tube 12in (30 cm) from his back": {("distance_back", "12 in", False)},
    "basking 100F/38C": {("basking", "100 F", False)},
    "uvb 14 instead of 10 inches from her": {("distance_back", "14 in", False)},
    "tube 14in away (was 20in)": {("distance", "14 in", False)},
    # An answer to a question that was only thought of, and a word that tells when, not where.
    "How long should the lights be on? I do 10 hours.": {("hours", "10 h", False)},
    "How long should the lights stay on? I run 10 hours now.": {("hours", "10 h", False)},
    "the room stays 30C in the day and 20C at night": {
        ("room", "30 C", False),
        ("room_night", "20 C", False),
    },
    # What belongs to somebody else, to before, or is only asked about.
    "my cousin has a leopard gecko with a 12% tube": set(),
    "moved her from a 20 gallon to a 4x2x2": {("enclosure", "4x2x2 ft", True)},
    "basking used to be 110": set(),
    "i read 104F on the basking spot": {("basking", "104 F", False)},
    "want 104F on the basking spot": set(),
    "does anyone know if 80F cool side is ok": {("cool", "80 F", False)},
    "it was 120 on the basking spot, now its back to 101": {("basking", "101 F", True)},
    "everyone else has 80 cool": set(),
    "it would be 9 in from the branch": set(),
    # Grams and names of days are no temperatures.
    "90 g, warm hide 88F cool hide 73F": {("warm", "88 F", False), ("cool", "73 F", False)},
    "room is 72 day 66 night": {("room", "72 F", True), ("room_night", "66 F", True)},
    "my beardie Rex is 5 months": {
        ("animal", "bearded dragon", False),
        ("animal_age", "5 months", False),
    },
    "tube is 14 inches above her basking log": {("distance_perch", "14 in", False)},
    "60w bulb 10in above the rock gets 91F": {
        ("watts", "60 W", False),
        ("lamp_distance", "10 in", False),
        ("basking", "91 F", False),
    },
    "stick on thermometers, they say 90 basking": {
        ("thermometer", "dial", False),
        ("basking", "90 F", True),
    },
    "do i need to change a 6 month old 12% tube": {
        ("tube", "12", False),
        ("age", "6 months", False),
    },
    "changed the 60w to a 100w": {("watts", "100 W", False)},
    "ceramic isn't on a thermostat": {("lamp", "ceramic", False), ("thermostat", "no", False)},
    "no the mat has a thermostat": {("lamp", "heat mat", False), ("thermostat", "yes", False)},
    # The animal itself is where a distance goes to, and may have a length.
    "tube 12in above my beardie": {
        ("animal", "bearded dragon", False),
        ("distance_back", "12 in", False),
    },
    "corn snake 4ft, basking 86": {("animal", "corn snake", False), ("basking", "86 F", True)},
    "tube 12% polished, 5 months in use": {
        ("tube", "12", False),
        ("reflector", "polished", False),
        ("age", "5 months", False),
    },
    "the thermostat broke": set(),
    "a thermostat comes tomorrow": set(),
    "dimming stat": {("thermostat", "yes", False)},
    "uvb was 18 inches away, lowered it to 12 inches": {("distance", "12 in", False)},
    "to get from 90 to 100 on the basking spot": set(),
    "4 foot tank, no wait its 5 foot": {("enclosure_length", "5 ft", False)},
    "a 34 inch 12% t5": {
        ("tube_length", "34 in", False),
        ("tube", "12", False),
        ("lamp", "t5", False),
    },
    "mesh takes a lot. mine blocks 40%": {("screen", "40%", False)},
    # What is set, and what has a size of its own.
    "thermostat set to 90F": {("thermostat", "yes", False)},
    "stat at 31c, warm hide 30c": {("thermostat", "yes", False), ("warm", "30 C", False)},
    "tube in an 8 inch dome": set(),
    "she's 40 cm": set(),
    "a dim red bulb at night": {("lamp", "red", False)},
    # Ages without "old", and of whom.
    "corn snake, 3 yrs": {("animal", "corn snake", False), ("animal_age", "3 years", False)},
    "hes about 8 months": {("animal_age", "8 months", False)},
    "we had our boa constrictor 4 years": {("animal", "boa constrictor", False)},
    "my 6 year old son's green anole": {("animal", "green anole", False)},
    "the 5.0 is 9 months old": {("tube", "6 older", False), ("age", "9 months", False)},
    # The tube's own length beside its distance, and each lamp's own watts.
    "12% 4ft long": {("tube", "12", False), ("tube_length", "4 ft", False)},
    "t5 12% 36in 15in above the log": {
        ("lamp", "t5", False),
        ("tube", "12", False),
        ("tube_length", "36 in", False),
        ("distance_perch", "15 in", False),
    },
    "halogen 50w ceramic 60w": {
        ("lamp", "halogen", False),
        ("watts", "50 W", False),
        ("lamp", "ceramic", False),
        ("other_watts", "60 W", False),
    },
    "90 w a 75w halogen": {
        ("basking", "90 F", True),
        ("watts", "75 W", False),
        ("lamp", "halogen", False),
    },
    "6ftx2ftx2ft": {("enclosure", "6x2x2 ft", False)},
    "viv 4ft x 2ft": {("enclosure_length", "4 ft", False)},
    # Over a lid that was named before; an animal on it is no lamp.
    "lid is mesh, uvb lies on it": {("lid", "mesh", False), ("placement", "over", False)},
    "screen top and the tube sits on the lid": {
        ("lid", "mesh", False),
        ("placement", "over", False),
    },
    "my cat sleeps on the mesh": {("lid", "mesh", False)},
    # Hours of light, from the shortest day to the longest that anybody means.
    "lights 12/12": {("hours", "12 h", False)},
    "lights on at 7.30 off at 19.30": {("hours", "12 h", False)},
    "lights on 7am off 7pm": {("hours", "12 h", False)},
    "light 14/10": {("hours", "14 h", False)},
    # Whose age it is.
    "tube is 8 months old and the beardie is 2 years old": {
        ("animal", "bearded dragon", False),
        ("age", "8 months", False),
        ("animal_age", "2 years", False),
    },
    "a 3 year old beardie": {("animal_age", "3 years", False), ("animal", "bearded dragon", False)},
    # A percentage beside a tube, a mesh or a dimmer.
    "12% t5 ho": {("tube", "12", False), ("lamp", "t5 ho", False)},
    "mesh blocks 20%": {("screen", "20%", False)},
    "the mesh takes 35%": {("screen", "35%", False)},
    "dimmer at 60%": {("dimmer", "60%", False)},
    # Volumes, sizes, lids, controls.
    "40 gallon tank": {("volume", "40 gal", False)},
    "55 gal": {("volume", "55 gal", False)},
    "glass lid": {("lid", "glass", False)},
    "mesh lid with the tube over it": {("lid", "mesh", False), ("placement", "over", False)},
    "thermostat on the mat": {("thermostat", "yes", False), ("lamp", "heat mat", False)},
    "4x2x2 with basking 98": {("enclosure", "4x2x2 ft", True), ("basking", "98 F", True)},
    # From where a distance is meant.
    "tube 14in above the basking spot": {("distance_perch", "14 in", False)},
    "the tube is 12in over the branch": {("distance_perch", "12 in", False)},
    "12in from him": {("distance_back", "12 in", False)},
    "12in from her": {("distance_back", "12 in", False)},
    "10-12in from her back": {("distance_back", "10-12 in", False)},
    "100w flood lamp 12in away": {
        ("watts", "100 W", False),
        ("lamp", "flood", False),
        ("lamp_distance", "12 in", False),
    },
    # One unit that was written serves the others; without one, what can be true.
    "basking 98F, cool 75, warm 85": {
        ("basking", "98 F", False),
        ("cool", "75 F", True),
        ("warm", "85 F", True),
    },
    "basking 40, cool 25, warm 30": {
        ("basking", "40 C", True),
        ("cool", "25 C", True),
        ("warm", "30 C", True),
    },
    # A bare distance takes the system of a size or a temperature beside it.
    "tube is 30 over the branch, tank 120x60x60cm": {
        ("distance_perch", "30 cm", True),
        ("enclosure", "120x60x60 cm", False),
    },
    "tube is 14 over the branch, 98F basking": {
        ("distance_perch", "14 in", True),
        ("basking", "98 F", False),
    },
    "moved from 10 to 12in from the tube": {("distance", "12 in", False)},
    "the tube is half a year old": {("age", "0.5 year", False)},
    # The night of the animal and that of the room.
    "drops to 19C at night": {("night", "19 C", False)},
    "room drops to 18C at night": {("room_night", "18 C", False)},
}


@pytest.mark.parametrize("text", HEARD)
def test_it_is_heard_so(text: str) -> None:
    heard = heard_in(text)
    assert {(fact.name.value, told(fact), fact.assumed) for fact in heard.facts} == HEARD[text]
    assert heard.questions == ()


@pytest.mark.parametrize("text", HEARD)
def test_a_fact_is_told_with_its_own_words_and_no_others(text: str) -> None:
    facts = sorted(heard_in(text).facts, key=lambda fact: fact.start)
    for one, other in pairwise(facts):
        assert one.words != other.words or one.name is other.name
    for fact in facts:
        assert fact.words == text[fact.start : fact.end] == fact.words.strip()


@pytest.mark.parametrize(
    ("text", "hedged"), [("maybe 12% tube", True), ("12% tube", False), ("about 14in away", True)]
)
def test_a_guess_is_marked(text: str, hedged: bool) -> None:
    assert {fact.hedged for fact in heard_in(text).facts} <= {hedged}


@pytest.mark.parametrize(
    ("text", "name"),
    [("tube is 14 from him", "distance_back"), ("tube 14 above the branch", "distance_perch")],
)
def test_a_distance_that_nothing_gives_a_unit_is_asked_about(text: str, name: str) -> None:
    heard = heard_in(text)
    assert heard.facts == ()
    (question,) = heard.questions
    assert question.name.value == name
    assert question.question.id == "unclear-inches"
    assert question.words == text[question.start : question.end]
    assert "14" in question.words


def test_which_of_two_strengths_it_is_is_asked_for_by_the_label() -> None:
    (question,) = heard_in("not sure if its 6% or 12%").questions
    assert question.name.value == "tube"
    assert question.question.id == "unclear-tube"
    assert question.words == "6% or 12%"


def test_a_mesh_that_is_only_there_is_asked_how_much_it_takes() -> None:
    (question,) = heard_in("i have a mesh").questions
    assert question.name.value == "screen"
    assert question.question.id == "unclear-mesh"
    assert question.words == "mesh"
