"""A year of two groups before the stand-in of Discord: who asks, reads and offers what, and when.

Two processes with a shard each share one database; the clock of both is turned on by weeks, and
each week one of them is killed while people ask. Whoever gets no answer asks again, as people do.
All that was answered is written down here, so that it can be counted without the bot.
"""

import asyncio
import os
import random
import signal
import time
from collections.abc import Callable, Coroutine, Mapping
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from tests.bench.crowd import resident_bytes
from tests.discord.answers import Answer
from tests.discord.cast import GARDEN, Person, Server, in_server
from tests.discord.gateway import shard_of
from tests.discord.platform import Exchange
from tests.discord.saving import messages_to
from tests.discord.test_process import Process, started
from tests.discord.world import World

__all__ = ["GROUPS", "Logged", "Size", "Week", "Year"]

_NEXT_SHARD = 1 << 22
ORCHARD = Server(GARDEN.id + _NEXT_SHARD, "The Orchard", GARDEN.channel_id + 7)
GROUPS = (GARDEN, ORCHARD)
_FIRST_ID = 4_100_000_000_000_000
# The clock stands in a file, and shares of a minute mean nothing where a week takes seconds.
_LAUNCH = """
import os, sys, time, discord, yarl
from datetime import UTC, datetime, timedelta
from pathlib import Path
from discord.gateway import DiscordWebSocket
discord.http.Route.BASE, DiscordWebSocket.DEFAULT_GATEWAY = sys.argv[1], yarl.URL(sys.argv[2])
import bot.fronts.discord.answering as answering
import bot.serving.allowance as allowance
import bot.serving.memory as memory
ahead = Path(os.environ["NOONSTONE_DATA_DIR"]) / "days_ahead"
now = lambda: datetime.now(UTC) + timedelta(days=float(ahead.read_text()))
memory.Memory.__init__.__defaults__ = (now,)
answering._today = lambda: now().date()
allowance.Limits.__init__.__defaults__ = (10**6, 10**6, time.monotonic)
from bot.__main__ import main
sys.exit(main([sys.argv[3]]))
"""
_ANIMALS = ("bearded dragon", "leopard gecko", "corn snake", "crested gecko", "slider turtle")
_TUBES = ("6%", "10%", "12%", "14%")
_LOST_AFTER_S, _READY_WITHIN_S = 6.0, 60.0
_AT_ONCE = 8


@dataclass(frozen=True, slots=True)
class Size:
    """How much happens in how many weeks."""

    keepers: int
    questions: int
    readings: int
    offered: int
    reminded: int
    weeks: int


@dataclass(frozen=True, slots=True)
class Week:
    """What was measured in a week: the times of answers [s] and the memory of both [bytes]."""

    answered_s: tuple[float, ...]
    held: tuple[int, ...]


@dataclass(slots=True)
class Logged:
    """What was answered, in the order of its answers.

    ``again`` is what had to be asked again, ``refused`` what was read too oddly to be taken.
    """

    questions: int = 0
    again: int = 0
    refused: int = 0
    boxes: dict[Person, dict[str, str]] = field(default_factory=dict)
    readings: dict[Person, dict[date, float]] = field(default_factory=dict)
    offered: dict[Person, list[tuple[date, float]]] = field(default_factory=dict)
    reminded: set[Person] = field(default_factory=set)


class Year:
    """The people, the two processes, and the log."""

    def __init__(self, world: World, folder: Path, size: Size, seed: int) -> None:
        self.world, self.size, self.log = world, size, Logged()
        self._folder = folder
        self._processes: dict[int, Process] = {}
        self._random = random.Random(seed)
        self._people = [Person(_FIRST_ID + n, f"keeper {n}") for n in range(size.keepers)]
        self._times: list[float] = []
        self._start = datetime.now(UTC)

    async def through(self) -> list[Week]:
        """Live through all weeks; return what was measured in each."""
        self._turn(0.0)
        for shard in range(2):
            await self._begin(shard)
        weeks = [await self._week(number) for number in range(self.size.weeks)]
        # What is due is sent before the processes end.
        self._turn(7.0 * self.size.weeks + 60.0)
        await self._all_reminded()
        for process in self._processes.values():
            process.send_signal(signal.SIGTERM)
            await process.communicate()
        return weeks

    def today(self, week: int) -> date:
        """Return the day of a week on the turned clock."""
        return (self._start + timedelta(days=7.0 * week)).date()

    # --- the processes -----------------------------------------------------------------------

    def _turn(self, days: float) -> None:
        self._folder.mkdir(exist_ok=True)
        fresh = self._folder / "days_ahead.new"
        fresh.write_text(str(days))
        fresh.replace(self._folder / "days_ahead")

    async def _begin(self, shard: int) -> None:
        before = self.world.gateway.identifies
        os.environ["NOONSTONE_SHARDS"] = f"{shard}/2"
        devnull = asyncio.subprocess.DEVNULL
        self._processes[shard] = await started(
            self.world, self._folder, stderr=devnull, launch=_LAUNCH
        )
        await self.world.platform.until(
            lambda: self.world.gateway.identifies > before and self.world.platform.commands[None],
            "the bot",
            within_s=_READY_WITHIN_S,
        )

    async def _killed(self, shard: int) -> None:
        process = self._processes[shard]
        process.kill()
        await process.communicate()
        await self._begin(shard)

    # --- a week ------------------------------------------------------------------------------

    async def _week(self, number: int) -> Week:
        self._turn(7.0 * number)
        size, weeks = self.size, self.size.weeks
        people = self._random.sample(self._people, len(self._people))
        reading = people[: size.readings // weeks]
        offering = reading[: size.offered // weeks]
        reminded = people[-(size.reminded // weeks) or len(people) :]
        acts: list[Callable[[], Coroutine[None, None, None]]] = []
        acts += [self._reads(who, number, offers=who in offering) for who in reading]
        acts += [self._is_reminded(who) for who in reminded if who not in self.log.reminded]
        acts += [
            self._asks(self._random.choice(self._people)) for _ in range(size.questions // weeks)
        ]
        self._random.shuffle(acts)
        times: list[float] = []
        self._times = times
        half = len(acts) // 2
        await self._at_once(acts[:half])
        killing = asyncio.create_task(self._killed(number % 2))
        await self._at_once(acts[half:])
        await killing
        held = tuple(resident_bytes(process) for process in self._processes.values())
        return Week(tuple(times), held)

    async def _at_once(self, acts: list[Callable[[], Coroutine[None, None, None]]]) -> None:
        left = iter(acts)

        async def hand() -> None:
            for act in left:
                await act()

        await asyncio.gather(*(hand() for _ in range(_AT_ONCE)))

    def _asks(self, who: Person) -> Callable[[], Coroutine[None, None, None]]:
        animal, tube = self._random.choice(_ANIMALS), self._random.choice(_TUBES)
        inches = self._random.randint(8, 24)
        told = {"tube": tube, "reflector": "polished", "screen": "none", "animal": animal}
        name, given = self._random.choice(
            (
                ("distance", told),
                ("uvi", {**told, "distance": f"{inches}in"}),
                ("temps", {"basking": f"{80 + inches}F", "cool": "77F", "animal": animal}),
                ("night", {"room": f"{50 + inches}F", "animal": animal}),
                ("convert", {"value": f"{inches}in"}),
            )
        )

        async def act() -> None:
            await self._answered(name, given, who)
            self.log.questions += 1

        return act

    def _reads(
        self, who: Person, week: int, *, offers: bool
    ) -> Callable[[], Coroutine[None, None, None]]:
        tube, length = self._random.choice(_TUBES), self._random.choice(("22in", "34in", "46in"))
        inches = self._random.randint(10, 20)
        # What such tubes show at a distance, each a little otherwise; what cannot be is refused.
        usual = 4.5 * float(tube.rstrip("%")) / inches
        value = round(usual * self._random.lognormvariate(0.0, 0.2), 1)
        box = {"tube": tube, "reflector": "polished", "screen": "none", "length": length}

        async def act() -> None:
            if who not in self.log.boxes:
                told = {"name": "Box", **box, "distance": f"{inches}in"}
                await self._answered("mine save", told, who)
                self.log.boxes[who] = told
            told = self.log.boxes[who]
            given = {"name": "Box", "uvi": f"{value}", "distance": told["distance"]}
            await self._answered("mine reading", given, who)
            self.log.readings.setdefault(who, {})[self.today(week)] = value
            if offers:
                given = {"name": "Box", "sure": "yes"}
                answer = await self._answered("mine offer", given, who)
                if "Thank you" in answer.text:
                    self.log.offered.setdefault(who, []).append((self.today(week), value))
                else:
                    self.log.refused += 1

        return act

    def _is_reminded(self, who: Person) -> Callable[[], Coroutine[None, None, None]]:
        async def act() -> None:
            listed = await self._answered("remind list", {}, who)
            # What was kept before its answer got lost is not asked for twice.
            if "replace the UV tube" not in listed.text:
                await self._answered("remind me", {"about": "tube", "when": "in 2 weeks"}, who)
            self.log.reminded.add(who)

        return act

    async def _answered(self, name: str, given: Mapping[str, str], who: Person) -> Answer:
        """Ask until there is an answer."""
        while (answer := await self._answered_once(name, given, who)) is None:
            self.log.again += 1
        return answer

    async def _answered_once(
        self, name: str, given: Mapping[str, str], who: Person
    ) -> Answer | None:
        where, born = in_server(self.group_of(who)), time.monotonic()
        asked = await self.world.begin(name, given, user=who, where=where)
        try:
            await self.world.platform.until(
                lambda: asked.callback is not None and not self._loading(asked),
                name,
                within_s=_LOST_AFTER_S,
            )
        except AssertionError:
            return None
        self._times.append(time.monotonic() - born)
        return Answer(self.world.platform, asked)

    def _loading(self, asked: Exchange) -> bool:
        answer = Answer(self.world.platform, asked)
        return answer.kind == 5 and answer.post.loading

    @staticmethod
    def group_of(who: Person) -> Server:
        """Return the group that a person is in."""
        return GROUPS[who.id % 2]

    async def _all_reminded(self) -> None:
        await self.world.platform.until(
            lambda: all(messages_to(self.world, who) for who in self.log.reminded),
            "the reminders",
            within_s=120.0,
        )


assert {shard_of(group.id, 2) for group in GROUPS} == {0, 1}
