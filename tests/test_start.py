"""What a cold question loads: modules by name, in a process of its own, after it was answered."""

import subprocess
import sys
from pathlib import Path

import pytest

from bot.language.units import convert
from tests.bot.database.databases import sqlite_of_today

ROOT = Path(__file__).parent.parent
# Whatever is asked at the console: what pint says of units is kept, and tables are too.
NEVER = (
    "pint",
    "tomllib",
    "scipy.optimize",
    "scipy.linalg",
    "discord",
    "contourpy",
    "resvg_py",
    "PIL",
    "aiohttp",
    "prompt_toolkit",
    "rich",
    "asyncio",
)
STORE = ("sqlalchemy", "alembic", "aiosqlite", "bot.database.store", "bot.questions.saved")
FREE_WORDS = ("bot.routes", "bot.language.hearing", "bot.dangers.listening", "bot.dialogue")
ENGINE = (
    "bot.drawing",
    "calc.uv.point",
    "calc.uv.section",
    "calc.heat.enclosure",
    "calc.setup",
    "calc.daylight",
)
# What draws, and what only a refusal, a danger or a page of the guide needs.
NEVER_AT_FIRST = (
    "bot.drawing",
    "bot.unread",
    "bot.way_on",
    "bot.dangers.first",
    "bot.guide",
    "yaml",
)
HEAT = ("calc.heat.enclosure", "calc.setup.section", "calc.daylight")

NO_ANIMAL = ("numpy", "calc.naming", "bot.questions.animals", "bot.questions.uv", "bot.queries.uv")

KINDS = {
    "convert 14in": (*NEVER, *NEVER_AT_FIRST, *STORE, *FREE_WORDS, *ENGINE, *NO_ANIMAL),
    "help": (*NEVER, *NEVER_AT_FIRST, *STORE, *FREE_WORDS, *ENGINE, *NO_ANIMAL),
    "temps basking:103F cool:79F animal:bearded dragon": (*NEVER, *STORE, *FREE_WORDS),
    "distance tube:12% reflector:polished screen:none animal:bearded dragon": (
        *NEVER,
        *NEVER_AT_FIRST,
        *STORE,
        *FREE_WORDS,
        *HEAT,
        "bot.questions.heat",
        "bot.questions.setup",
    ),
    "ask how far should a 12% tube be, no screen, bearded dragon": (*NEVER, *STORE),
}
# How many modules are loaded at most once it is answered, a few more than there were.
MOST = {"convert": 350, "help": 350, "temps": 545, "distance": 500, "ask": 630}
WITH_A_DATABASE = 12
WITH_THE_STORE = 1071
_SCRIPT = """
import contextlib, io, sys
from bot.__main__ import main
with contextlib.redirect_stdout(io.StringIO()):
    main(["ask", sys.argv[1]])
print(*sys.modules, sep="\\n")
"""


@pytest.fixture(autouse=True, scope="module")
def _kept_tables() -> None:
    """Have what is kept beside the bytecode be there: who asks first of all has to make it."""
    convert(1.0, "in", "cm")


def loaded_after(line: str, folder: Path) -> list[str]:
    return printed_by(_SCRIPT, folder, line)


def printed_by(script: str, folder: Path, *arguments: str) -> list[str]:
    done = subprocess.run(
        [sys.executable, "-c", script, *arguments],
        cwd=ROOT,
        env={"PATH": "", "NOONSTONE_DATA_DIR": str(folder), "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=True,
    )
    return done.stdout.split()


def found(loaded: list[str], never: tuple[str, ...]) -> set[str]:
    return {
        f"{name} (for {each})"
        for name in loaded
        for each in never
        if name == each or name.startswith(f"{each}.")
    }


@pytest.mark.parametrize("line", KINDS)
def test_a_cold_question_loads_nothing_that_it_does_not_need(line: str, tmp_path: Path) -> None:
    loaded = loaded_after(line, tmp_path)
    assert "bot.answering" in loaded
    assert not found(loaded, KINDS[line])
    assert len(loaded) <= MOST[line.partition(" ")[0]]


async def test_a_saved_database_brings_a_glance_at_it(tmp_path: Path) -> None:
    await sqlite_of_today(tmp_path)
    loaded = loaded_after("convert 14in", tmp_path / "kept")
    assert "bot.database.glance" in loaded
    counting = "bot.questions.saved"
    assert not found(loaded, tuple(name for name in KINDS["convert 14in"] if name != counting))
    assert len(loaded) <= MOST["convert"] + WITH_A_DATABASE


async def test_what_is_kept_brings_its_driver_and_no_migration(tmp_path: Path) -> None:
    await sqlite_of_today(tmp_path)
    loaded = loaded_after("mine list", tmp_path / "kept")
    assert "aiosqlite" in loaded
    assert not found(loaded, ("alembic", "asyncpg", "discord", "scipy.optimize", "pint"))
    assert len(loaded) <= WITH_THE_STORE


def test_the_bot_starts_without_migrations_and_what_draws(tmp_path: Path) -> None:
    script = """
import sys
from bot.fronts.discord import running
from bot.fronts.discord.answering import warm_up
warm_up()
print(*sys.modules, sep="\\n")
"""
    loaded = printed_by(script, tmp_path)
    assert "bot.questions.setup.plan" in loaded
    assert not found(loaded, ("alembic", "contourpy", "resvg_py", "PIL", "rich", "scipy.optimize"))
