### Facts: KeptPicture
### What the console says around its answers.

console-greeting = Noonstone. Type a question, for example:
console-greeting-help = help lists what I can answer; leave with quit.
console-picture = Picture: { $file }
console-no-picture = There is no picture of this answer.
console-with = --with takes the dialogue that ask --json printed.
