"""How light falls off by the shape of what shines: the same law for lumens and for ultraviolet."""
