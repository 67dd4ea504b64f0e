"""A whole set-up checked: verdicts, order, what is missing, and the words of every fact."""

import pytest

from bot.answering import in_words
from bot.ask import ask
from bot.brief import MOST_LINES, phone_lines
from bot.drawing import Side
from bot.facts import Say
from bot.language.quantities import Units
from bot.preferences import LANGUAGES, Context, Language, Preferences
from bot.queries.setup import CheckQuery
from bot.questions.setup.check import check, tell
from bot.reply import Reply, Role
from bot.saying.voice import voice
from calc.heat.steps import Step
from tests.bot.language.hearing_score import TUNED_ON, heard_in, sentences

TOLD = (
    "hi my beardie has a 12% in a shiny hood on top of the mesh, its 14 inches to the log, "
    "basking 98, other side 75, what am i doing wrong"
)
RIGHT = (
    "bearded dragon, 24W 12% T5 HO, polished reflector, no screen, 17 in to his back, "
    "basking 103F, cool end 79F, lamp was on for 3 hours, 66F at night, lights 12 hours a day, "
    "halogen flood beside the tube"
)


def checked(words: str, units: Units = Units.IN, **options: str) -> Reply:
    query = CheckQuery.model_validate({"setup": words, **options}, context={"units": units})
    context = Context(units)
    return in_words(tell(check(query, context)), context)


def verdicts(reply: Reply) -> dict[str, str]:
    assert reply.table is not None
    return {part: verdict for part, verdict, *_ in reply.table.rows}


def rows(reply: Reply, label: str) -> str:
    return "; ".join(row.text for row in reply.rows if row.label == label)


def test_a_right_set_up_is_fine_in_every_part() -> None:
    reply = checked(RIGHT)
    assert set(verdicts(reply).values()) == {"fine"}
    assert reply.answer.startswith("Yes, all of it is right.")
    assert rows(reply, "Missing") == ""


def test_where_all_is_fine_the_one_next_step_is_told_and_nowhere_else() -> None:
    told = [line.text for line in checked(RIGHT).brief]
    assert told[1].startswith("Next: a warm hide")
    assert "Next:" not in " ".join(line.text for line in checked(TOLD).brief)
    assert "Next:" not in " ".join(
        line.text for line in checked(RIGHT.replace("103F", "140F")).brief
    )


@pytest.mark.parametrize(
    ("hangs", "verdict"),
    [
        (" beside the tube", "fine"),
        ("", "cannot tell"),
        (" in a row with the tube", "change"),
        (", uv tube at the other end", "change"),
    ],
)
def test_uv_heat_and_light_have_to_meet(hangs: str, verdict: str) -> None:
    told = RIGHT.replace("24W 12%", "34in 12%").replace("17 in", "18 in") + ", 48x24x24in"
    assert verdicts(checked(told.replace(" beside the tube", hangs)))["Patch of sun"] == verdict


def test_no_patch_of_sun_is_asked_for_where_the_uv_is_wrong_or_no_heat_lamp_is_told() -> None:
    assert "Patch of sun" not in verdicts(checked(RIGHT.replace("17 in", "8 in")))
    assert "Patch of sun" not in verdicts(
        checked(RIGHT.replace("halogen flood beside the tube", ""))
    )


def test_a_newcomers_words_are_judged_part_by_part() -> None:
    reply = checked(TOLD)
    assert verdicts(reply) == {
        "UV": "depends",
        "Basking spot": "fine",
        "Cool end": "cannot tell",
        "Warm to cool": "fine",
        "Hours of light": "cannot tell",
        "Night": "cannot tell",
        "Lamps": "cannot tell",
    }
    assert "what is between tube and animal" in rows(reply, "Missing")
    assert 0 < len(reply.steps) <= 4


def test_every_fact_shows_the_words_it_was_read_from() -> None:
    reply = checked(TOLD)
    for words in ("beardie", "12%", "shiny hood", "on top of the mesh", "14 inches to the log"):
        assert f"from “{words}”" in "; ".join(row.text for row in reply.rows), words


def test_a_share_beside_a_screen_is_shown_as_taken_for_what_it_blocks() -> None:
    unsaid = rows(checked("12% tube, screen 20%"), "Read of the UV")
    assert "which I assumed is what it blocks" in unsaid
    assert "assumed" not in rows(checked("12% tube, screen blocks 20%"), "Read of the UV")


def test_a_correction_replaces_what_was_read() -> None:
    reply = checked(TOLD, distance="16in", screen="none", cool="79F", length="24W")
    assert verdicts(reply)["UV"] == "fine"
    assert verdicts(reply)["Cool end"] == "fine"
    assert "as you corrected it" in rows(reply, "Read of the UV")
    assert "14 inches" not in rows(reply, "Read of the UV")


def test_the_same_set_up_in_the_other_units_gets_the_same_verdicts() -> None:
    inches = checked("beardie 12% polished no screen 18in to his back, basking 104F, cool 77F")
    metric = checked(
        "beardie 12% polished no screen 45.72cm to his back, basking 40C, cool 25C", Units.CM
    )
    assert verdicts(inches) == verdicts(metric)
    for one, other in zip(inches.values, metric.values, strict=True):
        assert (one.name, one.unit) == (other.name, other.unit)
        assert one.best == pytest.approx(other.best, abs=1e-9)


def test_danger_comes_first_and_wrong_lamps_before_fine_tuning() -> None:
    reply = checked("beardie, mercury vapor bulb, red bulb, basking 140F, cool 90F, no uvb")
    assert "box_too_hot" in [alarm.key for alarm in reply.alarms]
    assert "mercury vapour" in reply.steps[0]
    assert verdicts(reply)["Lamps"] == "change"
    assert verdicts(reply)["UV"] == "change"


def test_a_meter_beats_the_model() -> None:
    words = "beardie, 12% polished no screen, 17in to his back, uvi 1.5 on my meter"
    reply = checked(words)
    assert verdicts(reply)["UV"] == "change"
    assert verdicts(checked(words, meter="4")) | {} == verdicts(reply) | {"UV": "fine"}


def test_what_was_not_said_is_tried_both_ways_and_only_agreement_is_a_verdict() -> None:
    far = checked("beardie, 6% tube, 40 inches from the tube to his back")
    assert verdicts(far)["UV"] == "change"
    close_call = checked("beardie, 12% tube, 16 inches from the tube to his back")
    assert verdicts(close_call)["UV"] == "depends"


def test_a_tube_too_near_is_never_fine() -> None:
    reply = checked("leopard gecko, 2% tube, plain fixture, no screen, 4 inches to her back")
    assert verdicts(reply)["UV"] == "change"
    assert "too close" in reply.steps[0]


def test_two_animals_are_said_to_be_unclear_and_one_is_judged() -> None:
    reply = checked("a corn snake and a bearded dragon, basking 98F, cool 78F")
    assert "Which one is it" in rows(reply, "Unclear")
    assert "corn snake" in reply.title
    assert "bearded dragon" in checked("a corn snake", animal="bearded dragon").title


@pytest.mark.parametrize("words", ["", "hello there", "what is love"])
def test_nothing_of_a_set_up_is_asked_for(words: str) -> None:
    reply = checked(words)
    assert reply.status == "problem"
    assert "the animal, the tube" in reply.answer
    assert "check beardie" in reply.steps[0]


@pytest.mark.slow
def test_every_sentence_of_the_collection_that_tells_something_is_checked() -> None:
    for row in sentences(TUNED_ON):
        heard = heard_in(row["text"])
        if not heard.facts and not heard.questions:
            continue
        reply = checked(row["text"])
        assert reply.table is not None
        assert phone_lines(reply.brief) <= MOST_LINES, (row["text"], reply.brief)
        assert "<" not in reply.answer + "".join(row.text for row in reply.rows)


@pytest.mark.parametrize(
    ("told", "head"),
    [
        ("cool 70 to 80", "The cool end is too cool at its low end: 70 °F (21 °C)."),
        ("cool 78-95", "The cool end is too warm at its high end: 95 °F (35 °C)."),
        ("cool 60-65", "The cool end is too cool: 60 to 65 °F (15.5 to 18.5 °C)."),
    ],
)
def test_a_range_is_judged_by_the_end_that_is_off(told: str, head: str) -> None:
    reply = ask(f"check bearded dragon, basking 103, {told}", Preferences())
    assert head in [line.text for line in reply.brief]


def test_a_range_inside_what_is_wanted_is_fine_and_shown_whole() -> None:
    reply = ask("check bearded dragon, basking 100-106", Preferences())
    assert reply.table is not None
    row = next(row for row in reply.table.rows if row[0] == "Basking spot")
    assert row[1:3] == ("fine", "100 to 106 °F (38 to 41 °C)")


def test_temps_takes_a_range_as_well() -> None:
    reply = ask("temps cool:70-80F animal:bearded dragon", Preferences())
    assert "too cool at its low end, 70 °F" in reply.answer


def test_a_warm_place_that_nobody_needs_is_not_called_fine() -> None:
    line = "check setup:crested gecko, 5% tube at 12in, room 72F, basking 78F, cool 72F"
    reply = ask(line, Preferences())
    assert reply.picture is not None
    assert "Basking spot: not needed" in reply.picture.alt


def test_a_tube_longer_than_its_box_is_not_drawn_in_it() -> None:
    line = "check setup:leopard gecko in an 18x18x18in box, {}in 6% tube at 10in, basking 92F"
    long, short = (ask(line.format(inches), Preferences()).picture for inches in (22, 12))
    assert long is not None
    assert short is not None
    assert isinstance(long.drawing, Side)
    assert isinstance(short.drawing, Side)
    assert not long.drawing.tubes
    assert "longer than the box" in long.alt
    assert short.drawing.tubes


@pytest.mark.parametrize("language", LANGUAGES)
def test_too_cool_water_of_a_turtle_is_warmed_before_the_tube_is_looked_up(
    language: Language,
) -> None:
    reply = ask("check slider, water 70F", Preferences(language=language))
    first, second = (line.text for line in reply.brief if line.role is Role.STEP)
    warm = voice(language, Units.IN).text(Say.by("heat-do", Step.WARMER_WATER))
    assert first == warm
    assert second != warm
    assert reply.set_up is not None
    assert reply.set_up.first is not None
