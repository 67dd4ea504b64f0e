"""What cannot wait in a set-up comes before everything else."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply

STRONG = "check my beardie sits 8 inches under a 14% tube no screen polished"


def row(reply: Reply, part: str) -> tuple[str, ...] | None:
    assert reply.table is not None
    return next((r for r in reply.table.rows if r[0] == part), None)


def why(reply: Reply, part: str) -> str:
    (told,) = [text for text in reply.why if text.startswith(f"{part}: ")]
    return told


def labelled(reply: Reply, label: str) -> str:
    return "; ".join(row.text for row in reply.rows if row.label == label)


def test_a_sign_of_illness_sends_to_a_vet_with_the_keepers_words(anyone: Preferences) -> None:
    reply = ask("check beardie is not eating, basking 98F, cool 78F", anyone)
    assert reply.answer.startswith("Call a reptile vet this week.")
    assert "not eating" in reply.answer
    assert reply.guide[0].slug == "when-to-call-a-vet"


def test_a_sign_alone_is_answered_too(anyone: Preferences) -> None:
    reply = ask("check he keeps his eyes closed", anyone)
    assert reply.status == "ok"
    assert reply.answer.startswith("Call a reptile vet")


def test_without_a_sign_nobody_is_sent_to_a_vet(anyone: Preferences) -> None:
    reply = ask("check beardie eats well and never squints, basking 98F, cool 78F", anyone)
    assert reply.dangers == ()
    assert not any("vet" in step for step in reply.steps)


def test_far_too_much_uv_is_switched_off_first(anyone: Preferences) -> None:
    reply = ask(STRONG, anyone)
    assert reply.answer.startswith("Switch the UV tube off now")
    safety = row(reply, "Safety")
    assert safety is not None
    assert "about 3 times" in why(reply, "Safety")
    assert "too strong" in reply.answer


@pytest.mark.parametrize(
    ("animal", "reading", "due"),
    [
        ("beardie", "4", []),
        ("beardie", "5.3", []),
        ("beardie", "8.4", ["today"]),
        ("beardie", "10", ["now"]),
        ("leopard gecko", "3.9", ["today"]),
        ("leopard gecko", "4", ["now"]),
    ],
)
def test_a_meter_that_shows_far_too_much_switches_off_too(
    animal: str, reading: str, due: list[str], anyone: Preferences
) -> None:
    reply = ask(f"check {animal}, uvi {reading} at his back", anyone)
    assert [danger.urgency for danger in reply.dangers] == due
    assert (row(reply, "Safety") is not None) is bool(due)


@pytest.mark.parametrize(
    ("told", "heater"),
    [
        ("heat mat without a thermostat", "heat mat"),
        ("ceramic heater, no thermostat", "ceramic heater"),
        ("radiant panel and a heat mat, thermostat: none", "heat mat and radiant panel"),
    ],
)
def test_a_heater_without_a_thermostat_is_unplugged(
    told: str, heater: str, anyone: Preferences
) -> None:
    reply = ask(f"check leopard gecko, {told}", anyone)
    assert reply.answer.startswith("Unplug the heater now")
    assert heater in why(reply, "Safety")


@pytest.mark.parametrize(
    "told", ["heat mat on a thermostat", "heat mat", "no thermostat, halogen flood"]
)
def test_a_watched_heater_and_a_lamp_are_left_alone(told: str, anyone: Preferences) -> None:
    assert row(ask(f"check leopard gecko, {told}", anyone), "Safety") is None


def test_what_burns_is_unplugged_before_anything_else(anyone: Preferences) -> None:
    reply = ask("check the mesh is smoking, my beardie is limp, basking 125F", anyone)
    assert reply.answer.startswith("Pull the plug")
    assert "grown-up" in reply.steps[1]


@pytest.mark.parametrize(
    "told",
    [
        "sparks",
        "the plug sparks",
        "the mesh is smoking",
        "the mesh is smoking, basking 98F, cool 78F",
        "it smells burnt",
        "my heater smells odd",
        "the heat mat smells funny, basking 98F",
        "the ceramic heater smells hot",
    ],
)
def test_fire_is_answered_with_little_or_nothing_beside_it(told: str, anyone: Preferences) -> None:
    assert ask(f"check {told}", anyone).answer.startswith("Pull the plug")


def test_the_urgent_stands_in_the_first_sentence(anyone: Preferences) -> None:
    reply = ask("check my beardie is limp, basking 98F, cool 78F", anyone)
    assert reply.answer.startswith("Call a reptile vet now.")


def test_a_burning_lamp_goes_off_before_the_call_and_neither_is_lost(anyone: Preferences) -> None:
    told = "check my beardie is limp, basking 125F, 14% tube 6in to his back no mesh polished"
    reply = ask(f"{told}, heat mat no thermostat", anyone)
    # The lamp that is too hot and the limp animal are one: all heat off also unplugs the mat.
    said = reply.answer.split(". ")
    assert said[0] == "Switch all heat off now and cool it slowly"
    assert said[1] == "Switch the UV tube off now, until it hangs right"
    assert said[2].startswith("Call a reptile vet now")
    assert "no_thermostat" in [danger.key for danger in reply.dangers]


def test_a_bare_night_that_may_be_deadly_cold_is_asked_about(anyone: Preferences) -> None:
    reply = ask("check beardie, night 40", anyone)
    assert any("Is 40 in °F or in °C?" in text.text for text in reply.rows)
    night = row(reply, "Night")
    assert night is not None
    assert night[1] == "cannot tell"


def test_an_animal_that_nobody_named_is_said_in_the_answer(anyone: Preferences) -> None:
    told = "You named no animal, so I judged only what holds for any animal"
    for line in ("check basking 98F, cool 78F", "check basking 130F"):
        reply = ask(line, anyone)
        assert "Which animal?" in reply.answer
        assert told in labelled(reply, "Animal")
    unclear = ask("check tortoise, basking 95F", anyone)
    assert "Which animal?" in unclear.answer
    several = labelled(unclear, "Animal")
    assert several.startswith("“tortoise” may be several animals: Hermann's tortoise, ")
    assert "Horsfield's tortoise, " in several
    assert several.endswith("I judged only what holds for any animal.")
    known = ask("check beardie, basking 98F, cool 78F", anyone)
    assert labelled(known, "Animal") == ""
    assert "Which animal?" not in known.answer


def test_a_cool_end_hotter_than_the_spot_is_no_gradient(anyone: Preferences) -> None:
    reply = ask("check beardie, basking 90F, cool 95F", anyone)
    apart = row(reply, "Warm to cool")
    assert apart is not None
    assert apart[1] == "cannot tell"
    assert "which is which" in why(reply, "Warm to cool")
    assert "-" not in why(reply, "Warm to cool")


def test_a_hot_cool_end_is_not_said_to_burn(anyone: Preferences) -> None:
    assert "no cool place" in why(ask("check beardie, cool end 100F", anyone), "Safety")
    assert "burns" in why(ask("check beardie, basking 130F", anyone), "Safety")
