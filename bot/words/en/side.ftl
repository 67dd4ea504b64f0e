### What a drawing of an enclosure calls its parts.

side-warm = warm end
side-cool = cool end
side-screen = mesh
side-lamp = heat lamp
