"""Settings from the environment, and what of them must never be shown."""

from pathlib import Path

import pytest

from bot.settings import Settings

TOKEN = "abc.def.ghi-token"


def test_nothing_need_be_set(monkeypatch: pytest.MonkeyPatch) -> None:
    for name in Settings.model_fields:
        monkeypatch.delenv(f"NOONSTONE_{name.upper()}", raising=False)
    settings = Settings()
    assert settings.token is None
    assert settings.secrets() == ()
    assert settings.data_folder().name == "noonstone"


def test_an_empty_variable_is_as_good_as_none(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("NOONSTONE_TOKEN", "")
    monkeypatch.setenv("NOONSTONE_HEALTH_PORT", "")
    assert Settings().token is None
    assert Settings().health_port is None


def test_the_data_folder_can_be_set(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("NOONSTONE_DATA_DIR", str(tmp_path))
    assert Settings().data_folder() == tmp_path


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
    settings = Settings()
    assert {TOKEN, *hidden} <= set(settings.secrets())
    assert TOKEN not in repr(settings)
    assert not hidden or address not in repr(settings)
