"""What a start costs: processor time and peak memory of a whole process, as the system counts them.

Run on request: python -m pytest tests/bench
"""

import asyncio
import os
import subprocess
import sys
from collections.abc import Awaitable, Callable
from pathlib import Path
from statistics import median

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from tests.bench.crowd import bare_bot, crowd, noonstone, resident_bytes
from tests.discord.test_process import Process
from tests.discord.world import World

_TIMES = 7
_LINE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
STARTS = {
    "python alone": ["-c", "pass"],
    "ask distance": ["-m", "bot", "ask", _LINE],
    "ask convert": ["-m", "bot", "ask", "convert 14in"],
    "ask watts": ["-m", "bot", "ask", "watts room:70F want:103F distance:10in lamp:flood"],
    "commands": ["-m", "bot", "commands"],
    "with discord": ["-c", "import bot.fronts.discord.client"],
}


# A process begins with the peak memory of the one that starts it, so a small one does.
_STARTER = """
import os, sys
child = os.posix_spawn(sys.executable, [sys.executable, *sys.argv[1:]], os.environ, file_actions=[
    (os.POSIX_SPAWN_OPEN, 1, os.devnull, os.O_WRONLY, 0)])
_, status, usage = os.wait4(child, 0)
print(usage.ru_utime + usage.ru_stime, usage.ru_maxrss * 1024)
sys.exit(os.waitstatus_to_exitcode(status))
"""


def used(arguments: list[str]) -> tuple[float, float]:
    """Return processor time [s] and peak memory [bytes] of one process."""
    starter = [sys.executable, "-S", "-E", "-c", _STARTER, *arguments]
    told = subprocess.run(starter, capture_output=True, text=True, check=True).stdout
    cpu_s, peak_bytes = map(float, told.split())
    return cpu_s, peak_bytes


@pytest.mark.parametrize("name", STARTS)
def test_start(name: str, benchmark: BenchmarkFixture) -> None:
    costs: list[tuple[float, float]] = []
    benchmark.pedantic(  # type: ignore[no-untyped-call]
        lambda: costs.append(used(STARTS[name])), rounds=_TIMES, warmup_rounds=1
    )
    cpu_s, peak_bytes = (median(values) for values in zip(*costs, strict=True))
    benchmark.extra_info |= {"cpu_ms": 1000 * cpu_s, "peak_mb": peak_bytes / 1e6}
    print(f"\n{name}: {1000 * cpu_s:.0f} ms of processor time, {peak_bytes / 1e6:.0f} MB at most")


async def spent(start: Callable[[World], Awaitable[Process]]) -> tuple[float, float]:
    """Return what a bot has used when it is ready: processor time [s] and memory [bytes]."""
    async with crowd(start) as asked:
        await asked.begun("help" if start is not bare_bot else "nothing", {})
        stat = Path(f"/proc/{asked.process.pid}/stat").read_text(encoding="ascii")
        # After the name in brackets; user and system time, in ticks, are the 12th and 13th.
        ticks = sum(map(int, stat.rpartition(")")[2].split()[11:13]))
        return ticks / os.sysconf("SC_CLK_TCK"), float(resident_bytes(asked.process))


@pytest.mark.parametrize("which", ["a bare bot", "noonstone"])
def test_start_of_a_bot(which: str, benchmark: BenchmarkFixture, tmp_path: Path) -> None:
    costs: list[tuple[float, float]] = []

    def once() -> None:
        # In a folder of its own every bot registers its commands, as at the first start.
        own = noonstone(tmp_path / str(len(costs)))
        costs.append(asyncio.run(spent(bare_bot if which == "a bare bot" else own)))

    benchmark.pedantic(once, rounds=3)  # type: ignore[no-untyped-call]
    cpu_s, held_bytes = (median(values) for values in zip(*costs, strict=True))
    benchmark.extra_info |= {"cpu_ms": 1000 * cpu_s, "held_mb": held_bytes / 1e6}
    print(f"\n{which}: {1000 * cpu_s:.0f} ms of processor time, {held_bytes / 1e6:.0f} MB held")
