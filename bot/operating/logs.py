"""One line of JSON for each event on stderr, without personal text and without secrets.

What people type is never logged; a failure is logged with an id that the asker is shown too.
"""

import logging
import sys
from collections.abc import Iterable

__all__ = ["HideSecrets", "start_logging"]

_HIDDEN = "[hidden]"
_SHORTEST = 6
_OURS = "bot"


class HideSecrets(logging.Filter):
    """Takes secrets out of every record, also out of a traceback's text."""

    def __init__(self, secrets: Iterable[str]) -> None:
        super().__init__()
        self._secrets = sorted({s for s in secrets if len(s) >= _SHORTEST}, key=len, reverse=True)

    def filter(self, record: logging.LogRecord) -> bool:
        """Rewrite the record's texts; never drop it."""
        if record.exc_info and not record.exc_text:
            record.exc_text = logging.Formatter().formatException(record.exc_info)
        record.msg, record.args = self._cleaned(record.getMessage()), None
        if record.exc_text:
            # Without exc_info every formatter uses the cleaned text.
            record.exc_text, record.exc_info = self._cleaned(record.exc_text), None
        return True

    def _cleaned(self, text: str) -> str:
        for secret in self._secrets:
            text = text.replace(secret, _HIDDEN)
        return text


def start_logging(level: str, secrets: Iterable[str], *, for_a_person: bool = False) -> None:
    """Send every log record to stderr as a line of JSON, secrets hidden.

    The level is for the program's own records; libraries are heard from a warning on. Where a
    person reads the answers on a screen, only errors are. ``debug`` lets everything through.
    """
    from pythonjsonlogger.json import JsonFormatter

    handler = logging.StreamHandler(sys.stderr)
    handler.addFilter(HideSecrets(secrets))
    handler.setFormatter(
        JsonFormatter(
            "{asctime}{levelname}{name}{message}",
            style="{",
            rename_fields={"asctime": "time", "levelname": "level", "name": "from"},
        )
    )
    wanted = logging.getLevelNamesMapping()[level.upper()]
    own = libraries = wanted
    if wanted > logging.DEBUG:
        own = max(wanted, logging.ERROR if for_a_person else wanted)
        libraries = max(own, logging.WARNING)
    logging.basicConfig(level=libraries, handlers=[handler], force=True)
    logging.getLogger(_OURS).setLevel(own)
    # Its debug records hold every statement with its values: what people keep.
    logging.getLogger("aiosqlite").setLevel(max(logging.INFO, logging.getLogger().level))
