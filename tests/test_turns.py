"""A whole run takes slow tests and long lists of cases by turns, and loses none of them."""

import pytest

from tests.turns import ALWAYS, Case, in_turn, now, turns

LONG = [Case(f"tests/a.py::long[{n}]", "tests/a.py::long", False) for n in range(100)]
SLOW = [Case(f"tests/b.py::slow{n}", f"tests/b.py::slow{n}", True) for n in range(10)]
SHORT = [Case(f"tests/c.py::short[{n}]", "tests/c.py::short", False) for n in range(4)]
KEPT = [Case(f"{place}x[{n}]", f"{place}x", False) for place in ALWAYS for n in range(30)]
CASES = [*LONG, *SLOW, *SHORT, *KEPT]


def test_every_case_has_its_turn_and_none_has_two() -> None:
    groups = turns(CASES)
    tried = [in_turn(groups, turn)[0] for turn in range(12)]
    for some, names in ((LONG, 6), (SLOW, 4)):
        of = {case.name for case in some}
        one_round = [of & each for each in tried[:names]]
        assert set().union(*one_round) == of
        assert sum(map(len, one_round)) == len(of)
        assert max(map(len, one_round)) - min(map(len, one_round)) <= names


@pytest.mark.parametrize("turn", [0, 1, 4823])
def test_what_takes_no_turns_is_never_left_out(turn: int) -> None:
    tried, left = in_turn(turns(CASES), turn)
    assert not (tried | left) & {case.name for case in (*SHORT, *KEPT)}
    assert tried | left == {case.name for case in (*LONG, *SLOW)}
    assert not tried & left


def test_the_turn_is_told_or_that_of_the_checkout(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("NOONSTONE_TEST_TURN", "7")
    assert now() == 7
    monkeypatch.delenv("NOONSTONE_TEST_TURN")
    assert now() == now() >= 0
