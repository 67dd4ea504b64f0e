"""Tables are what TOML says they are, whatever was kept of them."""

import tomllib
from importlib.util import cache_from_source
from pathlib import Path

import pytest

from calc.tables import ROOT, can_keep, made_once, read_table

TABLES = sorted(p for room in ("bot", "calc") for p in (ROOT / room).rglob("*.toml"))


def kept_of(path: Path) -> Path:
    return Path(cache_from_source(f"{path}.py"))


@pytest.mark.parametrize("path", TABLES, ids=lambda p: str(p.relative_to(ROOT)))
def test_a_table_is_what_its_text_says(path: Path) -> None:
    told = tomllib.loads(path.read_text(encoding="utf-8"))
    assert read_table(path) == told
    assert read_table(path) == told


def test_a_table_that_changed_is_read_anew(tmp_path: Path) -> None:
    path = tmp_path / "lamps.toml"
    path.write_text("lamp = 1\n")
    assert read_table(path) == {"lamp": 1}
    assert kept_of(path).is_file()
    path.write_text("lamp = 22\n")
    assert read_table(path) == {"lamp": 22}


@pytest.mark.parametrize("spoilt", [b"", b"\xff", b"N", b"i\x00\x00\x00\x00"])
def test_what_was_kept_badly_is_made_anew(tmp_path: Path, spoilt: bytes) -> None:
    path = tmp_path / "lamps.toml"
    path.write_text("lamp = 1\n")
    read_table(path)
    kept = kept_of(path)
    good = kept.read_bytes()
    kept.write_bytes(spoilt)
    assert read_table(path) == {"lamp": 1}
    assert kept.read_bytes() == good


def test_where_nothing_can_be_kept_it_is_read_each_time(tmp_path: Path) -> None:
    path = tmp_path / "lamps.toml"
    path.write_text("lamp = 1\n")
    kept_of(path).parent.write_text("no folder")
    assert read_table(path) == {"lamp": 1}
    assert read_table(path) == {"lamp": 1}


def test_one_who_changes_a_table_changes_it_for_nobody_else() -> None:
    read_table("calc/data/limits.toml").clear()
    assert read_table("calc/data/limits.toml")


def test_what_is_made_is_made_once_as_long_as_its_mark_is_the_same(tmp_path: Path) -> None:
    path, made = tmp_path / "units.py", []

    def make() -> dict[tuple[str, str], int]:
        made.append(1)
        return {("in", "cm"): len(made)}

    assert can_keep(path)
    assert [made_once(path, mark, make)["in", "cm"] for mark in (1, 1, 2, 2)] == [1, 1, 2, 2]


def test_where_nothing_is_kept_and_nothing_can_be_it_is_said(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "units.py"
    monkeypatch.setattr("sys.dont_write_bytecode", True)
    assert not can_keep(path)
    monkeypatch.setattr("sys.dont_write_bytecode", False)
    made_once(path, 1, dict)
    monkeypatch.setattr("sys.dont_write_bytecode", True)
    assert can_keep(path)


def test_two_are_kept_in_one_folder_and_nothing_half_written_stays(tmp_path: Path) -> None:
    for name in ("one.py", "two.py"):
        made_once(tmp_path / name, 1, dict)
    kept = sorted(path.name for path in kept_of(tmp_path / "one.py").parent.iterdir())
    assert len(kept) == 2
    # What cannot be moved to its place is taken away again.
    kept_of(tmp_path / "three.py").mkdir()
    assert made_once(tmp_path / "three.py", 1, lambda: 3) == 3
    assert len(list(kept_of(tmp_path / "one.py").parent.iterdir())) == 3
