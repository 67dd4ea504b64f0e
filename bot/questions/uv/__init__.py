"""Questions about the UV lamp that have moved to facts and messages."""
