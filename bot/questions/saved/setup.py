"""What a kept set-up is told as, and the question that it can be asked about.

Words: ``words/<language>/home.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from enum import Enum, auto

from bot.facts import Length, Name, Say, Share, metres, share
from bot.language.uv_lamps import UvLamp
from bot.language.words import join_line
from bot.layered import Row
from bot.questions.shared import name_of
from bot.questions.uv.shared import Between, Net
from bot.saved.keeper import KeptScreen, Setup
from calc.animals import animal_name
from calc.uv.lamp import Fixture
from calc.uv.screen import Weave, open_area
from calc.validity import OutsideModelError

__all__ = ["SetupTold", "question_of", "setup_rows", "setup_told"]

_INCH_M = 0.0254
# What a row is called, and the fact without which there is none.
_ROWS = {
    "animal": "animal",
    "lamp": "lamp",
    "fixture": "reflector",
    "long": "tube_length",
    "since": "since",
    "tubes": "tubes",
    "screen": "screen",
    "lid": "lid",
    "distance": "distance",
    "size": "length",
}


class Pane(Enum):
    """What stops all UVB."""

    GLASS = auto()
    PLASTIC = auto()


@dataclass(frozen=True, slots=True)
class SetupTold:
    """A set-up as far as it was told; None is not told.

    ``is_t5``: the lamp is a T5 HO tube, whose strength is a class; of others it is a label.
    """

    animal: Name | None
    lamp: UvLamp | None
    percent: Share | None
    is_t5: bool
    reflector: Fixture | None
    tube_length: Length | None
    since: date | None
    tubes: int | None
    gap: Length | None
    screen: Say | None
    lid: Pane | None
    distance: Length | None
    length: Length | None
    depth: Length | None
    height: Length | None

    @property
    def lamp_known(self) -> Say | None:
        """Return the kind of the lamp, where that or its strength was told."""
        lamp = self.lamp
        return None if lamp is None else _named(_Lamp(lamp))


@dataclass(frozen=True, slots=True)
class _Lamp:
    lamp: UvLamp


def _named(told: _Lamp) -> Say:
    return Say.by("read-uv", told.lamp)


@dataclass(frozen=True, slots=True)
class _Through:
    pane: Pane


def setup_told(setup: Setup) -> SetupTold:
    """Return a set-up as facts."""
    percent = setup.tube_percent
    several = setup.tubes is not None and setup.tubes > 1
    return SetupTold(
        animal=name_of(setup.animal) if setup.animal else None,
        lamp=setup.lamp or (UvLamp.T5_HO if percent else None),
        percent=share(percent / 100.0) if percent else None,
        is_t5=setup.lamp is None,
        reflector=Fixture[setup.reflector.upper()] if setup.reflector else None,
        tube_length=_length(setup.tube_length_m),
        since=setup.tube_since,
        tubes=setup.tubes if several else None,
        gap=_length(setup.gap_m) if several else None,
        screen=_screen(setup.screen) if setup.screen else None,
        lid=Pane[setup.lid.upper()] if setup.lid else None,
        distance=_length(setup.distance_m),
        length=_length(setup.length_m),
        depth=_length(setup.depth_m),
        height=_length(setup.height_m),
    )


def _length(length_m: float | None) -> Length | None:
    return metres(length_m) if length_m else None


def _screen(screen: KeptScreen) -> Say:
    if screen.pane:
        return _pane(_Through(Pane[screen.pane.upper()]))
    if screen.passes is not None:
        return Say("between-name", Between(Net.FLAT, share(1.0 - screen.passes), None))
    if screen.wire_m is None or screen.mesh_x_per_m is None or screen.mesh_y_per_m is None:
        return Say("between-name", Between(Net.NONE, share(0.0), None))
    try:
        is_open = open_area(Weave(screen.mesh_x_per_m, screen.mesh_y_per_m, screen.wire_m))
    except OutsideModelError:
        # Of a file that was changed by hand: no such weave is made.
        return Say("between-name", Between(Net.WEAVE, share(0.0), None))
    return Say("between-name", Between(Net.WEAVE, share(1.0 - is_open), share(is_open)))


def _pane(through: _Through) -> Say:
    return Say.by("home-screen", through.pane)


def setup_rows(told: SetupTold) -> Iterator[Row]:
    """Return what is told of a set-up, a row a fact."""
    for what, fact in _ROWS.items():
        if getattr(told, fact) is not None:
            yield Row(Say.of("home-label", what), Say.of("home-told", what, facts=told))


def question_of(setup: Setup) -> str:
    """Return the question that a set-up can be asked about, empty if too little is known."""
    of_class = setup.tube_percent and setup.reflector and setup.screen
    if not (of_class or setup.lamp):
        return ""
    several = (setup.tubes or 1) > 1
    parts = {
        "distance": _cm(setup.distance_m),
        "tube": f"{setup.tube_percent:g}%" if setup.tube_percent and not setup.lamp else "",
        "lamp": setup.lamp.value if setup.lamp else "",
        "reflector": setup.reflector or "",
        "screen": _between(setup.screen) if setup.screen else "",
        "animal": animal_name(setup.animal) if setup.animal else "",
        "length": _cm(setup.tube_length_m),
        "tubes": str(setup.tubes) if several else "",
        "gap": _cm(setup.gap_m) if several else "",
    }
    told = {name: text for name, text in parts.items() if text}
    return join_line("uvi" if setup.distance_m else "distance", told)


def _cm(length_m: float | None) -> str:
    return f"{length_m * 100:.4g}cm" if length_m else ""


def _between(screen: KeptScreen) -> str:
    if screen.pane:
        return screen.pane
    if screen.wire_m is not None and screen.mesh_x_per_m and screen.mesh_y_per_m:
        per_inch = [f"{x * _INCH_M:.3g}" for x in (screen.mesh_x_per_m, screen.mesh_y_per_m)]
        return f"{'x'.join(per_inch)} {screen.wire_m * 1000:.3g}mm"
    return "none" if screen.passes is None else f"passes {screen.passes * 100:.3g}%"
