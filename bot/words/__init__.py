"""The words of every language, as files that a translator changes without reading Python."""
