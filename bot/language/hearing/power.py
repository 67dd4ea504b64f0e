"""Watts, dimmers, thermostats and thermometers in a sentence."""

from collections.abc import Iterator

from bot.language.hearing.distances import measure_of
from bot.language.hearing.facts import Ask, Fact, FactName, Thermometer
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import Scene, Standing
from bot.language.units import Dimension

__all__ = ["controls", "thermometers", "watts"]

_WITHOUT_LIGHT = frozenset(
    ("ceramic", "infrared projector", "radiant panel", "heat mat", "heat rock")
)
# Their watts are no heat that anybody reckons with.
_TUBES = frozenset(("t5", "t5 ho", "t8", "compact"))
_LAMPS = frozenset(("lamp", "tube", "heat"))


def watts(scene: Scene) -> Iterator[Fact | Ask]:
    """Return wattages: of a lamp that shines, or of a heater that does not."""
    for figure in scene.loose("power"):
        if scene.standing(figure) in (Standing.WISH, Standing.ASKED, Standing.NOT):
            continue
        lamp = _lamp_of(scene, figure)
        if lamp and (lamp.kind == "tube" or lamp.value in _TUBES):
            continue
        measure = measure_of(figure, Dimension.POWER)
        if measure:
            dark = lamp is not None and lamp.value in _WITHOUT_LIGHT
            name = FactName.OTHER_WATTS if dark else FactName.WATTS
            yield scene.fact(name, measure, figure)


def _lamp_of(scene: Scene, figure: Figure) -> Mark | None:
    """Return the lamp that a wattage belongs to: the next word, else the one before."""
    start, end = scene.clause(figure.start)
    after = scene.after(figure.end, _LAMPS, end)
    if after and len(scene.words(figure.end, after.start)) <= 2:
        return after
    before = scene.before(figure.start, _LAMPS, start)
    if before and len(scene.words(before.end, figure.start)) <= 3:
        return before
    return None


def controls(scene: Scene) -> Iterator[Fact | Ask]:
    """Return dimmers, with their setting where it is said, and thermostats, also a missing one."""
    for mark in scene.of("control"):
        thermostat = mark.value == "thermostat"
        if thermostat and scene.absent(mark):
            denial = scene.denial(mark) or mark
            # "He had a mat with no thermostat" tells of another keeper.
            if denial is mark or scene.standing(denial) is Standing.HAVE:
                yield scene.fact(FactName.THERMOSTAT, False, denial, mark)
            continue
        if scene.standing(mark) in (Standing.WISH, Standing.ASKED, Standing.NOT):
            continue
        if thermostat:
            yield scene.fact(FactName.THERMOSTAT, True, mark)
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
        if scene.standing(mark) in (Standing.HAVE, Standing.INTENT):
            yield scene.fact(FactName.THERMOMETER, Thermometer(mark.value), mark)
