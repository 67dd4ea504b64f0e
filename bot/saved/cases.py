"""Cases as values: an enclosure that its keeper shares with the helpers of a group, for a while.

What is advised are figures and choices; nobody's words are kept.
"""

from datetime import date, timedelta
from enum import StrEnum
from typing import Self

from pydantic import AwareDatetime, Field, model_validator

from bot.saved.keeper import Enclosure, KeptQuantity, KeptScreen, Reading
from bot.saved.values import Kept, Name
from calc.quantities import Quantity, row_of

__all__ = ["MOST_ADVICE", "MOST_CASES", "REST", "Advice", "Advised", "Case", "CaseExport", "Given"]

MOST_CASES = 100
MOST_ADVICE = 20
REST = timedelta(days=30)
"""After so long without a move, a case is forgotten."""

# What an advised temperature or distance counts as reached within: a good thermometer [K], a
# tape measure [m]. Common practice, no source.
_NEAR_K, _NEAR_M = 2.0, 0.015


class Advised(StrEnum):
    """What is advised: HANG has a distance [m], TUBE may have a class [%], BRING a temperature.

    READ and BRING say of what.
    """

    HANG = "hang"
    TUBE = "tube"
    UNSCREEN = "unscreen"
    BRING = "bring"
    READ = "read"
    VET = "vet"


class Advice(Kept):
    """One thing that a helper advises, on a day."""

    day: date
    what: Advised
    of: KeptQuantity | None = None
    value: float | None = None

    @model_validator(mode="after")
    def _whole(self) -> Self:
        has_value = self.value is not None
        if (self.what in (Advised.BRING, Advised.READ)) != (self.of is not None):
            raise ValueError("what is read or brought somewhere says of what")
        if has_value != (self.what in (Advised.HANG, Advised.BRING)) and not (
            has_value and self.what is Advised.TUBE
        ):
            raise ValueError("a distance and a temperature have a value, a tube may have a class")
        if self.value is not None:
            low, high = self._ends()
            if not low <= self.value <= high:
                raise ValueError(f"the value lies between {low:g} and {high:g}")
        return self

    def _ends(self) -> tuple[float, float]:
        if self.what is Advised.HANG:
            return 0.05, 3.0
        if self.what is Advised.TUBE:
            return 1.0, 20.0
        assert self.of is not None
        if self.of is Quantity.UVI:
            raise ValueError("a UV index is read, not brought somewhere")
        row = row_of(self.of)
        return row.lowest, row.highest

    def is_open(self, kept: Enclosure, before: tuple[Reading, ...] = ()) -> bool:
        """Say whether the set-up and its readings do not show yet that it was done.

        ``before`` are readings that were there already when the case was shared.
        """
        setup = kept.setup
        if self.what is Advised.VET:
            return True
        if self.what is Advised.TUBE:
            return setup.tube_since is None or setup.tube_since < self.day
        if self.what is Advised.UNSCREEN:
            return setup.screen != KeptScreen()
        if self.what is Advised.HANG:
            assert self.value is not None
            return setup.distance_m is None or abs(setup.distance_m - self.value) > _NEAR_M
        since = [r for r in kept.readings if r.of is self.of and r.day >= self.day]
        new = [reading for reading in since if reading not in before]
        if self.what is Advised.READ or not new:
            return not new
        assert self.value is not None
        newest = max(new, key=lambda reading: reading.day)
        return abs(newest.value - self.value) > _NEAR_K


class Given(Advice):
    """An advice with the helper who gave it; None once that person asked to be forgotten."""

    helper: int | None

    @property
    def bare(self) -> Advice:
        """Return it without who gave it."""
        return Advice.model_validate(self.model_dump(exclude={"helper"}))


class Case(Kept):
    """A case: its enclosure as it is now, what was read last when it was shared, the advice.

    ``channel`` is where the group's helpers were when its keeper agreed; elsewhere nobody sees it.
    """

    number: int
    server: int
    channel: int | None
    keeper: int
    opened: AwareDatetime
    moved: AwareDatetime
    enclosure: Enclosure
    before: tuple[Reading, ...] = ()
    advice: tuple[Given, ...] = ()

    @property
    def open_advice(self) -> tuple[Given, ...]:
        """Return what was not done yet, as far as the readings show."""
        return tuple(one for one in self.advice if one.is_open(self.enclosure, self.before))


class CaseExport(Kept):
    """A case in its keeper's file, to read: it is shared anew only by its keeper."""

    enclosure: Name
    opened: AwareDatetime
    before: tuple[Reading, ...] = ()
    advice: tuple[Advice, ...] = Field(default=(), max_length=MOST_ADVICE)
