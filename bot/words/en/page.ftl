### Facts: PageTooLong, PageWait, PageFault, PageMost, Needs
### The words of the site around the guide and the answers.

## Around an answer
page-caution = Caution:

## A care sheet
page-sheet = Care sheet to print
page-sheet-print = Print this page: it is one sheet of paper, A4 or Letter.
page-sheet-keeper = Keeper, phone:
page-sheet-vet = Reptile vet, phone:
page-sheet-notes = Notes:
page-sheet-none = There is no care sheet of this question. Ask check or plan with your animal.

## Every page
page-language = English
page-described = Reptile light and heat, for beginners.
page-skip = Skip to the page
page-main = Main
page-all = All pages
page-look-up = Look it up
page-footer = Every number here is a starting point with a range. Your own thermometer, your own UV meter and your reptile vet know better. Follow your local electrical codes. Never look into a lit UV tube.
page-topic-start = Start here
page-topic-animals = Your animal
page-topic-uv = UV light
page-topic-heat = Heat
page-topic-day = Day and night
page-topic-safety = Staying safe

## The first page
page-index-title = Reptile light and heat, for beginners
page-index = Light and heat for your reptile, step by step
page-index-lead = How far should the UV tube hang? Is the basking spot too hot? Short pages in plain words, with the numbers in inches and °F, and in centimetres and °C.
page-start = Start here
page-by-steps = Ask step by step
page-guide = The guide
page-more = More
page-your-animal = Your animal
page-worries = What worries you?
page-worry-distance = How far should the tube hang?
page-worry-basking = Is the basking spot too hot?
page-worry-warm = Where does each lamp go?
page-worry-cool = The cool end is too warm or too cold
page-worry-night = Does the night need heat?
page-worry-hours = How long should the light be on?
page-worry-vet = It looks ill
page-worry-burns = Something burns or smells
page-worry-broken = A lamp broke
page-worry-worn = Is my tube worn out?
page-worry-bones = Soft bones, bent legs
page-worry-first = I have just got it
page-worry-else = Something else
page-home-alt = An enclosure from the side, with a tube, a heat lamp and an animal; numbers mark where each worry begins.
page-figure-lizard = Lizards
page-figure-gecko = Geckos
page-figure-snake = Snakes
page-figure-tortoise = Tortoises and turtles
page-figure-chameleon = Chameleons
page-figure-frog = Amphibians

## A page of the guide
page-ask-bot = Ask the bot
page-type-this = Type this, and put in your own numbers:
page-try-yours = Try it with your numbers
page-drawn = What the bot draws when you ask it:
page-it-answers = It answers:
page-next-reading = Read next to this
page-sources-here = Where this comes from
page-turn = Previous and next page
page-before = Before
page-next = Next
page-contents = On this page

## Animals
page-animals = Animals
page-animals-lead = What each animal wants, and how well each number is known.
page-column-animal = Animal
page-column-uvi = UV index where it basks
page-column-basking_surface = Warmest surface
page-column-cool_air = Cool-end air
page-unknown = not known here
page-needs-none = none needed
page-distances = Tube distances
page-animal-care = Measure before you trust a number, and watch your animal. If it looks ill, call a reptile vet.
page-ask-tube = tube distance:{ LENGTH($shelf, units: "first") } screen:none animal:{ $called }
page-ask-temps = temps { needs-readings }
page-ask-night = night room:{ TEMP($night, units: "first") } animal:{ $called }
page-ask-hours = hours latitude:home animal:{ $called }

## Words
page-glossary = Words and what they mean
page-glossary-lead = One name for one thing. The bot and this guide always use the name on the left.
page-also = Also called:

## Questions
page-questions = Every question you can ask
page-questions-short = Questions
page-questions-described = All the questions the bot answers, with their options and examples.
page-questions-lead = Type the name of a question, then each fact as a name, a colon and its value. Units can be inches or centimetres, °F or °C.
page-questions-try = Each example opens on its own page, and is answered there.
page-part-anyone = Ask right away
page-part-kept = What is kept for you
page-part-moderator = For moderators
page-kept-note = These read or change what is saved, so they work on Discord and at the console.
page-needed = needed
page-options = Examples, and what it takes
page-read-more = Read more:

## Search
page-search = Search
page-search-label = What are you looking for?
page-find = Find
page-found = Found:
page-ask-this = Ask this as a question instead
page-found-none = Nothing found. Try fewer words, or look in the list below.
page-everything = Everything in one list
page-pages = Pages
page-words = Words
page-entry-term = Glossary
page-entry-animal = Animal
page-entry-question = Question

## Sources
page-sources = Where the numbers come from
page-sources-lead = Every source behind the bot's sums and this guide, the best known first. A word such as “abstract” says how much of it we have read.
page-kind-standard = Standards: agreed by a body that sets rules.
page-kind-paper = Papers: measured, written down and published.
page-kind-handbook = Handbooks and public guidance.
page-kind-dataset = Open data: measurements anyone can read.
page-kind-derivation = Worked out here from other sources, and checked.
page-kind-common_practice = Common practice: keepers agree, but we have read no source.
page-kind-memory = From memory: widely said, or our own judgement. We could not check it.

## Asking on the site
page-ask = Ask
page-ask-question = Ask a question
page-ask-lead = Type a question as you would type it to the bot. Nothing is stored.
page-rather-steps = Rather one small question at a time?
page-your-question = Your question
page-units = Show first
page-units-typed = as I type it
page-units-in = inches and °F
page-units-cm = centimetres and °C
page-answer = Answer
page-known = What I know so far
page-begin-anew = Begin anew
page-can-ask = What you can ask
page-all-options = Every question with all its options
page-too-long = That is { $count } characters; at most { $most } fit.
page-wait = That was a lot of questions at once. Try again in { $seconds } s.

## What went wrong
page-sorry = Sorry
page-to-first = To the first page
page-missing = There is no such page here.
page-read-only = This page can only be read.
page-fault = Something broke on our side. Its number is { $number }.
page-unread = That could not be read. A question has at most { $most } characters.

## To take away
page-offline = Take the guide with you
page-offline-lead = Everything here can be read without a network.
page-offline-folder = As a folder
page-offline-archive = Download one file, unpack it, and open index.html in it. Pages, pictures and the search are all there. It asks nothing of any other machine.
page-offline-download = Download the guide
page-offline-copy = You are reading the copy: a folder that lies on your own device. Copy the whole folder to take it somewhere else.
page-offline-phone = On a phone
page-offline-opened = Every page that you open here stays on your device. Without a network you see it as it was. You came here instead of another page? That one was not kept yet.
page-keep-all = Keep all pages on this device
page-keep-busy = Keeping them. This takes a minute.
page-keep-done = All pages are kept. You can read them without a network.
page-keep-failed = It broke off. Try again with a better network.
page-offline-install = To have it among your apps, look in your browser's menu for “add to home screen” or “install”.
page-offline-paper = On paper
page-offline-print = Print any page: what leads around it is left out. The page of an animal is a good one for the door of its box.
page-offline-old = A copy does not renew itself. Fetch a new one once or twice a year: numbers here change when we learn more.
