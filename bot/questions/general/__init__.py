"""Questions about an animal as a whole."""
