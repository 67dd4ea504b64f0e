"""The lengths in which T5 HO tubes are sold."""

from dataclasses import dataclass

__all__ = ["STANDARD_T5_HO", "StandardTube"]

_DARK_ENDS_M = 0.030
"""Both dark ends of a T5 tube together. Source: t5_lit_length."""


@dataclass(frozen=True, slots=True)
class StandardTube:
    """A length in which T5 HO tubes are sold."""

    power_w: float
    face_to_face_m: float

    @property
    def lit_length_m(self) -> float:
        """The part that shines [m]: face to face less the dark ends."""
        return self.face_to_face_m - _DARK_ENDS_M


STANDARD_T5_HO = (
    StandardTube(24.0, 0.549),
    StandardTube(39.0, 0.849),
    StandardTube(54.0, 1.149),
    StandardTube(80.0, 1.449),
)
"""The four standard lengths. Source: t5_lengths."""
