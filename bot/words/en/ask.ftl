### Facts: AboutLamp, AnimalsMeant, ForExample, ForOne, Needed, NotFor, Offered, ToRead
### What is said to a question in the asker's own words that is not answered at once.

ask-title-which = Which one do you mean?
ask-for-one = For { NAME($animal, form: "a") }: { $told }
ask-only-for = This is for { NAME($animal, form: "a") } alone.
ask-title-this = Do you mean this?
ask-title-beyond = Not a question for me

## Several questions may be meant
ask-unsure = I am not sure what you mean. Which is it?
ask-unsure-this = I am not sure what you mean. Is it this?
ask-offer = { $purpose }: { $example }
ask-where = Where do you read that? Each place has its own range.
ask-where-basking = On the basking spot: { $example }
ask-where-cool = In the air of the cool end: { $example }
ask-where-room = In the room at night: { $example }
ask-read = Read about it: { $example }
ask-read-of = Read: { $title }
ask-about-lamp = About { NAME($lamp, form: "a") }: { $example }

## Something is missing
ask-missing = { $count ->
    [1] I need one more thing. Tell me { LIST($things, join: "list-semi") }.
    [2] I need two more things. Tell me { LIST($things, join: "list-semi") }.
    [3] I need three more things. Tell me { LIST($things, join: "list-semi") }.
   *[other] I need a few more things. Tell me { LIST($things, join: "list-semi") }.
  }
ask-which = which one it is: { LIST($here, join: "list-or") }{ $more ->
    [yes] , or another by its own name
   *[no] {""}
  }
ask-which-both = which one it is: { LIST($here, join: "list-or") } (I have no figures for the others)
ask-example = For example: { $example }
ask-or = Or did you mean: { $example }
ask-line = { $example }

## Something was assumed

## What is not for me
ask-beyond = I cannot help with that. I only work out UV light, heat, nights and hours of light. For this, ask the people of your group.
ask-what-i-can = What I can tell you: { $example }
ask-all-of-mine = All my questions: help

## What each question is for
ask-purpose-air = How many watts warm the whole box
ask-purpose-arrange = Which way the lamps should hang
ask-purpose-basking = How to get the basking spot hotter or cooler
ask-purpose-bright = How bright the basking place is
ask-purpose-check = Have a whole set-up checked
ask-purpose-compare = Which of two tubes is right
ask-purpose-convert = Inches to cm, °F to °C
ask-purpose-decline = Whether a tube is too old
ask-purpose-distance = How far away the UV tube should be
ask-purpose-hours = How many hours of light a day
ask-purpose-lamp = What a kind of lamp is good for
ask-purpose-meter = What your UV meter readings say
ask-purpose-needs = What your animal needs, UV and warmth
ask-purpose-next = What the next step for your set-up is
ask-purpose-night = Whether the night is too cold
ask-purpose-outdoors = What real sun gives at your place
ask-purpose-plan = Plan a whole set-up
ask-purpose-surface = What a surface really is when a gun reads it
ask-purpose-temps = What your temperatures mean
ask-purpose-tube = Which tube to take, and where it hangs
ask-purpose-uvi = How strong the UV is at a distance
ask-purpose-watts = What wattage the basking lamp needs
ask-purpose-section = Where the UV goes in the box, and where shade is
ask-purpose-dose = How much UV a day under the tube gives
ask-purpose-card = A table of distances for your animal
