"""Settings from the environment, prefix NOONSTONE_; built by ``command_line`` and nowhere else."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path
from typing import Annotated, Literal
from urllib.parse import unquote, urlsplit

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, SecretStr

from bot.language.quantities import Units
from bot.preferences import Language

__all__ = ["PREFIX", "Settings", "Shards", "ShardsError", "settings_of"]

PREFIX = "NOONSTONE_"
_MOST_SHARDS = 10_000


class ShardsFault(StrEnum):
    """Why shards cannot be these."""

    FORM = "form"
    COUNT = "count"
    TWICE = "twice"
    ORDER = "order"
    BEYOND = "beyond"


class ShardsError(ValueError):
    """Shards that cannot be; ``count`` is how many there are, or may be."""

    def __init__(self, fault: ShardsFault, count: int = 0) -> None:
        super().__init__(fault.value)
        self.fault, self.count = fault, count


@dataclass(frozen=True, slots=True)
class Shards:
    """The connections to Discord that this process takes, of how many in all."""

    ids: tuple[int, ...]
    count: int


def _read_shards(text: object) -> object:
    """Read ``0,1/4``: shards 0 and 1 of 4; ``0-3/16`` works too."""
    if not isinstance(text, str):
        return text
    match = re.fullmatch(r"(\d+(?:-\d+)?(?:,\d+(?:-\d+)?)*)/(\d+)", "".join(text.split()))
    if match is None:
        raise ShardsError(ShardsFault.FORM)
    count = int(match[2])
    if not 1 <= count <= _MOST_SHARDS:
        raise ShardsError(ShardsFault.COUNT, _MOST_SHARDS)
    ids = tuple(i for part in match[1].split(",") for i in _span(part, count))
    if len(set(ids)) < len(ids):
        raise ShardsError(ShardsFault.TWICE)
    return Shards(ids, count)


def _span(part: str, count: int) -> range:
    first, _, last = part.partition("-")
    span = range(int(first), int(last or first) + 1)
    if not span:
        raise ShardsError(ShardsFault.ORDER)
    if span.stop > count:
        raise ShardsError(ShardsFault.BEYOND, count)
    return span


class Settings(BaseModel):
    """Everything that can be set from outside."""

    model_config = ConfigDict(frozen=True)

    token: SecretStr | None = None
    database_url: SecretStr = SecretStr("")
    data_dir: Path | None = None
    guide_url: str = ""
    units: Units | None = None
    # None: that of the asker's own sentence, else English.
    language: Language | None = None
    # On Discord; a page has both.
    pictures: Literal["dark", "light"] = "dark"
    health_port: Annotated[int, Field(ge=1, le=65535)] | None = None
    shards: Annotated[Shards | None, BeforeValidator(_read_shards)] = None
    log: Literal["debug", "info", "warning", "error"] = "info"

    def data_folder(self) -> Path:
        """Return the folder for what is kept: the one set, or the user's data folder."""
        if self.data_dir is not None:
            return self.data_dir
        from platformdirs import user_data_path

        return user_data_path("noonstone", appauthor=False)

    def secrets(self) -> tuple[str, ...]:
        """Return what must never be shown in a log: also the password inside an address."""
        address = self.database_url.get_secret_value()
        secrets = [self.token.get_secret_value()] if self.token else []
        if password := _password(address):
            secrets += [address, password, unquote(password)]
        return tuple(secrets)


def settings_of(environment: Mapping[str, str]) -> Settings:
    """Return what is set in an environment; an empty variable is one that is not set."""
    set_there = {name: environment.get(PREFIX + name.upper()) for name in Settings.model_fields}
    return Settings.model_validate({name: text for name, text in set_there.items() if text})


def _password(address: str) -> str:
    try:
        return urlsplit(address).password or ""
    except ValueError:
        # An address that cannot be read is refused later; all of it is a secret until then.
        return address
