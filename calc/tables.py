"""The tables of figures and words: TOML, as people write it, kept beside it as Python loads it.

To read TOML takes longer than all else that a question needs of it, so what was read is kept in
``__pycache__`` as bytecode is: made anew when the table has changed, and never needed. So is what
else costs more to make than to load.
"""

import marshal
import sys
from collections.abc import Callable
from contextlib import suppress
from importlib.util import cache_from_source
from pathlib import Path
from typing import Any

__all__ = ["ROOT", "can_keep", "made_once", "read_table", "stamp_of"]

ROOT = Path(__file__).resolve().parent.parent
"""The folder in which ``calc`` and ``bot`` lie."""


def read_table(name: str | Path) -> dict[str, Any]:
    """Return a table by its path below the program's folder, such as ``calc/data/limits.toml``."""
    path = ROOT / name
    found: dict[str, Any] = made_once(path, stamp_of(path), lambda: _read(path))
    return found


def stamp_of(path: Path) -> tuple[int, int]:
    """Return by what a file is known to be the same."""
    stat = path.stat()
    # In whole seconds, as bytecode is compared: an image keeps no more.
    return int(stat.st_mtime), stat.st_size


def made_once(path: Path, mark: int | tuple[int, int], make: Callable[[], Any]) -> Any:
    """Return what is made of a file, kept beside its bytecode for as long as its mark is the same.

    Plain values alone can be kept: numbers, texts, tuples, lists, dictionaries.
    """
    kept = _place_of(path)
    try:
        made_of, told = marshal.loads(kept.read_bytes())
    except (OSError, EOFError, ValueError, TypeError):
        made_of, told = None, None
    if made_of != mark:
        told = make()
        if not sys.dont_write_bytecode:
            _keep(kept, marshal.dumps((mark, told)))
    return told


def can_keep(path: Path) -> bool:
    """Say whether what is made of a file is kept, or can be."""
    import os

    return _place_of(path).exists() or (
        not sys.dont_write_bytecode and os.access(path.parent, os.W_OK)
    )


def _place_of(path: Path) -> Path:
    # With both endings in its name, since a table may be named as a module beside it.
    return Path(cache_from_source(f"{path}.py"))


def _read(path: Path) -> dict[str, Any]:
    import tomllib

    return tomllib.loads(path.read_text(encoding="utf-8"))


def _keep(kept: Path, data: bytes) -> None:
    """Write a file whole or not at all; where nothing can be written, it is read anew each time."""
    import os

    part = kept.with_name(f"{kept.name}.{os.getpid()}")
    try:
        kept.parent.mkdir(parents=True, exist_ok=True)
        part.write_bytes(data)
        part.replace(kept)
    except OSError:
        with suppress(OSError):
            part.unlink()
