"""Settings from the environment, and what of them must never be shown."""

import os
from pathlib import Path

import pytest

from bot.__main__ import main
from bot.settings import Settings, Shards, settings_of

TOKEN = "abc.def.ghi-token"


def test_nothing_need_be_set(monkeypatch: pytest.MonkeyPatch) -> None:
    for name in Settings.model_fields:
        monkeypatch.delenv(f"NOONSTONE_{name.upper()}", raising=False)
    settings = settings_of(os.environ)
    assert settings.token is None
    assert settings.secrets() == ()
    assert settings.data_folder().name == "noonstone"


def test_an_empty_variable_is_as_good_as_none(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("NOONSTONE_TOKEN", "")
    monkeypatch.setenv("NOONSTONE_HEALTH_PORT", "")
    assert settings_of(os.environ).token is None
    assert settings_of(os.environ).health_port is None


def test_the_data_folder_can_be_set(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("NOONSTONE_DATA_DIR", str(tmp_path))
    assert settings_of(os.environ).data_folder() == tmp_path


@pytest.mark.parametrize(
    ("address", "hidden"),
    [
        ("", ()),
        ("sqlite:////var/lib/noonstone/kept.sqlite3", ()),
        ("postgresql://moss@db/noon", ()),
        ("postgresql://moss:fern-leaf@db/noon", ("fern-leaf",)),
        ("postgresql://moss:fern%2Fleaf%40@db/noon", ("fern%2Fleaf%40", "fern/leaf@")),
        ("postgresql://moss:fern-leaf@[db/noon", ("postgresql://moss:fern-leaf@[db/noon",)),
    ],
)
def test_every_writing_of_a_password_is_a_secret(
    monkeypatch: pytest.MonkeyPatch, address: str, hidden: tuple[str, ...]
) -> None:
    monkeypatch.setenv("NOONSTONE_TOKEN", TOKEN)
    monkeypatch.setenv("NOONSTONE_DATABASE_URL", address)
    settings = settings_of(os.environ)
    assert {TOKEN, *hidden} <= set(settings.secrets())
    assert TOKEN not in repr(settings)
    assert not hidden or address not in repr(settings)


@pytest.mark.parametrize(
    ("text", "ids", "count"),
    [
        ("0/1", (0,), 1),
        ("0,1/4", (0, 1), 4),
        (" 2 , 3 / 4 ", (2, 3), 4),
        ("0-3,8/16", (0, 1, 2, 3, 8), 16),
    ],
)
def test_a_process_may_be_given_its_shards(
    monkeypatch: pytest.MonkeyPatch, text: str, ids: tuple[int, ...], count: int
) -> None:
    monkeypatch.setenv("NOONSTONE_SHARDS", text)
    assert settings_of(os.environ).shards == Shards(ids, count)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("4", "such as 0,1/4"),
        ("0,1", "such as 0,1/4"),
        ("a/4", "such as 0,1/4"),
        ("4/4", "the last is 3"),
        ("0/0", "at least 1"),
        ("3-1/4", "from the lower to the higher"),
        ("1,0-2/4", "a shard twice"),
        (f"0-{10**12}/{10**12}", "at most"),
        ("0/100000000", "at most"),
    ],
)
def test_shards_that_cannot_be_are_refused_in_a_sentence(
    monkeypatch: pytest.MonkeyPatch, text: str, words: str, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("NOONSTONE_SHARDS", text)
    assert main(["commands"]) == 2
    told = capsys.readouterr().err
    assert told.startswith("NOONSTONE_SHARDS cannot be ")
    assert words in told
    assert "Value error" not in told


@pytest.mark.parametrize(
    ("name", "text", "takes"),
    [
        ("UNITS", "ft", "cm"),
        ("PICTURES", "blue", "dark"),
        ("LOG", "loud", "info"),
        ("HEALTH_PORT", "0", "9100"),
        ("HEALTH_PORT", "http", "9100"),
        ("LANGUAGE", "tlh", "en"),
    ],
)
def test_a_setting_that_cannot_be_is_refused_with_one_that_can(
    monkeypatch: pytest.MonkeyPatch,
    name: str,
    text: str,
    takes: str,
    capsys: pytest.CaptureFixture[str],
) -> None:
    for language, cannot in (("en", "cannot be"), ("de", "kann nicht")):
        monkeypatch.setenv("NOONSTONE_LANGUAGE", language)
        monkeypatch.setenv(f"NOONSTONE_{name}", text)
        assert main(["commands"]) == 2
        told = capsys.readouterr().err
        assert told.startswith(f"NOONSTONE_{name} ")
        assert text in told
        assert takes in told
        assert cannot in told or name == "LANGUAGE"
    monkeypatch.setenv("NOONSTONE_LANGUAGE", "")
    monkeypatch.setenv(f"NOONSTONE_{name}", takes)
    assert main(["commands"]) == 0
