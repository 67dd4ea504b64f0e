"""Counts as weeks and totals: every sum agrees, no week is left out, nothing is invented."""

from collections import Counter
from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from bot.questions.saved.weekly import LEAST_POINTED, OPENED_ONCE_IN, Passed, passed_by, tallied
from bot.saved.counts import Asked, Count, monday_of, week_of

TODAY = date(2026, 5, 6)
NAMES = ("distance", "uvi", "screens", "reflectors", "bearded-dragon")
PAGES_OF = {"distance": ("screens", "reflectors"), "uvi": ("screens",)}

counts = st.lists(
    st.builds(
        lambda back, kind, name, times: Count(
            week=week_of(TODAY - timedelta(weeks=back)), kind=kind, name=name, times=times
        ),
        st.integers(0, 110),
        st.sampled_from(Asked),
        st.sampled_from(NAMES),
        st.integers(1, 500),
    ),
    max_size=40,
)


def asked(name: str, times: int, kind: Asked = Asked.QUESTION, day: date = TODAY) -> Count:
    return Count(week=week_of(day), kind=kind, name=name, times=times)


@given(counts)
def test_the_weeks_of_each_kind_add_up_to_its_total_and_to_its_names(found: list[Count]) -> None:
    told = tallied(found, TODAY)
    given_ = Counter[Asked]()
    for count in found:
        given_[count.kind] += count.times
    for kind in Asked:
        assert sum(week.times[kind] for week in told.weeks) == told.total(kind) == given_[kind]
        assert sum(times for _, times in told.names[kind]) == given_[kind]


@given(counts)
def test_weeks_follow_each_other_from_the_first_one_counted_to_this_one(
    found: list[Count],
) -> None:
    weeks = tallied(found, TODAY).weeks
    if not found:
        assert weeks == ()
        return
    assert weeks[0].monday == min(monday_of(count.week) for count in found)
    assert weeks[-1].monday == date(2026, 5, 4)
    for number, week in enumerate(weeks):
        assert week.monday == weeks[0].monday + timedelta(weeks=number)
        assert week.over == (week is not weeks[-1])


@given(counts)
def test_the_order_in_which_counts_come_changes_nothing(found: list[Count]) -> None:
    turned = sorted(found, key=lambda count: (count.times, count.name), reverse=True)
    assert tallied(turned, TODAY) == tallied(found, TODAY)


@given(st.dates(date(2020, 1, 1), date(2035, 1, 1)))
def test_a_week_is_named_by_the_monday_before_its_days(day: date) -> None:
    monday = monday_of(week_of(day))
    assert monday.weekday() == 0
    assert timedelta() <= day - monday < timedelta(weeks=1)


def test_names_stand_the_most_frequent_first_and_alike_by_the_alphabet() -> None:
    found = tallied([asked("uvi", 2), asked("night", 2), asked("distance", 3)], TODAY)
    assert found.names[Asked.QUESTION] == (("distance", 3), ("night", 2), ("uvi", 2))


def test_a_week_counted_by_a_clock_that_is_ahead_is_not_lost() -> None:
    ahead = TODAY + timedelta(weeks=1)
    weeks = tallied([asked("uvi", 2), asked("uvi", 3, day=ahead)], TODAY).weeks
    assert [week.times[Asked.QUESTION] for week in weeks] == [2, 3]
    assert [week.over for week in weeks] == [False, False]


def test_a_page_often_pointed_to_and_hardly_opened_is_found_with_the_questions() -> None:
    found = tallied(
        [asked("distance", 30), asked("uvi", 10), asked("screens", 4, Asked.PAGE)], TODAY
    )
    assert passed_by(found, PAGES_OF) == (
        Passed("screens", pointed=40, opened=4, by=(("distance", 30), ("uvi", 10))),
        Passed("reflectors", pointed=30, opened=0, by=(("distance", 30),)),
    )


@given(counts)
def test_no_page_is_called_overlooked_that_is_not(found: list[Count]) -> None:
    told = tallied(found, TODAY)
    asked_, opened = (dict(told.names[kind]) for kind in (Asked.QUESTION, Asked.PAGE))
    overlooked = {page.page: page for page in passed_by(told, PAGES_OF)}
    for page in ("screens", "reflectors"):
        pointed = sum(asked_.get(name, 0) for name, pages in PAGES_OF.items() if page in pages)
        few = pointed < LEAST_POINTED
        read = opened.get(page, 0) * OPENED_ONCE_IN > pointed
        assert (page in overlooked) == (not few and not read)
        if page in overlooked:
            assert (overlooked[page].pointed, overlooked[page].opened) == (
                pointed,
                opened.get(page, 0),
            )
