"""What Noonstone remembers, in SQLite or PostgreSQL: settings, figures, enclosures, reminders.

No message text is kept, ever. ``open_store`` gives a Store with one repository a topic.
"""
