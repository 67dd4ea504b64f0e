"""What is between a lamp and an animal, as it is kept."""

from typing import Literal, Self

from pydantic import Field, model_validator

from bot.saved.values import Kept

__all__ = ["KeptScreen", "Pane"]

Pane = Literal["glass", "plastic"]
"""What stops all UVB."""


class KeptScreen(Kept):
    """What is between: nothing, a share passed [1], a weave [1/m, 1/m, m], or a pane."""

    passes: float | None = Field(default=None, gt=0.0, le=1.0)
    mesh_x_per_m: float | None = Field(default=None, gt=0.0, le=20_000.0)
    mesh_y_per_m: float | None = Field(default=None, gt=0.0, le=20_000.0)
    wire_m: float | None = Field(default=None, gt=0.0, le=0.02)
    pane: Pane | None = None

    @model_validator(mode="after")
    def _one_kind(self) -> Self:
        weave = [x is not None for x in (self.mesh_x_per_m, self.mesh_y_per_m, self.wire_m)]
        if any(weave) and not (all(weave) and self.passes is None):
            raise ValueError("a screen is a share passed, or a weave with two meshes and a wire")
        if self.pane and (self.passes is not None or any(weave)):
            raise ValueError("through a pane no share passes")
        return self

    @property
    def is_nothing(self) -> bool:
        """Say whether nothing is between."""
        return self.passes is None and self.mesh_x_per_m is None and self.pane is None
