"""Questions about a whole set-up."""
