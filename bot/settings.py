"""Settings from the environment, prefix NOONSTONE_; built by ``__main__`` and nowhere else."""

from pathlib import Path
from typing import Literal

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
    data_dir: Path | None = None
    guide_url: str = ""
    units: Units | None = None
    health_port: int | None = Field(None, ge=1, le=65535)
    log: Literal["debug", "info", "warning", "error"] = "info"

    def data_folder(self) -> Path:
        """Return the folder for what is kept: the one set, or the user's data folder."""
        if self.data_dir is not None:
            return self.data_dir
        from platformdirs import user_data_path

        return user_data_path("noonstone", appauthor=False)

    def secrets(self) -> tuple[str, ...]:
        """Return what must never be shown in a log."""
        return (self.token.get_secret_value(),) if self.token else ()
