### An invented newcomer's morning: what is said, and where words are typed, these too.

demo-distance = I have a 12 % tube in a polished hood, hung inside, no screen. How high?
demo-temps = Three hours in. The stone reads 98 and the far end 75. Is that all right?
demo-night = It is 58 in here before sunrise. Do I have to heat all night?
demo-check = I do not know what to ask. I just tell you what I have.
demo-convert = What is 14 and a half inches in centimetres?
demo-typed-check = check hi my beardie has a 12% in a shiny hood on top of the mesh, its 14 inches to the log, basking 98, other side 75, what am i doing wrong
demo-rest = That was a morning. Where the rest is:
demo-rest-all = every question with its examples
demo-rest-full = all of one answer
demo-rest-console = ask your own
