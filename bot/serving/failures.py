"""What nobody expected, in the log under a number that the asker is told."""

import logging
import secrets

__all__ = ["note_failure"]

_log = logging.getLogger(__name__)


def note_failure(error: BaseException, doing: str) -> str:
    """Log an unexpected error and return the id under which it stands in the log."""
    number = secrets.token_hex(3)
    _log.error("failure %s while %s", number, doing, exc_info=error)
    return number
