### Facts: AsLine, Lacks, Short, OwnAnimalNamed, OwnNamed, UsualAnimal, Quoted, Read, ReadOn, UnitTaken
### What the door says around every answer.

door-title-asked = Good to know first
door-short = { $title }.
door-lacks = I still need { LIST($names, join: "list-and") }.
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
door-line = { $line }
door-label-own = The group's own
door-own-tube = tube “{ $name }”: { $told }
door-own-screen = screen “{ $name }”: { $told }
door-own-animal = animal “{ $name }”: its figures were set by this group, on { DAY($set_on) }; where it set no limit, a careful one of mine holds
door-own-usual = no animal was named, so I took the group's: { NAME($animal) }
door-thanks = You are welcome.
door-anew = Done. Ask me something new.
door-no-words = Ask me about light or heat, in your own words.
door-vets = Your group's vets: { $text }.
door-label-vets = Vets of your group
door-photo = I cannot see pictures. Tell me: which animal, which lamp and how far away, and what you read or see.
door-alone = Here I answer each person alone.
