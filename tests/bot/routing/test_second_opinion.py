"""What was learned of free questions: from which sentences, and where it may speak."""

from importlib.resources import as_file, files

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot import guide
from bot.preferences import Preferences
from bot.queries.setup import AskQuery
from bot.question_context import context_of
from bot.routes.asked import Asked
from bot.routes.filled import is_asked_freely
from bot.routes.learned import meant
from bot.routes.routing import asked_in
from bot.routes.second import OFF, Opinion, likely_of, sure_of
from tests.bot.routing.training import digest, ordinary, sentences


def _asked(text: str) -> Asked:
    query = AskQuery(question=text)
    return asked_in(query, context_of(query, {"question": text}, Preferences()))


def test_the_model_was_made_from_the_sentences_that_are_here() -> None:
    with as_file(files("bot.routes") / "learned.npz") as path, np.load(path) as kept:
        assert str(kept["digest"]) == digest()


def test_ordinary_words_are_those_of_the_sentences_that_are_here() -> None:
    assert (files("bot.routes") / "ordinary.txt").read_text(encoding="ascii") == ordinary()


@pytest.mark.parametrize("label", sorted({label for _, label in sentences()}))
def test_every_label_is_a_question_or_a_part_of_a_page(label: str) -> None:
    kind, _, rest = label.partition(":")
    if kind == "g":
        slug, _, part = rest.partition("/")
        headings = [heading for heading, _ in guide.sections(guide.page(slug))]
        assert not part or part in headings
    elif kind == "q":
        name = rest.partition(" ")[0]
        assert name in (OFF, "vet") or is_asked_freely(name)
    else:
        assert label in {"t:thanks", "t:why", "t:again", "t:simpler", "t:no idea"}


@given(st.text(max_size=80))
def test_the_chances_of_any_text_are_chances_the_likeliest_first(text: str) -> None:
    if not text.strip():
        return
    chances = [one.chance for one in meant(_asked(text))]
    assert chances == sorted(chances, reverse=True)
    assert all(0.0 <= chance <= 1.0 for chance in chances)
    assert sum(chances) <= 1.0 + 1e-6


def test_it_says_nothing_of_readings_in_several_places_and_of_long_messages() -> None:
    assert sure_of(_asked("basking 98F and cool 72F for my leopard gecko"), None) is None
    assert sure_of(_asked("how far should the tube hang " * 8), None) is None


def test_a_few_words_are_never_called_another_matter() -> None:
    assert sure_of(_asked("nice pic lol"), None) != Opinion(OFF)
    assert Opinion(OFF) not in likely_of(_asked("how many crickets does a baby eat every day"))
    assert sure_of(_asked("how many crickets does a baby eat every day"), None) == Opinion(OFF)


def test_what_a_rule_says_stands_where_it_is_likely_too() -> None:
    asked = _asked("how high do i hang a 12% over my beardie")
    assert sure_of(asked, Opinion("distance")) is None


def test_what_was_told_of_heat_or_of_a_tube_goes_to_a_question_that_judges_it() -> None:
    told = _asked("75W halogen 12in above, basking 120F for a beardie, which bulb instead")
    found = sure_of(told, None)
    assert found is None or found.name in ("basking", "temps", "check")
    placed = _asked("12% tube 4 inches over my gecko, how do i clean it")
    found = sure_of(placed, None)
    assert found is None or found.name in ("uvi", "distance", "check")
