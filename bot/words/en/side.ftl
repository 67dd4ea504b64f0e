### What a drawing of an enclosure calls its parts.

side-warm = warm end
side-cool = cool end
side-screen = mesh
side-lamp = heat lamp
side-tube = UV tube
side-stand = platform
side-from-warm = Seen from the warm end, through the platform
