"""What beginners type into the UV questions by mistake, and that every refusal says what works."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply

DRAGON = "animal:bearded dragon"
NAMED = "tube:12% reflector:polished screen:none"
SECTION = f"section {NAMED} distance:14in enclosure:48x24x24in {DRAGON}"


def example_of(reply: Reply) -> str:
    return reply.answer.rpartition("for example ")[2].removesuffix(".")


@pytest.mark.parametrize("question", ["meter", f"distance {NAMED}", "distance"])
@pytest.mark.parametrize(
    "readings", ["300 µW/cm² at 12in", "300uW/cm2 at 12 in", "12in 300 μW/cm²", "300 at 12in"]
)
def test_a_reading_in_the_wrong_unit_is_told_so(
    question: str, readings: str, anyone: Preferences
) -> None:
    reply = ask(f"{question} readings:{readings} {DRAGON}", anyone)
    assert reply.status == "problem"
    assert "µW/cm²" in reply.answer
    assert "UV index" in reply.answer
    assert ask(f"meter {example_of(reply)} {DRAGON}", anyone).status == "ok"


def test_a_wanted_uvi_in_the_wrong_unit_is_told_so(anyone: Preferences) -> None:
    assert "µW/cm²" in ask(f"distance {NAMED} uvi:100 µW/cm²", anyone).answer


@pytest.mark.parametrize("value", ["0", "0.01"])
def test_a_reading_of_nothing_is_to_be_taken_nearer(value: str, anyone: Preferences) -> None:
    reply = ask(f"meter {value} at 12in {DRAGON}", anyone)
    assert reply.status == "problem"
    assert "nearer" in reply.answer


@pytest.mark.parametrize("uvi", ["25", "0", "0-0", "3-30"])
def test_a_wanted_uvi_that_nothing_gives_is_refused_as_typed(uvi: str, anyone: Preferences) -> None:
    reply = ask(f"distance {NAMED} uvi:{uvi}", anyone)
    assert reply.status == "problem"
    assert "above 0 and up to 20" in reply.answer
    assert ask(f"distance {NAMED} {example_of(reply)}", anyone).status == "ok"


@pytest.mark.parametrize("distance", ["2in", "3in", "5in", "14cm"])
def test_a_place_too_near_is_told_in_the_answer(distance: str, anyone: Preferences) -> None:
    reply = ask(f"uvi {NAMED} {DRAGON} distance:{distance}", anyone)
    assert "Too close" in reply.answer
    assert any("too close" in step for step in reply.steps)
    assert [(danger.key, danger.urgency) for danger in reply.dangers] == [("uv_too_strong", "now")]
    section = ask(SECTION.replace("14in", distance), anyone)
    assert [(a.key, a.urgency) for a in section.alarms] == [("uv_too_strong", "now")]


@pytest.mark.parametrize(
    ("text", "example"), [("4", "4ft"), ("48", "48in"), ("abc", "4ft"), ("0", "4ft")]
)
def test_an_enclosure_without_a_unit_gets_a_likely_example(
    text: str, example: str, anyone: Preferences
) -> None:
    reply = ask(f"tube distance:14in screen:none {DRAGON} enclosure:{text}", anyone)
    assert example_of(reply) == example


@pytest.mark.parametrize("length", ["1in", "2cm", "80in"])
@pytest.mark.parametrize("question", [f"distance {NAMED} {DRAGON}", f"card {DRAGON}", SECTION])
def test_a_tube_that_cannot_be_is_refused_by_its_own_length(
    length: str, question: str, anyone: Preferences
) -> None:
    reply = ask(f"{question} length:{length}", anyone)
    assert reply.status == "problem"
    assert "lit length is -" not in reply.answer
    assert "tube" in reply.answer


@pytest.mark.parametrize(
    ("given", "word"),
    [
        ("platform:0in", "platform"),
        ("platform:100in", "platform"),
        ("heat:100in", "heat"),
        ("patch:0in", "patch"),
        ("back:30in", "back"),
    ],
)
def test_what_is_not_in_the_box_is_refused_by_its_name(
    given: str, word: str, anyone: Preferences
) -> None:
    reply = ask(f"{SECTION} {given}", anyone)
    assert reply.status == "problem"
    assert f"for {word}," in reply.answer
    example = reply.steps[0].removeprefix("Ask with ").removesuffix(".")
    assert ask(f"{SECTION} {example}", anyone).status == "ok"


def test_a_box_too_short_for_a_tube_is_told_with_what_the_shortest_is(anyone: Preferences) -> None:
    reply = ask(f"section {NAMED} distance:8in enclosure:12x12x12in {DRAGON}", anyone)
    assert "for enclosure" in reply.answer
    assert "21.5 in (55 cm)" in reply.answer


def test_a_faint_dose_keeps_its_figures(anyone: Preferences) -> None:
    reply = ask("dose uvi:0.04 hours:1", anyone)
    assert "UVI 0.04 for 1 h gives up to 0.04 SED" in " ".join(row.text for row in reply.rows)


def test_the_hours_of_a_dose_get_an_example_in_hours(anyone: Preferences) -> None:
    assert example_of(ask("dose uvi:4 hours:ten", anyone)) == "10 hours"
    assert "above 0" in ask("dose uvi:4 hours:0", anyone).answer


def test_weak_dated_readings_are_no_trend_by_their_rounding(anyone: Preferences) -> None:
    reply = ask(
        "decline 2026-01-03 0.3, 2026-03-01 0.2, 2026-05-02 0.2, 2026-07-02 0.2 uvi:0.1-0.5", anyone
    )
    assert "fades by" not in reply.answer
    now = next(v for v in reply.values if v.name == "uvi")
    assert now.low < 0.18 < 0.22 < now.high
