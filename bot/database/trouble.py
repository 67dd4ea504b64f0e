"""What a database refuses, as one plain error with its cause, and a line in the log."""

import errno
import logging
import sqlite3
from collections.abc import AsyncIterator, Mapping
from contextlib import asynccontextmanager

from sqlalchemy.exc import DataError, DBAPIError, IntegrityError
from sqlalchemy.exc import TimeoutError as PoolTimeoutError

from bot.database.errors import Cause, StoreUnavailableError

__all__ = ["cause_of", "telling_trouble"]

_log = logging.getLogger(__name__)

# PostgreSQL's class of a value that does not fit; others are named by their kind.
_WRONG_VALUE = "22"
# By the five signs of PostgreSQL (manual, appendix A), else by the first two, their class.
_BY_STATE: Mapping[str, Cause] = {
    "53100": Cause.FULL,
    "25006": Cause.READ_ONLY,
    "XX001": Cause.DAMAGED,
    "XX002": Cause.DAMAGED,
    "57P03": Cause.STARTING,
    "57014": Cause.BUSY,
    "28": Cause.REFUSED,
    "42": Cause.REFUSED,
    "3D": Cause.REFUSED,
    "3F": Cause.REFUSED,
    "53": Cause.BUSY,
    "40": Cause.BUSY,
    "55P03": Cause.BUSY,
    "55": Cause.REFUSED,
}
# SQLite's primary result codes (sqlite.org/rescode.html): the low byte of the extended ones.
_BY_CODE: Mapping[int, Cause] = {
    sqlite3.SQLITE_FULL: Cause.FULL,
    sqlite3.SQLITE_READONLY: Cause.READ_ONLY,
    sqlite3.SQLITE_CORRUPT: Cause.DAMAGED,
    sqlite3.SQLITE_NOTADB: Cause.DAMAGED,
    sqlite3.SQLITE_BUSY: Cause.BUSY,
    sqlite3.SQLITE_LOCKED: Cause.BUSY,
    sqlite3.SQLITE_PERM: Cause.REFUSED,
    sqlite3.SQLITE_AUTH: Cause.REFUSED,
}
_BY_ERRNO: Mapping[int, Cause] = {
    errno.ENOSPC: Cause.FULL,
    errno.EDQUOT: Cause.FULL,
    errno.EROFS: Cause.READ_ONLY,
    errno.EACCES: Cause.REFUSED,
    errno.EPERM: Cause.REFUSED,
}


@asynccontextmanager
async def telling_trouble() -> AsyncIterator[None]:
    """Turn whatever a database refuses into StoreUnavailableError, and say in the log what it was.

    Only a value or a rule of ours that it faults is our own mistake, and stays one.
    """
    try:
        yield
    except (DBAPIError, PoolTimeoutError, OSError) as error:
        if _is_our_mistake(error):
            raise
        cause = cause_of(error)
        _log.warning("the database refused: %s (%s)", cause.value, _named(error))
        raise StoreUnavailableError(cause) from error


def cause_of(error: BaseException) -> Cause:
    """Return why a database refused."""
    if isinstance(error, PoolTimeoutError):
        return Cause.BUSY
    if isinstance(error, OSError):
        return _BY_ERRNO.get(error.errno or 0, Cause.AWAY)
    state, root = _state(error), _root(error)
    if state:
        return _BY_STATE.get(state) or _BY_STATE.get(state[:2], Cause.AWAY)
    if isinstance(root, OSError):
        return cause_of(root)
    return _BY_CODE.get(getattr(root, "sqlite_errorcode", 0) & 0xFF, Cause.AWAY)


def _is_our_mistake(error: BaseException) -> bool:
    return isinstance(error, IntegrityError | DataError) or _state(error)[:2] == _WRONG_VALUE


def _named(error: BaseException) -> str:
    """Return what went wrong without its text, which may hold a statement and its values."""
    return " ".join(part for part in (type(_root(error)).__name__, _state(error)) if part)


def _root(error: BaseException) -> BaseException:
    """Return what the driver raised."""
    cause = error.orig if isinstance(error, DBAPIError) and error.orig is not None else error
    return cause.__cause__ or cause


def _state(error: BaseException) -> str:
    """Return the five signs by which PostgreSQL names an error, where it told them."""
    return str(getattr(getattr(error, "orig", None), "sqlstate", None) or "")
