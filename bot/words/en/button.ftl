### Facts: PageTitle, PagesFromTo, AnimalsFromTo
### What stands on buttons and lists.

button-picture = Picture
button-sheet = Care sheet
button-change = Change
button-fill = Fill in
button-which = Pick the one you mean
button-animals = Animal: { $first } to { $last }
button-share = Share
button-offer = Give it to the group
button-wrong = This is wrong
button-helper = Ask a helper
button-post-helper = Post this
button-board-post = Post it here
button-reply = Reply in the channel
button-ask-missing = Ask what is missing
button-correct = Correct
button-in = In inches
button-cm = In cm
button-sure = Yes, delete for good
button-agree = I agree
button-case = Open the case
button-show = Show it to me
button-all = Show all

## The part that is open
button-hide-steps = Hide steps
button-hide-numbers = Hide numbers
button-hide-why = Hide why
button-hide-care = Hide care
button-hide-sources = Hide sources

## The guide
button-page-open = Guide: { $title }
button-page-back = Back: { $title }
button-page-on = Next: { $title }
button-pages = Another page of the guide
button-pages-from = Pages { $first } to { $last } of the guide
button-welcome-animal = I have a new animal
button-welcome-check = Check my set-up
button-welcome-reading = Is this reading right?
button-welcome-wrong = Something is wrong
