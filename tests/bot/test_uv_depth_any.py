"""Whatever figures are typed, the deeper UV questions answer or say why not."""

from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.ask import ask
from bot.language.quantities import Units
from bot.preferences import Preferences
from tests.some import some

numbers = st.one_of(
    st.floats(0.0, 200.0).map(lambda x: f"{x:.4g}" if x >= 1e-3 else "0"),
    st.integers(0, 10_000).map(str),
)
units = st.sampled_from(["in", "cm", "ft", "m", "mm", ""])
lengths = st.builds(lambda number, unit: f"{number}{unit}", numbers, units)
days = st.dates().map(lambda day: day.isoformat())
readings = st.lists(st.builds(lambda u, d: f"{u} at {d}", numbers, lengths), max_size=5).map(
    ", ".join
)
dated = st.lists(st.builds(lambda u, d: f"{d} {u}", numbers, days), max_size=5).map(", ".join)
screens = st.sampled_from(["none", "45%", "passes 1%", "18x16 0.011in", "100%", "0%"])
sizes = st.builds(lambda a, b, c, unit: f"{a}x{b}x{c} {unit}", numbers, numbers, numbers, units)
anything = st.text(max_size=40)
METRIC = Preferences(units=Units.CM)


def _line(name: str) -> Callable[..., str]:
    def joined(**options: str) -> str:
        return " ".join([name, *(f"{key}:{text}" for key, text in options.items() if text)])

    return joined


lines = st.one_of(
    st.builds(
        _line("meter"),
        readings=readings | anything,
        without=st.just("") | readings,
        screen=screens,
        uvi=numbers,
        distance=st.just("") | lengths,
        length=st.just("") | lengths,
    ),
    st.builds(_line("decline"), readings=dated | anything, uvi=numbers, age=st.just("") | anything),
    st.builds(
        _line("section"),
        tube=st.sampled_from(["12%", "6%", "1%", "20%"]),
        reflector=st.just("plain"),
        screen=screens,
        distance=lengths,
        enclosure=sizes | anything,
        uvi=numbers,
        length=st.just("") | lengths,
        platform=st.just("") | lengths,
        back=st.just("") | lengths,
        heat=st.just("") | lengths,
        patch=st.just("") | lengths,
        start=st.just("") | lengths,
        tubes=st.sampled_from(["", "1", "4", "0", "x"]),
    ),
    st.builds(
        _line("dose"),
        uvi=numbers | anything,
        hours=numbers | anything,
        distance=st.just("") | lengths,
        length=st.just("") | lengths,
        latitude=st.just("") | numbers | anything,
        month=st.just("") | numbers | anything,
    ),
)


@pytest.mark.slow
@given(lines)
@settings(max_examples=some(300), deadline=None)
def test_it_answers_or_says_why_not(line: str) -> None:
    reply = ask(line, METRIC)
    assert reply.status in ("ok", "problem")
    assert reply.answer
    for value in reply.values:
        assert value.low <= value.best <= value.high


@given(
    st.floats(0.05, 20.0),
    st.floats(10.0, 120.0),
    st.floats(1.0, 4.0),
    st.floats(0.3, 3.0),
    st.floats(5.0, 60.0),
)
@settings(max_examples=some(80), deadline=None)
def test_sensible_figures_are_answered_or_refused_without_a_crash(
    uvi: float, distance: float, ratio: float, long: float, near: float
) -> None:
    second = f"{uvi / ratio:.2f}"
    wanted = f"uvi:1-{1 + ratio:.2f}"
    box = f"{long:.2f}x{long / 2:.2f}x{long / 2:.2f} m"
    tube = "tube:12% reflector:polished screen:18x16 0.011in"
    placed = f"{uvi:.2f} at {distance:.1f}cm, {second} at {distance * ratio:.1f}cm"
    asked = [
        f"meter readings:{placed} {wanted}",
        f"section {tube} distance:{near:.1f}cm enclosure:{box} {wanted}",
        f"decline readings:2026-01-03 {uvi:.2f}, 2026-02-03 {second}, 2026-05-03 {uvi:.2f} uvi:1-2",
    ]
    for line in asked:
        assert ask(line, METRIC).status in ("ok", "problem")
