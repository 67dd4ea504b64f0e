"""What a cold question loads: modules by name, in a process of its own, after it was answered."""

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent
# Whatever is asked at the console; pint takes the door of scipy where it is there.
NEVER = (
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
HEAT = ("calc.heat.enclosure", "calc.setup.section", "calc.daylight")

KINDS = {
    "convert 14in": (*NEVER, *STORE, *FREE_WORDS, *ENGINE, "bot.questions.uv", "bot.queries.uv"),
    "help": (*NEVER, *STORE, *FREE_WORDS, *ENGINE, "bot.questions.uv", "bot.queries.uv"),
    "temps basking:103F cool:79F animal:bearded dragon": (*NEVER, *STORE, *FREE_WORDS),
    "distance tube:12% reflector:polished screen:none animal:bearded dragon": (
        *NEVER,
        *STORE,
        *FREE_WORDS,
        *HEAT,
        "bot.questions.heat",
        "bot.questions.setup",
    ),
    "ask how far should a 12% tube be, no screen, bearded dragon": (*NEVER, *STORE),
}
_SCRIPT = """
import contextlib, io, sys
from bot.__main__ import main
with contextlib.redirect_stdout(io.StringIO()):
    main(["ask", sys.argv[1]])
print(*sys.modules, sep="\\n")
"""


@pytest.mark.parametrize("line", KINDS)
def test_a_cold_question_loads_nothing_that_it_does_not_need(line: str, tmp_path: Path) -> None:
    done = subprocess.run(
        [sys.executable, "-c", _SCRIPT, line],
        cwd=ROOT,
        env={"PATH": "", "NOONSTONE_DATA_DIR": str(tmp_path), "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=True,
    )
    loaded = done.stdout.split()
    assert "bot.answering" in loaded
    found = {
        f"{name} (for {never})"
        for name in loaded
        for never in KINDS[line]
        if name == never or name.startswith(f"{never}.")
    }
    assert not found
