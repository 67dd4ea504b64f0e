"""One module a version; a version that was released is never edited."""
