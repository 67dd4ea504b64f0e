"""A line taken apart into its command and options, with nothing lost."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.words import join_line, split_line
from tests.bot.refusing import refused, sentence

OPTIONS = {
    "tube": "12%",
    "reflector": "polished",
    "animal": "bearded dragon",
    "distance": "14in",
    "tube_length": "46in",
}


@pytest.mark.parametrize(
    ("line", "given"),
    [
        ("distance", {}),
        ("/distance tube:12%", {"tube": "12%"}),
        ("distance tube=12%", {"tube": "12%"}),
        ("  Distance   TUBE: 12 % ", {"tube": "12 %"}),
        ("distance animal:bearded dragon tube:12%", {"animal": "bearded dragon", "tube": "12%"}),
        ('distance animal:"bearded dragon"', {"animal": "bearded dragon"}),
        ("distance animal:“bearded dragon” tube:6", {"animal": "bearded dragon", "tube": "6"}),
        ("distance animal:'tube: a pet' tube:6", {"animal": "tube: a pet", "tube": "6"}),
        ('distance distance:14" tube:6', {"distance": '14"', "tube": "6"}),
        ("distance distance:1'2\" tube:6", {"distance": "1'2\"", "tube": "6"}),
        ("distance animal:ratio 1:2 of it", {"animal": "ratio 1:2 of it"}),
        ("distance animal:see http://a.b/c tube:6", {"animal": "see http://a.b/c", "tube": "6"}),
        ("distance tube:12% reflector: polished", {"tube": "12%", "reflector": "polished"}),
        ("distance tube_length:46in", {"tube_length": "46in"}),
        ("distance tube-length:46in", {"tube_length": "46in"}),
        ("distance tube length:46in tube:12%", {"tube_length": "46in", "tube": "12%"}),
        (
            "distance\ntube:12%\nanimal:bearded\ndragon",
            {"tube": "12%", "animal": "bearded\ndragon"},
        ),
    ],
)
def test_a_line_is_taken_apart(line: str, given: dict[str, str]) -> None:
    assert split_line(line, OPTIONS) == ("distance", given)


@pytest.mark.parametrize(
    ("line", "named"),
    [
        ("distance tueb:12%", "did you mean tube"),
        ("distance tube:12% refelctor:polished", "did you mean reflector"),
        ("distance tube:12% anything else note:x", "note:"),
        ("distance polished tube:12%", "polished"),
        ('distance animal:"bearded dragon" polished tube:12%', "polished"),
        ('distance animal:"bearded dragon" tueb:12%', "did you mean tube"),
        ("distance 12%", "12%"),
        ("distance tube:12% tube:6%", "given twice"),
        ("distance tube:12% TUBE=6%", "given twice"),
        ("distance tube:", "a value after tube:"),
        ("distance tube: animal:bearded dragon", "a value after tube:"),
        ('distance tube:""', "a value after tube:"),
        ("", "a question"),
        (" / ", "a question"),
        ("distance " + "x" * 2000, "2000 characters"),
    ],
)
def test_what_is_wrong_is_named(line: str, named: str) -> None:
    with pytest.raises(NotUnderstoodError) as caught:
        split_line(line, OPTIONS)
    assert named in sentence(caught.value)


def test_a_command_without_options_takes_nothing_more() -> None:
    assert split_line("about", ()) == ("about", {})
    with pytest.raises(NotUnderstoodError):
        split_line("about you", ())


def test_free_words_keep_their_colons_until_a_known_name() -> None:
    line = "check hi: my beardie has a 12%, note: over mesh distance:16in"
    assert split_line(line, OPTIONS, free="text") == (
        "check",
        {"text": "hi: my beardie has a 12%, note: over mesh", "distance": "16in"},
    )
    assert split_line("check distance:16in", OPTIONS, free="text") == (
        "check",
        {"distance": "16in"},
    )
    with refused("did you mean tube"):
        split_line("check hello distance:16in tueb:12%", OPTIONS, free="text")


VALUES = st.text(alphabet="abc 0123456789.%'/½-", min_size=1, max_size=20).filter(
    lambda text: text.strip() == text and "  " not in text and text[0] not in "'"
)


@given(st.dictionaries(st.sampled_from(sorted(OPTIONS)), VALUES), st.sampled_from(":="))
def test_what_is_put_together_comes_apart_again(given: dict[str, str], sign: str) -> None:
    line = " ".join(["distance", *(f"{name}{sign}{value}" for name, value in given.items())])
    assert split_line(line, OPTIONS) == ("distance", given)


@given(st.dictionaries(st.sampled_from(sorted(OPTIONS)), VALUES, min_size=1))
def test_quotes_around_a_value_change_nothing(given: dict[str, str]) -> None:
    quoted = " ".join(f"{name}:“{value}”" for name, value in given.items())
    assert split_line(f"distance {quoted}", OPTIONS) == ("distance", given)


@pytest.mark.parametrize(
    ("word", "meant"),
    [
        ("bearded dargon", "bearded dragon"),
        ("beared dragon", "bearded dragon"),
        ("Bearded-Dragon", "bearded dragon"),
        ("leopard geko", "leopard gecko"),
        ("cornsnake", "corn snake"),
        ("zzz", None),
        ("", None),
        ("x" * 10_000, None),
    ],
)
def test_a_misspelt_name_gets_the_likely_one(word: str, meant: str | None) -> None:
    assert closest(word, ("bearded dragon", "leopard gecko", "corn snake", "ball python")) == meant


def test_free_words_keep_known_names_that_a_space_follows() -> None:
    told = "Tube: 12%\nReflector: polished, distance: 38cm to the log"
    assert split_line(f"check {told}", OPTIONS, free="text") == ("check", {"text": told})
    assert split_line(f"check {told} distance:16in", OPTIONS, free="text") == (
        "check",
        {"text": told, "distance": "16in"},
    )
    assert split_line("convert value: 14in", ["value"], free="value") == (
        "convert",
        {"value": "14in"},
    )


ANY_VALUES = st.text(max_size=60).map(lambda text: " ".join(text.split()))


@given(st.dictionaries(st.sampled_from(sorted(OPTIONS)), ANY_VALUES.filter(bool)))
def test_a_joined_line_comes_apart_into_the_same_options(given: dict[str, str]) -> None:
    marks = "“”\"«»‘’„'"
    if any(sum(mark in text for mark in marks) for text in given.values()):
        return
    assert split_line(join_line("distance", given), OPTIONS) == ("distance", given)


def test_a_joined_line_keeps_quotes_and_lines_of_free_words() -> None:
    told = "Tube: 12%\nhe said “ok”, 14” to his back"
    line = join_line("check", {"text": told, "distance": "16in"})
    assert split_line(line, (*OPTIONS, "text"), free="text") == (
        "check",
        {"text": told, "distance": "16in"},
    )
