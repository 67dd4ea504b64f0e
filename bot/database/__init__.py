"""What Noonstone remembers, in SQLite or PostgreSQL: settings, figures, enclosures, reminders.

No message text is kept, ever. ``open_store`` gives a Store with one repository a topic.
"""

__all__ = ["FILE_NAME"]

FILE_NAME = "noonstone.sqlite3"
"""The file in the data folder, where no other address is set."""
