"""The letters of the pictures: they come along with matplotlib, so every machine has the same."""

from pathlib import Path

__all__ = ["font_file"]


def font_file() -> Path:
    """Return the file of the letters; fails with ValueError where it is gone."""
    from matplotlib.font_manager import findfont

    return Path(findfont("DejaVu Sans", fallback_to_default=False))
