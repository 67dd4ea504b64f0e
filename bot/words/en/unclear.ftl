### Facts: Choice, Spelled, Whole
### What is asked about words of a set-up that are not clear.

unclear-animal = I do not know this animal: which one is it?
unclear-which = Which animal is it?
unclear-which-of = Which one is it: { LIST($names, join: "list-or") }?
unclear-holds = Which is right: { LIST($names, join: "list-or") }?
unclear-long = This is more than I can read at once: can you say it shorter?
unclear-need = Write { $what }.
unclear-number = Which number is it? Write it with a point and no comma.
unclear-degrees = Is { $text } in °F or in °C?
unclear-where = Where was it measured: basking spot, warm end, cool end, night or room?
unclear-inches = Are these inches or centimetres?
unclear-far = No lamp hangs more than 3 m (10 ft) above an animal. What is it, such as 16in?
unclear-label = Labels of tubes go from 1% to 20%. Which one is on yours, such as 12%?
unclear-tube = Which strength is on the label of the tube that hangs there?
unclear-lamp = Do you use this lamp already?
unclear-between = What is between tube and animal, then: nothing, or a mesh and how much it blocks (45%)?
unclear-whose = Is { $text } the strength of the tube, or how much the mesh blocks? Then write: mesh blocks 45%
unclear-mesh = How much does this mesh block (45%), or what is its weave and wire (18x16 0.011in)? And is the tube over it or inside?
