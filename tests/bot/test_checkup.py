"""The check-up of the machine: what is fine is told, what is not says what to do."""

from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.fronts.doctor import report
from bot.operating.checkup import (
    Examined,
    Looked,
    State,
    clock_finding,
    folder_finding,
    packages_finding,
    python_finding,
    to_do,
)
from bot.operating.checkup import found as found_as
from tests.bot.refusing import said


def project(folder: Path, *wanted: str) -> Path:
    listed = ", ".join(f"'{line}'" for line in wanted)
    text = f"[project]\nname = 'x'\ndependencies = [{listed}]\n"
    (folder / "pyproject.toml").write_text(text, encoding="utf-8")
    return folder


def test_this_machine_is_fine(tmp_path: Path) -> None:
    findings = [python_finding(), packages_finding(), clock_finding(), folder_finding(tmp_path)]
    assert [f.state for f in findings] == [State.FINE] * 4, findings


def test_an_old_python_is_told() -> None:
    assert python_finding((3, 10, 12)).state is State.TO_DO
    assert python_finding((3, 11, 0)).state is State.FINE
    assert python_finding((4, 0, 0)).state is State.FINE


def test_a_package_that_is_missing_or_too_old_is_named(tmp_path: Path) -> None:
    found = packages_finding(project(tmp_path, "pydantic>=99", "no-such-thing>=1", "pydantic>=2"))
    assert found.state is State.TO_DO
    assert ", >=99)" in said(found.told)
    assert "no-such-thing (-)" in said(found.told)


def test_a_package_for_another_system_is_not_missed(tmp_path: Path) -> None:
    wanted = 'no-such-thing>=1; sys_platform == "nowhere"'
    assert packages_finding(project(tmp_path, wanted)).state is State.FINE


def test_without_a_checkout_what_was_installed_counts(tmp_path: Path) -> None:
    assert packages_finding(tmp_path, "pytest").state is State.FINE
    assert packages_finding(tmp_path, "no-such-program").state is State.TO_DO


def test_a_folder_that_is_not_there_yet_is_fine_and_is_not_made(tmp_path: Path) -> None:
    folder = tmp_path / "a" / "b"
    found = folder_finding(folder)
    assert found.state is State.FINE
    assert "made at the first start" in said(found.told)
    assert not folder.exists()


def test_a_folder_that_cannot_be_written_is_told(tmp_path: Path) -> None:
    file = tmp_path / "file"
    file.write_text("", encoding="utf-8")
    assert folder_finding(file / "folder").state is State.TO_DO
    assert folder_finding(Path("/proc/none")).state is State.TO_DO


def test_a_full_disk_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("shutil.disk_usage", lambda _: type("Usage", (), {"free": 99_000_000}))
    found = folder_finding(tmp_path)
    assert found.state is State.TO_DO
    assert said(found.told) == f"only 99 MB are free at {tmp_path}: make room."


@pytest.mark.parametrize("year", [1970, 2000, 2020])
def test_a_clock_that_is_behind_the_program_is_told(year: int) -> None:
    found = clock_finding(datetime(year, 1, 1, tzinfo=UTC).timestamp())
    assert found.state is State.TO_DO
    assert str(year) in said(found.told)


def test_time_zones_that_are_not_known_are_told() -> None:
    assert "pip install tzdata" in said(clock_finding(zone="Nowhere/Town").told)
    assert "pip install tzdata" in said(clock_finding(zone="UTC").told)


def test_the_report_has_a_line_for_each_part_and_counts_what_is_to_do() -> None:
    findings = [
        found_as(Looked.TOKEN, "token", Examined("noon"), State.UNKNOWN),
        to_do(Looked.CLOCK, "zones-wrong"),
        found_as(Looked.PYTHON, "python", Examined("3.11")),
    ]
    assert list(report(findings)) == [
        "not checked  token: Discord knows the bot as noon",
        "to do        clock: time zones are wrong here: pip install tzdata.",
        "fine         Python: 3.11",
        "1 to do.",
    ]
    assert list(report(findings, "de"))[2:] == ["gut            Python: 3.11", "1 zu tun."]
    assert list(report(findings[2:]))[-1] == "Nothing to do."
