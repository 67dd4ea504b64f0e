"""Figures with units alone are not listened to: whole listening hears nothing in them either."""

from hypothesis import given, settings
from hypothesis import strategies as st

from bot import dangers
from bot.dangers.listening import listen as heard
from tests.some import some

WORDS = st.sampled_from(sorted(dangers.__dict__["_TELL_NOTHING"]))
FIGURES = st.one_of(
    st.integers(0, 500).map(str), st.sampled_from(["12%", "4x2x2", "0.011", "-5", '14"', "103°"])
)


@settings(max_examples=some(300), deadline=None)
@given(st.lists(st.tuples(FIGURES, WORDS).map(" ".join), min_size=1, max_size=2))
def test_what_is_skipped_would_tell_nothing(parts: list[str]) -> None:
    assert dangers.listen(" ".join(parts)) == ()
    assert heard(" ".join(parts)) == ()


def test_a_word_beside_figures_is_listened_to() -> None:
    assert [alarm.key for alarm in dangers.listen("14 in, and the plug is melting")] == ["fire"]
    assert dangers.listen("glass, 4x2 ft, the tube shines through it")
