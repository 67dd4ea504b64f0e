"""Each answer about heat that could hurt somebody says so: held for every command and example."""

import pytest

from bot.ask import ask
from bot.commands import COMMANDS
from bot.preferences import Preferences
from bot.reply import Reply
from calc.heat.sources_of_heat import heat_sources

# What each question about heat must say somewhere, whatever the answer.
FIRE = ("burn", "start fires", "guard", "ceramic holder")
MAINS = ("switch off and let it cool before you move or change a lamp", "electrical codes")
SICK = ("reptile vet", "lies limp")
DARK = ("no red, blue or purple night lamps", "dark")
MUST_SAY = {
    "temps": (*FIRE, *MAINS, *SICK),
    "basking": (*FIRE, *MAINS, *SICK, "measure"),
    "watts": (*FIRE, *MAINS, *SICK, "label", "measure"),
    "air": (*FIRE, *MAINS, *SICK, "measure"),
    "night": (*SICK, *DARK),
    "hours": (*MAINS, *SICK, "lights on all night do harm", "watts"),
    "surface": (*FIRE, *MAINS, *SICK, "laser"),
    "lamp": (*FIRE, *MAINS, *SICK),
    "needs": (*FIRE, *MAINS, *SICK, "do not look into the lit lamp"),
    "plan": (*FIRE, "electrical codes", "reptile vet", "do not look into the lit lamp"),
}
EXAMPLES = [(c.name, line) for c in COMMANDS if c.name in MUST_SAY for line in c.examples]


def said(reply: Reply) -> str:
    rows = (row.text for row in reply.rows)
    parts = (reply.answer, *reply.steps, *reply.cautions, *rows, *reply.why)
    return " ".join(" ".join(parts).lower().split())


def test_every_question_of_heat_is_held() -> None:
    heat = {"temps", "basking", "watts", "air", "night", "hours", "surface", "lamp"}
    assert heat <= MUST_SAY.keys()
    assert MUST_SAY.keys() == {name for name, _ in EXAMPLES}


@pytest.mark.parametrize(("name", "line"), EXAMPLES, ids=[line for _, line in EXAMPLES])
def test_an_answer_that_can_hurt_says_how_not_to(name: str, line: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    for words in MUST_SAY[name]:
        assert words in said(reply), words


@pytest.mark.parametrize(
    "line",
    [
        "night room:55F animal:bearded dragon",
        "night room:66F animal:corn snake",
        "night room:-5C animal:bearded dragon",
        "temps night:50F animal:bearded dragon",
    ],
)
def test_heat_at_night_is_without_light_and_on_a_thermostat(line: str, anyone: Preferences) -> None:
    told = said(ask(line, anyone))
    assert "without light" in told
    assert "thermostat" in told
    for words in (*FIRE, *MAINS, *SICK):
        assert words in told, words


@pytest.mark.parametrize("line", ["night room:50F animal:slider", "night room:65F animal:slider"])
def test_water_is_heated_on_a_thermostat_and_with_no_hand_in_it(
    line: str, anyone: Preferences
) -> None:
    told = said(ask(line, anyone))
    for words in ("thermostat", "guard", "drip loop", "pull every plug", *MAINS[1:], *SICK):
        assert words in told, words


@pytest.mark.parametrize("line", ["watts:75W dimmer:100%", "watts:75W dimmer:90%", "watts:75W"])
def test_a_dimmer_is_never_for_a_lamp_that_cannot_be_dimmed(line: str, anyone: Preferences) -> None:
    reply = ask(f"basking surface:112F air:80F distance:10in animal:bearded dragon {line}", anyone)
    assert any(row.label == "Dimmer" for row in reply.rows)
    assert "never dim a mercury-vapour lamp or a uv tube" in said(reply)


OWN_CAUTIONS = {
    "ceramic-emitter": ("ceramic holder", "guard", "thermostat"),
    "radiant-panel": ("thermostat",),
    "infrared-projector": ("thermostat", "measure the surface"),
    "heat-mat": ("thermostat", "burn the belly", "overheat"),
    "heat-rock": ("burn", "vet", "unplug it"),
    "mercury-vapour": ("cannot be dimmed", "never look into it", "no vacuum cleaner"),
    "compact-uv": ("never look into it",),
    "red-lamp": ("off tonight", "dark"),
    "night-lamp": ("off tonight", "dark"),
    "narrow-spot": ("burn",),
    "halogen-flood": ("ceramic holder", "more watts"),
    "incandescent-flood": ("ceramic holder", "more watts"),
    "led-lamp": (),
    "metal-halide": ("never dimmed", "cracked outer glass", "power off at once"),
    "t5-ho-tube": ("never dim it", "above glass or plastic"),
    "t8-tube": ("less uv than on a t5 ho", "by a uv index meter alone"),
    "uv-led": ("uvc or disinfecting led", "eyes and skin", "uv index meter was read"),
    "white-tube": ("looks like a uv tube and is none", "off at night"),
    "full-spectrum": ("never takes the place of the uv tube", "off at night"),
    "plant-light": ("never takes the place of the uv tube", "shade", "off at night"),
}


def test_every_kind_of_heat_source_has_its_own_cautions_listed() -> None:
    assert OWN_CAUTIONS.keys() == heat_sources().keys()


@pytest.mark.parametrize("slug", OWN_CAUTIONS)
def test_a_heat_source_is_told_with_its_own_danger(slug: str, anyone: Preferences) -> None:
    told = said(ask(f"lamp kind:{heat_sources()[slug].name}", anyone))
    for words in (*OWN_CAUTIONS[slug], *FIRE, *MAINS, *SICK):
        assert words in told, words
