### Facts: AnimalsMeant, Choice, Harmless, Room, SecondWord, Today, Closest, EitherOf, Spelled, UpTo, Whole
### What would do in place of a text that could not be read: stands behind "I need".

## Quantities
wanted-length = a length with its unit (in, ft, cm, mm or m)
wanted-temperature = a temperature with its unit (F or C)
wanted-difference = a temperature difference with its unit (F or C)
wanted-power = a wattage
wanted-time = a time with its unit (hours, days, months or years)
wanted-volume = a volume with its unit (gallons or litres)
wanted-convertible = a length, a temperature or a difference, with its unit (in, ft, cm, F or C)
wanted-above-zero = a temperature above absolute zero (−273.15 °C)
wanted-which-degrees = a temperature with its unit, { $text }F or { $text }C, whichever your thermometer shows
wanted-right-unit = the right unit, because a lit enclosure is hardly ever so cold: { $text }C if your thermometer shows °C
wanted-not-negative = { $what } that is not negative
wanted-one-value = one value and not a range
wanted-clear-number = one clear number, because it may be { $one } or { $other }
wanted-number = a number
wanted-number-range = a number or a range
wanted-percent = a percentage from 0% to 100%
wanted-setting = the gun's own setting, from 50% to 100%, as it shows it
wanted-size = length, depth and height with a unit
wanted-size-unit = length, depth and height with a unit, because these may be inches or centimetres
wanted-there = hides, side by side, uv meter, white light, long tube, two heat lamps, seasons or plants
wanted-white-lamps = a white lamp that does not warm, with its watts or lumens: white tube, led bar, led panel or led flood
wanted-lamps = lamps with their watts or lumens, parted by +
wanted-lamp-count = how many lamps of one kind, one to { $most }
wanted-lumens = lumens, as they stand on the label
wanted-lux = lux, or foot-candles with fc
wanted-beam = the angle of the beam in degrees

## Choices
wanted-choice = { LIST($names, join: "list-or") }{ $near ->
    [none] {""}
   *[some] {" "}(did you mean { $near }?)
  }
wanted-fixture = polished (a shiny reflector) or plain (white or no reflector){ $near ->
    [none] {""}
   *[some] {" "}(did you mean { $near }?)
  }
wanted-state = young, pale (albino), gravid, female, ill, quarantine or none
wanted-zone = a time zone by continent and city{ $near ->
    [none] {""}
   *[some] {" "}(did you mean { $near }?)
  }

## Tubes, screens and readings
wanted-tube = the strength on the label of a T5 HO tube, from 1% to 20%
wanted-tube-of-ho = the strength of a T5 HO tube, because I have no figures for other lamps: they need a UV index meter
wanted-one-lamp = one lamp here: for several small ones together, give readings taken under all of them
wanted-tubes = how many tubes hang side by side, one to { $most }
wanted-animals = one to { $most } animals, parted by “;”
wanted-strengths = one to { $most } strengths, parted by “;”
wanted-screens = one to { $most } screens, parted by “;”
wanted-screen = none, how much it blocks (45%), how much it passes, or its weave with the wire
wanted-screen-go-on = what it blocks, its weave with the wire (18x16 0.011in), or none. Cannot tell? Insect screen: about 45% (common practice, no source)
wanted-no-pane = no pane, or a mesh, because glass and most clear plastic take nearly all of the UV
wanted-share = a share from 0% to 100%
wanted-through = a screen that lets something through
wanted-wire = the weave and the thickness of its wire with a unit
wanted-thin-wire = a wire thinner than the step of the weave
wanted-placed = readings with their distances
wanted-dated = readings with their dates
wanted-one-figure = one figure for each reading
wanted-uvi = a UV index, because µW/cm² or mW is what another kind of meter shows and no fixed number turns it into a UV index
wanted-uvi-one = a UV index
wanted-other-set-up = another set-up: name what is different of it
wanted-line = a line of at most { $most } letters, digits and plain signs, or none
wanted-uvi-range = a range of the UV index
wanted-reminder = the number of a reminder
wanted-case = the number of a case
wanted-short-list = { $what }, in at most 1000 characters

## Time and place
wanted-date = a date as year-month-day, or with the month's name
wanted-date-calendar = a date that is in the calendar, as year-month-day
wanted-date-year = the date as year-month-day with four digits for the year
wanted-date-clear = one clear date, because it may be { $one } or { $other }
wanted-moment = when, as a time from now or as a day with a time of day
wanted-moment-ahead = a moment ahead, at most three years from now
wanted-clock = a time of day from 0:00 to 23:59
wanted-year = a year from 1950 to 2090
wanted-month = a month by its name or its number
wanted-latitude = a latitude from 0 to 90 degrees, north or south
wanted-latitude-side = either a minus or north or south
wanted-month-too = the month too, to compare with the sun
wanted-latitude-too = the latitude too, to compare with the sun
wanted-day-hours = hours of a day, above 0 and up to 24
wanted-uvi-up-to = a UV index above 0 and up to { $most }
wanted-an-hour = a number of posts an hour from 1 to { $most }, or none
wanted-role = a role, written as its mention, or none
wanted-weeks = a number of weeks from 1 to { $most }
wanted-how-often = how often, from every day to every 3 years

## Lines
wanted-short-line = a line of at most { $most } characters
wanted-question = a question
wanted-command = { $near ->
    [none] the name of a question, or your question in your own words
   *[some] the name of a question, perhaps { $near }
  }
wanted-second-word = { $first } with { LIST($seconds, join: "list-or") } behind it
wanted-once = { $text } once, and it is given twice
wanted-value = a value after { $text }:
wanted-options = options written as name:value ({ $near ->
    [none] {""}
   *[some] did you mean { $near }?{" "}
  }{ LIST($names, join: "list-and") })
wanted-small-file = a file of two megabytes at most
wanted-file-here = a file on this computer that can be read
wanted-name = a name of 1 to { $most } characters: a letter first, then letters, digits, spaces, hyphens, dots or apostrophes
wanted-scientific = a scientific name of plain letters
wanted-address = an address that starts with https:// and has at most 200 characters
wanted-nothing-more = nothing more here

## Animals
wanted-animal = the animal, because every animal needs its own light and warmth
wanted-animal-with-figures = an animal that I have figures for: never those of another
wanted-animal-near = an animal I know, perhaps { LIST($here, join: "list-or") }
wanted-animal-known = an animal that I know, by its common name
wanted-which-of = which one it is: { LIST($here, join: "list-or") }{ $more ->
    [yes] , or another by its own name
   *[no] {""}
  }
wanted-which-of-both = which one it is: { LIST($here, join: "list-or") } (I have no figures for the others)

## What an answer needs
wanted-uvi-trusted = the UV index that a keeper or reptile vet you trust named, because I know none for that animal
wanted-uvi-read = a UV index of { $most } at most: the meter may show µW/cm², which is another figure
wanted-uvi-not-zero = a range that does not start at 0
wanted-uvi-harmless = a UV index that does not harm { $animal ->
    [none] any animal I know
   *[some] { NAME($animal, form: "a") }
  }: { $own ->
    [none] {""}
   *[some] { UVI($own, form: "range") } is right,{" "}
  }{ UVI($now, form: "given") } is too strong
wanted-reading-near = a reading that tells something: read nearer to the tube, where the meter shows 1 or more
wanted-screen-or-without = either the screen or readings without it, because those tell what it passes
wanted-without-higher = readings without the screen that are higher than those with it
wanted-days-past = readings of days that have been, and today is { DAY($today) }
wanted-length-or-watts = the tube's length, or the watts printed on a T5 HO tube: { LIST($names, join: "list-or") } W
wanted-tube-that-fits = a tube that fits into the enclosure, { LENGTH($long) } long
wanted-reading-or-all = the number of a reading, or all
wanted-reading = the number of a reading
