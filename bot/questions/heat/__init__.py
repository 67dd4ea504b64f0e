"""Questions about heat, nights and hours."""
