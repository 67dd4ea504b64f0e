"""Allowances: nobody gets more than their share, waiting as told is enough, memory is bounded."""

from hypothesis import given
from hypothesis import strategies as st

from bot.serving.allowance import Allowance, take_together


class Clock:
    """A clock that is set by hand."""

    now = 0.0

    def __call__(self) -> float:
        return self.now


@given(st.integers(1, 100), st.lists(st.floats(0, 100), max_size=60))
def test_nobody_ever_gets_more_than_their_share(per_minute: int, pauses: list[float]) -> None:
    clock = Clock()
    allowance = Allowance(per_minute, clock)
    taken = 0
    for pause in pauses:
        clock.now += pause
        wait = allowance.take("a")
        taken += wait == 0
        assert taken <= per_minute + clock.now * per_minute / 60 + 1e-6
        assert 0 <= wait <= 60 / per_minute
    assert allowance.take("b") == 0


@given(st.integers(1, 1000), st.floats(0, 1e6))
def test_waiting_as_long_as_told_is_enough(per_minute: int, start: float) -> None:
    clock = Clock()
    clock.now = start
    allowance = Allowance(per_minute, clock)
    waits = [allowance.take("a") for _ in range(per_minute + 1)]
    assert waits[:-1] == [0] * per_minute
    assert waits[-1] > 0
    clock.now += waits[-1]
    assert allowance.take("a") == 0


def test_looking_takes_nothing() -> None:
    allowance = Allowance(1, Clock())
    assert allowance.wait("a") == 0
    assert allowance.take("a") == 0
    assert allowance.wait("a") == allowance.wait("a") == 60


def test_who_asked_longest_ago_is_forgotten_first() -> None:
    allowance = Allowance(1, Clock(), most_keys=1000)
    assert allowance.take("first") == 0
    for number in range(999):
        assert allowance.take(number) == 0
    assert allowance.take("first") > 0
    for number in range(1000, 2000):
        allowance.take(number)
    assert allowance.take("first") == 0


def test_what_is_refused_by_one_claim_is_not_taken_from_the_other() -> None:
    clock = Clock()
    person, server = Allowance(5, clock), Allowance(2, clock)
    assert [take_together((person, "fern"), (server, "garden")) for _ in range(2)] == [0, 0]
    for _ in range(10):
        assert take_together((person, "fern"), (server, "garden")) == 30
    assert [take_together((person, "fern"), (server, "woods")) for _ in range(2)] == [0, 0]
    assert take_together((person, "fern")) == 0
    assert take_together((person, "fern")) == 12
    assert take_together() == 0
