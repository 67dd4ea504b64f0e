"""The questions about cases: shared by a keeper, looked at and answered by helpers."""

from typing import Annotated

from pydantic import Field

from bot.facts import Say
from bot.language.choices import read_choice
from bot.language.lamps import read_tube_strength
from bot.language.quantities import read_number
from bot.queries.mine import NamedQuery
from bot.queries.options import AirTemperature, Length, SurfaceTemperature
from bot.queries.query import Option, Query, reading
from bot.queries.saved import NEW, Sure

__all__ = [
    "AdviseQuery",
    "CaseNumberQuery",
    "CasesQuery",
    "ShareQuery",
]

_PLACES = {
    "uvi": ("uv", "uv index"),
    "basking": ("surface", "basking surface"),
    "warm": ("warm end", "warm air"),
    "cool": ("cool end", "cool air"),
    "night": ("night low",),
}
_OPEN = {"none": ("no screen", "off", "open", "nothing")}
_YES = {"yes": ("y", "vet", "true")}


def _read_tube(text: str) -> float | str:
    """Read a class, or that a new tube of any class is meant."""
    return NEW if text.strip().lower() == NEW else read_tube_strength(text).percent


def _read_number(text: str) -> int:
    return round(read_number(text.lstrip("#"), Say("wanted-case"), "1"))


_Number = Annotated[int, reading(_read_number), Option(completes="case")]
_Tube = Annotated[float | str, reading(_read_tube), Option(choices=(NEW, "6%", "12%"))]
_Place = Annotated[
    str, reading(lambda text: read_choice(text, _PLACES)), Option(choices=tuple(_PLACES))
]
_Open = Annotated[str, reading(lambda text: read_choice(text, _OPEN)), Option(choices=tuple(_OPEN))]
_Yes = Annotated[str, reading(lambda text: read_choice(text, _YES)), Option(choices=tuple(_YES))]


class ShareQuery(NamedQuery):
    """Share an enclosure with the helpers of this group."""

    sure: Sure = Field("no", examples=["yes"])


class CasesQuery(Query):
    """All cases that are shared with the helpers."""


class CaseNumberQuery(Query):
    """One case by its number."""

    number: _Number = Field(examples=["1"])


class AdviseQuery(CaseNumberQuery):
    """What a helper advises: figures and choices."""

    distance: Length | None = Field(None, examples=["14in"])
    tube: _Tube | None = Field(None, examples=["new"])
    screen: _Open | None = Field(None, examples=["none"])
    measure: _Place | None = Field(None, examples=["cool"])
    basking: SurfaceTemperature | None = Field(None, examples=["103F"])
    warm: AirTemperature | None = Field(None, examples=["84F"])
    cool: AirTemperature | None = Field(None, examples=["79F"])
    night: AirTemperature | None = Field(None, examples=["68F"])
    vet: _Yes | None = Field(None, examples=["yes"])
