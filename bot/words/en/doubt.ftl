### Facts: Doubt
### Why a UV index is a range, the largest reason first.

doubt-first = The UV index is a range for these reasons, the largest first.
doubt-lamp = Two tubes of one kind differ, by about { SHARE($about) }.
doubt-class = The distances that keepers use scatter, by about { SHARE($about) }.
doubt-rules = Nobody says for how long a tube those distances are, about { SHARE($about) }.
doubt-label = This strength lies outside what I have figures for, about { SHARE($about) }.
doubt-fixture = Fixtures differ, by about { SHARE($about) }.
doubt-age = Tubes fade with age, and a new one is stronger for its first 100 hours, by about { SHARE($about) }.
doubt-temperature = Warmth changes the output, by about { SHARE($about) }.
doubt-tape = A tape measure can be off by a centimetre, about { SHARE($about) }.
doubt-screen = Screens differ in wire, dirt and shine, by about { SHARE($about) }.
doubt-readings = Your readings scatter and a hand meter can be off, by about { SHARE($about) }.
doubt-group = Tubes of this class differ among the keepers of your group, by about { SHARE($about) }.
doubt-spread = Reflectors spread UV sideways in their own way, about { SHARE($about) }.
doubt-length = I do not know how long the tube is, and that counts, by about { SHARE($about) }.
doubt-end-meter = A UV meter settles most of this.
doubt-end-yours = Your own readings have settled most of it.
doubt-end-groups = The group's readings have settled most of it.
doubt-end-again = Your readings contradict each other: read again.
