### Facts: Quoted, Read, ReadOn, UnitTaken
### What the door says around every answer.

door-title-asked = Good to know first
door-quoted = “{ $text }”
door-read = I read { LIST($words, join: "list-and") } in your words.
door-label-read-on = Read on
door-read-on = { $page }, the part “{ $part }”
door-label-question = Your question
door-more-full = More with --full
door-more-word = More (type a word, or all)
door-label-taken = Assumed
door-taken = { $name } { $text } has no unit, so I took it as { $unit }
door-label-understood = Understood as
