"""The check-up with Discord: a good token, a wrong one, none, and no way to Discord."""

import re
from pathlib import Path
from typing import Any

import pytest

from bot.fronts.discord.trial import PERMISSIONS, discord_findings
from bot.operating.checkup import State
from tests.bot.refusing import said
from tests.discord import http
from tests.discord.payloads import application
from tests.discord.test_process import ended, started
from tests.discord.world import World

ROOT = Path(__file__).parent.parent.parent


def told(findings: list[Any]) -> list[tuple[str, State]]:
    return [(finding.part.value, finding.state) for finding in findings]


def test_the_permissions_are_those_of_the_readme() -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    found = re.search(r"permissions integer\s+`(\d+)`", readme)
    assert found
    assert int(found[1]) == PERMISSIONS.value


async def test_a_good_token_is_fine_and_the_invitation_is_told(world: World) -> None:
    findings = await discord_findings(world.platform.token)
    assert told(findings) == [("token", State.FINE), ("permissions", State.FINE)]
    assert f"permissions={PERMISSIONS.value}" in said(findings[1].told)
    assert world.gateway.identifies == 0


@pytest.mark.parametrize(
    ("lacking", "state"), [(0, State.FINE), (1 << 51, State.TO_DO), (1 << 15, State.TO_DO)]
)
async def test_an_install_link_that_lacks_a_permission_is_told(
    world: World, monkeypatch: pytest.MonkeyPatch, lacking: int, state: State
) -> None:
    preset = {"scopes": ["bot"], "permissions": str(PERMISSIONS.value & ~lacking)}
    monkeypatch.setattr(http, "application", lambda: {**application(), "install_params": preset})
    findings = await discord_findings(world.platform.token)
    assert findings[1].state is state
    assert ("lacks" in said(findings[1].told)) is bool(lacking)


async def test_a_refused_token_is_to_be_renewed(world: World) -> None:
    findings = await discord_findings("another.token.entirely")
    assert told(findings) == [("token", State.TO_DO), ("permissions", State.UNKNOWN)]
    assert "another" not in said(findings[0].told)


async def test_no_token_is_to_be_set(world: World) -> None:
    assert told(await discord_findings(None))[0] == ("token", State.TO_DO)
    assert world.platform.seen == []


async def test_no_way_to_discord_is_no_fault_of_the_token(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("discord.http.Route.BASE", "http://127.0.0.1:9/api/v10")
    findings = await discord_findings(world.platform.token)
    assert told(findings) == [("token", State.UNKNOWN), ("permissions", State.UNKNOWN)]


@pytest.mark.slow
@pytest.mark.parametrize(("token", "code"), [("loopback", 0), ("wrong-and-secret", 2)])
async def test_the_doctor_ends_with_a_code_and_shows_no_secret(
    world: World, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, token: str, code: int
) -> None:
    monkeypatch.setenv("NOONSTONE_LOG", "debug")
    process = await started(world, tmp_path, token=token, door="doctor")
    output, (ended_with, errors) = await process.stdout.read(), await ended(process)  # type: ignore[union-attr]
    lines = output.decode().splitlines()
    assert ended_with == code
    assert len(lines) == 9
    assert lines[-1] == ("1 to do." if code else "Nothing to do.")
    assert "secret" not in output.decode() + errors
    assert "Traceback" not in errors
