"""The questions about visible light: how bright it is, how lamps are arranged, what next."""
