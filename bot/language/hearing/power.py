"""Watts, dimmers, thermostats and thermometers in a sentence."""

from collections.abc import Iterator

from bot.language.hearing.distances import measure_of
from bot.language.hearing.facts import THERE, Ask, Fact, FactName, Standing, Thermometer
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import Scene
from bot.language.hearing.word_lists import word_list
from bot.language.units import Dimension

__all__ = ["controls", "is_dark", "thermometers", "watts"]

_WITHOUT_LIGHT = frozenset(
    ("ceramic", "infrared projector", "radiant panel", "heat mat", "heat rock")
)
# Their watts are no heat that anybody reckons with.
_TUBES = frozenset(("t5", "t5 ho", "t8", "compact"))
# Their watts tell no length of a T5 HO tube.
_OTHER_UV = frozenset(("t8", "compact", "mercury vapour", "metal halide", "led", "uv led"))
_LAMPS = frozenset(("lamp", "tube", "heat"))


def watts(scene: Scene) -> Iterator[Fact | Ask]:
    """Return wattages: of a lamp that shines, or of a heater that does not."""
    for figure in scene.loose("power"):
        if scene.standing(figure) not in THERE:
            continue
        lamp = _lamp_of(scene, figure)
        measure = measure_of(figure, Dimension.POWER)
        if lamp and (lamp.kind == "tube" or lamp.value in _TUBES):
            if measure and _prints_its_length(scene, figure, lamp):
                yield scene.fact(FactName.TUBE_LENGTH, measure, figure)
            continue
        if measure:
            dark = lamp is not None and lamp.value in _WITHOUT_LIGHT
            name = FactName.OTHER_WATTS if dark else FactName.WATTS
            yield scene.fact(name, measure, figure)


def is_dark(scene: Scene, figure: Figure) -> bool:
    """Say whether watts are of what gives no heat by its light: a heater, a tube, a compact."""
    lamp = _lamp_of(scene, figure)
    return lamp is not None and (lamp.kind == "tube" or lamp.value in _WITHOUT_LIGHT | _TUBES)


def _prints_its_length(scene: Scene, figure: Figure, lamp: Mark) -> bool:
    """Say whether watts are those of a T5 HO tube, whose length they tell."""
    clause = scene.marks.within(*scene.clause(figure.start))
    other = any(mark.kind == "lamp" and mark.value in _OTHER_UV for mark in clause)
    watts = {str(side.value) for side in figure.sides}
    return watts <= word_list("tube_watts") and lamp.value not in _OTHER_UV and not other


def _lamp_of(scene: Scene, figure: Figure) -> Mark | None:
    """Return the lamp that a wattage belongs to: the next word, else the one before."""
    start, end = scene.clause(figure.start)
    after = scene.after(figure.end, _LAMPS, end)
    before = scene.before(figure.start, _LAMPS, start)
    between = scene.words(figure.end, after.start) if after else ["no"] * 3
    touches = before is not None and not scene.words(before.end, figure.start)
    if touches and (between or (after and _has_its_own(scene, after))):
        return before
    if after and len(between) <= 2 and "and" not in between:
        return after
    if before and len(scene.words(before.end, figure.start)) <= 3:
        return before
    dark = scene.before(figure.start, _LAMPS, max(scene.sentence(figure.start)[0], start - 30))
    listed = dark is not None and not scene.words(dark.end, figure.start)
    return dark if dark and listed and dark.value in _WITHOUT_LIGHT else None


def _has_its_own(scene: Scene, lamp: Mark) -> bool:
    """Say whether a lamp is followed by its own watts: halogen 50w ceramic 60w."""
    figures = scene.figures.within(lamp.end, lamp.end + 8)
    return any(f.kind == "power" and not scene.words(lamp.end, f.start) for f in figures)


def controls(scene: Scene) -> Iterator[Fact | Ask]:
    """Return dimmers, with their setting where it is said, and thermostats, also a missing one."""
    for mark in scene.of("control"):
        thermostat = mark.value == "thermostat"
        word = scene.denial(mark)
        if thermostat and (scene.absent(mark) or (word and word.value == "other")):
            # "The mat is not on a thermostat" denies it as well as "no thermostat".
            yield scene.fact(FactName.THERMOSTAT, False, word or mark, mark)
            continue
        if scene.standing(mark) not in THERE:
            continue
        if thermostat and scene.standing(mark) is Standing.PLANNED:
            continue
        if thermostat:
            yield scene.fact(FactName.THERMOSTAT, True, mark)
            continue
        lamp = scene.after(mark.end, _LAMPS, mark.end + 16)
        if scene.text[mark.start : mark.end] == "dim" and lamp:
            # A dim red bulb is no dimmer.
            continue
        setting = _setting(scene, mark)
        if setting:
            scene.take(setting)
            yield scene.fact(FactName.DIMMER, float(setting.low / 100), mark, setting)
        else:
            yield scene.fact(FactName.DIMMER, True, mark)


def _setting(scene: Scene, mark: Mark) -> Figure | None:
    _, end = scene.sentence(mark.start)
    for figure in scene.figures.within(mark.end, min(end, mark.end + 40)):
        near = len(scene.words(mark.end, figure.start)) <= 4 and scene.free(figure)
        if near and figure.kind == "percent" and figure.high <= 100:
            return figure
    return None


def thermometers(scene: Scene) -> Iterator[Fact | Ask]:
    """Return what the temperatures were read with."""
    for mark in scene.of("thermometer"):
        if scene.standing(mark) in THERE:
            yield scene.fact(FactName.THERMOMETER, Thermometer(mark.value), mark)
