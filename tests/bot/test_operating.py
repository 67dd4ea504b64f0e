"""Logs without secrets, health on localhost, files to install the bot with."""

import asyncio
import configparser
import io
import json
import logging
from pathlib import Path

import pytest
from aiohttp.test_utils import TestClient, TestServer

from bot.operating.deploy import Kind, deployment
from bot.operating.health import health_app
from bot.operating.logs import HideSecrets, start_logging
from bot.operating.metrics import Metrics
from bot.operating.stalls import Stalls, watch_stalls

SECRET = "abc.def.ghi-secret-token"


@pytest.fixture
def logged(monkeypatch: pytest.MonkeyPatch) -> io.StringIO:
    stream = io.StringIO()
    monkeypatch.setattr("sys.stderr", stream)
    start_logging("info", [SECRET, "x"])
    return stream


def test_a_record_is_one_line_of_json(logged: io.StringIO) -> None:
    logging.getLogger("bot.test").info("answered %s", "distance")
    entry = json.loads(logged.getvalue())
    assert entry["message"] == "answered distance"
    assert entry["level"] == "INFO"
    assert entry["from"] == "bot.test"


def test_a_secret_is_hidden_in_message_arguments_and_traceback(logged: io.StringIO) -> None:
    log = logging.getLogger("bot.test")
    log.warning("login with %s failed", SECRET)
    try:
        raise ValueError(f"bad {SECRET}")
    except ValueError:
        log.exception("again")
    assert SECRET not in logged.getvalue()
    assert logged.getvalue().count("[hidden]") >= 2
    assert "Traceback" in logged.getvalue()


@pytest.mark.parametrize(
    ("level", "for_a_person", "heard"),
    [
        ("debug", True, ["bot DEBUG", "lib DEBUG", "lib INFO", "lib WARNING", "lib ERROR"]),
        ("info", False, ["bot INFO", "lib WARNING", "lib ERROR"]),
        ("info", True, ["lib ERROR"]),
        ("error", False, ["lib ERROR"]),
    ],
)
def test_libraries_are_heard_only_of_trouble(
    monkeypatch: pytest.MonkeyPatch, level: str, for_a_person: bool, heard: list[str]
) -> None:
    stream = io.StringIO()
    monkeypatch.setattr("sys.stderr", stream)
    start_logging(level, [], for_a_person=for_a_person)
    own = logging.DEBUG if level == "debug" else logging.INFO
    logging.getLogger("bot.test").log(own, "told")
    for at in (logging.DEBUG, logging.INFO, logging.WARNING, logging.ERROR):
        logging.getLogger("lib.test").log(at, "told")
    entries = [json.loads(line) for line in stream.getvalue().splitlines()]
    assert [f"{e['from'].split('.')[0]} {e['level']}" for e in entries] == heard


def test_hiding_never_drops_a_record() -> None:
    record = logging.LogRecord("n", logging.INFO, "p", 1, "%s", (SECRET,), None)
    assert HideSecrets([SECRET]).filter(record)
    assert record.getMessage() == "[hidden]"


async def test_health_tells_each_part_and_metrics_count_without_names() -> None:
    metrics = Metrics()
    metrics.questions.labels("distance", "ok").inc()
    parts = {"gateway": "", "database": ""}

    async def checks() -> dict[str, str]:
        return parts

    async with TestClient(TestServer(health_app(checks, metrics))) as client:
        assert (await client.get("/healthz")).status == 200
        text = await (await client.get("/metrics")).text()
        assert 'noonstone_questions_total{outcome="ok",question="distance"} 1.0' in text
        parts["database"] = "its disk is full"
        answer = await client.get("/healthz")
        assert answer.status == 503
        told = await answer.json()
        assert told["parts"] == {"gateway": True, "database": False}
        assert told["causes"] == {"database": "its disk is full"}


def test_the_systemd_unit_is_readable_and_starts_this_bot() -> None:
    text = deployment(Kind.SYSTEMD, Path("/opt/n/.venv/bin/python"), Path("/opt/n"))
    unit = configparser.ConfigParser(strict=False, interpolation=None)
    unit.read_string(text)
    assert unit["Service"]["ExecStart"] == "/opt/n/.venv/bin/python -m bot discord"
    assert int(unit["Service"]["TimeoutStopSec"]) > 10


def test_the_container_file_copies_only_what_exists() -> None:
    root = Path(__file__).parent.parent.parent
    text = deployment(Kind.CONTAINER, Path("python"), root)
    copied = [line.split()[1:-1] for line in text.splitlines() if line.startswith("COPY")]
    assert copied
    for name in (name for names in copied for name in names):
        assert (root / name).exists(), name


def test_the_longest_stall_of_the_last_minute_is_told() -> None:
    stalls = Stalls()
    assert stalls.longest_s(0.0) == 0.0
    for now, late in ((1.0, 0.2), (2.0, 0.5), (3.0, 0.1), (50.0, 0.3), (51.0, 0.0)):
        stalls.note(now, late)
    assert stalls.longest_s(60.0) == 0.5
    assert stalls.longest_s(62.5) == 0.3
    assert stalls.longest_s(110.5) == 0.0
    assert stalls.longest_s(1000.0) == 0.0


async def test_a_blocked_loop_is_noticed() -> None:
    stalls = Stalls()
    watch = asyncio.create_task(watch_stalls(stalls))
    loop = asyncio.get_running_loop()
    await asyncio.sleep(0)
    blocked_until = loop.time() + 0.3
    while loop.time() < blocked_until:
        pass
    while not stalls.longest_s(loop.time()):
        await asyncio.sleep(0)
    watch.cancel()
    assert stalls.longest_s(loop.time()) > 0.1
