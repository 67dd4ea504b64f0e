"""The error that every formula raises outside the range where it may be believed."""

__all__ = ["OutsideModelError"]


class OutsideModelError(ValueError):
    """A quantity lies outside the range in which the formula holds."""

    def __init__(self, name: str, value: float, low: float, high: float, unit: str) -> None:
        self.name = name
        self.value = value
        self.low = low
        self.high = high
        self.unit = unit
        super().__init__(f"{name} is {value:g} {unit}; the model holds from {low:g} to {high:g}")
