"""Settings from the environment, prefix NOONSTONE_; built by ``__main__`` and nowhere else."""

from pathlib import Path
from typing import Annotated, Literal
from urllib.parse import unquote, urlsplit

from pydantic import Field, SecretStr
from pydantic_settings import BaseSettings, SettingsConfigDict

from bot.language.quantities import Units

__all__ = ["Settings"]


class Settings(BaseSettings):
    """Everything that can be set from outside."""

    model_config = SettingsConfigDict(
        env_prefix="NOONSTONE_", frozen=True, extra="ignore", env_ignore_empty=True
    )

    token: SecretStr | None = None
    database_url: SecretStr = SecretStr("")
    data_dir: Path | None = None
    guide_url: str = ""
    units: Units | None = None
    health_port: Annotated[int, Field(ge=1, le=65535)] | None = None
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


def _password(address: str) -> str:
    try:
        return urlsplit(address).password or ""
    except ValueError:
        # An address that cannot be read is refused later; all of it is a secret until then.
        return address
