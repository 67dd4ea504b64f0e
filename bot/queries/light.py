"""The question about brightness: from lamps, or from what a meter of lux shows."""

from collections.abc import Mapping
from functools import partial
from typing import Annotated

from pydantic import Field

from bot.language.choices import YES_NO, read_choice
from bot.language.light import LIGHT_LAMPS, LUX_METERS, Lux, read_beam, read_lumens, read_lux
from bot.language.light_lamps import LightLamp, read_light_lamps, tells_distances
from bot.language.screens import Pane
from bot.queries.options import (
    AnimalName,
    EnclosureSize,
    Hours,
    Latitude,
    Length,
    Month,
    Power,
    ScreenOption,
    measured,
)
from bot.queries.query import Option, Query, reading
from bot.saved.group import NOTHING_OWN, Own

__all__ = ["BrightQuery"]

LightLampName = Annotated[
    str, reading(partial(read_choice, names=LIGHT_LAMPS)), Option(choices=tuple(LIGHT_LAMPS))
]
LuxMeterName = Annotated[
    str, reading(partial(read_choice, names=LUX_METERS)), Option(choices=tuple(LUX_METERS))
]
LightLamps = Annotated[int | tuple[LightLamp, ...], measured(read_light_lamps), Option()]
Lumens = Annotated[float, reading(read_lumens), Option()]
LuxReading = Annotated[Lux, reading(read_lux), Option()]
Beam = Annotated[float, reading(read_beam), Option()]
YesNo = Annotated[str, reading(partial(read_choice, names=YES_NO)), Option(choices=tuple(YES_NO))]


class BrightQuery(Query):
    """How bright it is where an animal basks."""

    lamp: LightLampName | None = Field(
        None,
        examples=["led bar"],
    )
    lumens: Lumens | None = Field(None, examples=["2000lm"])
    watts: Power | None = Field(None, examples=["20W"])
    distance: Length | None = Field(None, examples=["16in"])
    length: Length | None = Field(None, examples=["22in"])
    beam: Beam | None = Field(None, examples=["36 degrees"])
    screen: ScreenOption | None = Field(None, examples=["none"])
    reflector: YesNo | None = Field(None, examples=["yes"])
    lamps: LightLamps = Field(1, examples=["24W led bar + 75W flood"])
    enclosure: EnclosureSize | None = Field(
        None,
        examples=["48x24x24in"],
    )
    animal: AnimalName = Field("", examples=["bearded dragon"])
    hours: Hours | None = Field(None, examples=["12 hours"])
    reading: LuxReading | None = Field(None, examples=["6000lx"])
    by: LuxMeterName | None = Field(None, examples=["meter"])
    latitude: Latitude | None = Field(None, examples=["27S"])
    month: Month | None = Field(None, examples=["December"])

    def asks_of_an_animal(self) -> bool:
        """Say whether the answer depends on the animal: lamp and sky are the same for all."""
        return False

    @classmethod
    def lacking(cls, given: Mapping[str, str], _own: Own = NOTHING_OWN) -> tuple[str, ...]:
        """Return what a brightness cannot do without: of a lamp how far it is, and which kind."""
        if "reading" in given or not {"lumens", "watts", "lamp", "lamps"} & given.keys():
            return ()
        if not given.get("lamps", "1").strip().isdecimal():
            # Each of several lamps may tell its own distance.
            told = "distance" in given or tells_distances(given["lamps"])
            return () if told else ("distance",)
        return tuple(name for name in ("lamp", "distance") if name not in given)

    @property
    def lights(self) -> tuple[LightLamp, ...]:
        """Return all lamps that were told, each with its label and its distance."""
        told = self.lamps if isinstance(self.lamps, tuple) else ()
        if self.lamp is None:
            return told
        count = self.lamps if isinstance(self.lamps, int) else 1
        watts = self.watts.low if self.watts else None
        one = LightLamp(self.lamp, count, watts, self.lumens, self.distance, self.lamp)
        return (one, *told)

    @property
    def is_behind_glass(self) -> bool:
        """Say whether a pane is between."""
        return isinstance(self.screen, Pane)
