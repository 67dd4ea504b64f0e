"""The tables as they are today; the migrations lead there from every earlier version."""

from bot.database.group_tables import (
    AnimalRow,
    BoardRow,
    ChangeRow,
    ChannelRow,
    CountRow,
    LampRow,
    PostRow,
    PublicRow,
    ScreenRow,
    ServerRow,
    TargetRow,
    WrongRow,
)
from bot.database.keeper_tables import (
    AdviceRow,
    CaseRow,
    EnclosureRow,
    KeeperRow,
    ReadingRow,
    ReminderRow,
    SpareRow,
    ToldRow,
)
from bot.database.table import ROW_ID, Table, UtcTime

__all__ = [
    "ROW_ID",
    "AdviceRow",
    "AnimalRow",
    "BoardRow",
    "CaseRow",
    "ChangeRow",
    "ChannelRow",
    "CountRow",
    "EnclosureRow",
    "KeeperRow",
    "LampRow",
    "PostRow",
    "PublicRow",
    "ReadingRow",
    "ReminderRow",
    "ScreenRow",
    "ServerRow",
    "SpareRow",
    "Table",
    "TargetRow",
    "ToldRow",
    "UtcTime",
    "WrongRow",
]
