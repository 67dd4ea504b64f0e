"""What people type: words, names and quantities; nothing here knows an answer."""
