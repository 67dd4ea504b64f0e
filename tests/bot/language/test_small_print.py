"""Small print of the readers: zones kept, today known, messages whole."""

from datetime import UTC, date, datetime, timedelta, timezone

import pytest

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.moments import read_moment
from bot.language.names import ranked
from bot.language.normal import normal, normalise
from bot.language.quantities import (
    Units,
    read_convertible,
    read_length,
    read_number_range,
    read_surface_temperature,
    single,
)
from bot.language.readings import read_dated_readings, read_placed_readings, read_uvi_range
from bot.language.screens import read_screen, weaves_in
from bot.language.shown import shown
from bot.language.sizes import read_size
from bot.language.skies import read_latitude, read_month
from bot.language.unsure import SomeMesh, read_some_mesh
from bot.language.words import join_line, split_line
from bot.language.zones import read_clock
from tests.bot.refusing import accepted, refused, sentence

FAR_EAST = timezone(timedelta(hours=11))
OPTIONS = {"tube": "12%", "screen": "45%"}


def test_a_time_from_now_is_told_in_the_askers_zone() -> None:
    now = datetime(2026, 5, 4, 12, tzinfo=FAR_EAST)
    for words, hours in (("in 3 hours", 3), ("in 2 days", 48)):
        moment = read_moment(words, now)
        assert moment.tzinfo is FAR_EAST
        assert moment == datetime(2026, 5, 4, 1, tzinfo=UTC) + timedelta(hours=hours)


def test_today_and_yesterday_are_days_of_readings_where_the_day_is_known() -> None:
    found = read_dated_readings("4.2 today, yesterday 4.4", date(2026, 5, 4))
    assert [(r.day.day, r.value) for r in found] == [(3, 4.4), (4, 4.2)]
    with pytest.raises(NotUnderstoodError):
        read_dated_readings("4.2 today")


def test_a_share_over_a_hundred_per_cent_is_refused() -> None:
    for text in ("101%", "100.5%", "passes 101%"):
        with refused("a share from 0% to 100%"):
            read_screen(text)


def test_a_range_of_numbers_begins_at_nothing_and_not_below() -> None:
    assert read_number_range("0-1") == (0.0, 1.0)
    assert read_number_range("0.5") == (0.5, 0.5)
    with pytest.raises(NotUnderstoodError):
        read_number_range("-1 to 3")


def test_a_weave_inside_another_number_is_none() -> None:
    found = [weave for weave, _, _ in weaves_in("18x16 0.011in")]
    assert len(found) == 1
    for text in ("118x16 0.011in", "a18x16 0.011in"):
        assert all(weave.text != "18x16 0.011in" for weave, _, _ in weaves_in(text))


def test_what_is_refused_is_told_with_what_would_do() -> None:
    for read, text, wanted in (
        (lambda t: single(read_length(t)), "10-12in", "one value and not a range"),
        (read_latitude, "-40S", "either a minus or north or south"),
        (lambda t: split_line(t, OPTIONS), "distance tube:1 tube:2", "tube once"),
        (lambda t: split_line(t, {}), "about x:1", "nothing more here"),
    ):
        with pytest.raises(NotUnderstoodError) as caught:
            read(text)
        assert wanted in sentence(caught.value)


def test_an_option_is_named_where_it_is_known() -> None:
    error = NotUnderstoodError("x", Say("wanted-number"), "4", "uvi")
    assert error.option == "uvi"
    assert sentence(error) == "I read “x” for uvi. I need a number, for example 4."
    assert sentence(NotUnderstoodError(" ", Say("wanted-number"), "4")).startswith(
        "I read nothing. I need"
    )


def test_a_long_text_is_cut_at_its_end() -> None:
    cut = shown(f"  {'ab ' * 30}")
    assert cut.startswith("ab ab")
    assert cut.endswith("ab…")
    assert len(cut) <= 40


def test_a_list_of_suggestions_is_as_long_as_asked_for() -> None:
    names = [f"screen {n}" for n in range(40)]
    assert len(ranked("screen", names, 25)) == 25
    assert len(ranked("screen", names, 3)) == 3


def test_months_by_name_and_number() -> None:
    assert [read_month(text) for text in ("jan", "DECEMBER", "6", "Sept")] == [1, 12, 6, 9]


def test_the_unit_of_the_last_side_serves_those_without_one() -> None:
    size = read_size("1.2m x 60 x 60cm")
    assert (size.length_m, size.depth_m, size.height_m) == (1.2, 0.6, 0.6)
    assert read_size("48 x 24in x 60cm").length_m == pytest.approx(0.48)


def test_the_hours_of_both_halves_of_the_day() -> None:
    told = ["12 am", "1 am", "11:59 am", "12 pm", "1 pm", "11 pm"]
    assert [read_clock(text).hour for text in told] == [0, 1, 11, 12, 13, 23]
    for text in ("0 pm", "13 am", "24:00"):
        with pytest.raises(NotUnderstoodError):
            read_clock(text)


def test_a_number_after_feet_needs_its_unit_unless_the_sign_touches_it() -> None:
    assert read_length("1'2").low == pytest.approx(14 * 0.0254)
    for text in ("1 ft 2", "1ft2", "1' 2 3"):
        with pytest.raises(NotUnderstoodError):
            read_length(text)


def test_quotes_of_every_kind_hold_a_value_together() -> None:
    for line in ('a animal:"corn snake"', "a animal:“corn snake”", "a animal:‘corn snake’"):
        assert split_line(line, {"animal": "x"})[1] == {"animal": "corn snake"}


def test_a_wire_as_thick_as_its_step_is_no_weave() -> None:
    with refused("a wire thinner than the step"):
        read_screen("10x10 0.1in")
    assert read_screen("10x10 0.099in")


def test_a_reading_keeps_its_words() -> None:
    assert [r.text for r in read_placed_readings("4.2 at 12 in; 12cm: 2,9")] == [
        "4.2 at 12 in",
        "12cm: 2,9",
    ]


def test_a_line_has_quotes_only_where_they_are_needed() -> None:
    for text, written in (
        ("12%", "12%"),
        ("18x16 mesh", "18x16 mesh"),
        ("a: b", "“a: b”"),
        ("“12%”", "«“12%”»"),
    ):
        assert join_line("distance", {"tube": text}) == f"distance tube:{written}"
        assert split_line(f"distance tube:{written}", OPTIONS)[1] == {"tube": text}


def test_a_misspelt_option_is_answered_with_an_example_of_the_one_meant() -> None:
    with pytest.raises(NotUnderstoodError) as caught:
        split_line("distance scren:45%", OPTIONS)
    assert caught.value.example == "screen:45%"
    with pytest.raises(NotUnderstoodError) as caught:
        split_line("distance scren:45%", ["tube", "screen"])
    assert caught.value.example == "screen:…"


def test_a_reading_of_another_meter_is_told_what_a_uv_index_is_not() -> None:
    for read, text in (
        (read_placed_readings, "42 µW/cm² at 12 in"),
        (read_dated_readings, "2026-01-03 42 µW/cm²"),
        (read_uvi_range, "42 µW/cm²"),
    ):
        with pytest.raises(NotUnderstoodError) as caught:
            read(text)
        assert "another kind of meter" in accepted(caught.value)
        assert read(caught.value.example)


def test_the_longest_list_of_readings_is_read_and_a_longer_one_is_not() -> None:
    piece = "4.2 at 12 in"
    longest = f"{piece};{' ' * (999 - 2 * len(piece))}{piece}"
    assert len(longest) == 1000
    assert len(read_placed_readings(longest)) == 2
    with refused("at most 1000 characters"):
        read_placed_readings(f"{longest} ")


def test_a_mesh_that_is_only_named_is_told_in_the_words_used() -> None:
    assert read_some_mesh("  mesh   lid ") == SomeMesh("mesh lid")


def test_a_long_text_is_shown_with_forty_characters() -> None:
    assert shown("a" * 40) == "a" * 40
    assert shown("a" * 41) == "a" * 39 + "…"


def test_a_bare_number_is_asked_for_its_unit_in_that_number_and_a_range_by_an_example() -> None:
    for text, example in (("13", "13in"), ("12-13", "14in")):
        with pytest.raises(NotUnderstoodError) as caught:
            read_length(text)
        assert caught.value.example == example


def test_no_range_and_no_light_are_named() -> None:
    with pytest.raises(NotUnderstoodError) as caught:
        read_number_range("many")
    assert accepted(caught.value) == "a number or a range"
    for text in ("passes 0%", "blocks 100%"):
        with pytest.raises(NotUnderstoodError) as caught:
            read_screen(text)
        assert accepted(caught.value) == "a screen that lets something through"


def test_a_difference_without_a_unit_is_one_of_the_askers_degrees() -> None:
    assert read_convertible("difference 9", Units.IN).low == pytest.approx(5.0)
    assert read_convertible("difference 9", Units.CM).low == pytest.approx(9.0)


@pytest.mark.parametrize(
    ("text", "unit"), [("44", "degC"), ("44.5", None), ("65.5", None), ("66", "degF")]
)
def test_a_bare_surface_tells_its_unit_only_where_the_other_cannot_be(
    text: str, unit: str | None
) -> None:
    if unit is None:
        with pytest.raises(NotUnderstoodError):
            read_surface_temperature(text)
    else:
        assert read_surface_temperature(text).unit == unit


def test_names_are_offered_by_their_beginning_then_by_what_they_hold_then_by_likeness() -> None:
    known = ["Corn Snake", "Bearded Dragon", "Snapping Turtle", "Water Dragon", "Dragon Lizard"]
    assert ranked("", known, 3) == known[:3]
    assert ranked("drag", known, 5)[:3] == ["Dragon Lizard", "Bearded Dragon", "Water Dragon"]
    assert ranked("DRAG", known, 1) == ["Dragon Lizard"]
    assert ranked("corm snaek", known, 5)[0] == "Corn Snake"
    assert ranked("zzzz", known, 5) == []


def test_each_place_of_a_folded_text_leads_back_to_what_was_typed() -> None:
    typed = "１４½\u200b in…"
    folded = normal(typed)
    assert folded.text == "14 1/2 in..."
    for place in range(len(folded.text)):
        assert folded.span(place, place)[0] == folded.span(place, place)[1]
        first, last = folded.span(place, place + 1)
        assert normalise(typed[first:last]).find(folded.text[place]) >= 0
    assert folded.span(0, len(folded.text)) == (0, len(typed))
    assert folded.span(2, 6) == (2, 3)
