### Facts: FlatHours, Seasons, HomeUnknown, MonthLit, ClockChange, Outside

hours-title = Hours of light for { NAME($animal, form: "a") }
hours-title-year = The light of { hours-place }, month by month
# Only with: $home_of
hours-title-home = The light of { hours-place }, the middle of where { NAME($home_of, form: "a") } comes from
hours-place = { ANGLE($latitude) } { $south ->
    [yes] S
   *[no] N
  }

## The answer in brief: a day that is the same all year
hours-simple = 12 hours on, 12 hours off, all year.
hours-times = On at { CLOCK($on) }, off at { CLOCK($off) }: UV and heat together.
hours-judged-far_too_low = No: { HOURS($lit) } of light is far too short.
hours-judged-low = No: { HOURS($lit) } of light is too short.
hours-judged-probably_low = Maybe. { HOURS($lit) } of light is probably a bit short.
hours-judged-fine = Yes: { HOURS($lit) } of light is right.
hours-judged-cannot_tell = I cannot tell whether { HOURS($lit) } of light is right.
hours-judged-probably_high = Maybe. { HOURS($lit) } of light is probably a bit long.
hours-judged-high = No: { HOURS($lit) } of light is too long.
hours-judged-dangerous = No: { HOURS($lit) } of light does harm.
# Only with: $target
hours-aim = { CLOCK($on) } to { CLOCK($off) }. Aim for { HOURS($target, form: "range") }.
hours-unjudged = That is { HOURS($lit) } of light.
hours-no-target = I know no target for { NAME($animal, form: "a") }.
hours-night = Is that meant? The lights burn from { CLOCK($on) } to { CLOCK($off) }.
hours-awake = { CAP($animal, form: "your") } is awake by day.
hours-asleep = That is right only if its room stays dark by day.
# Only with: $target
hours-lit-at-night = It is { HOURS($lit) } of light. Aim for { HOURS($target, form: "range") }.
hours-do-set = Set a timer once. Keep it at weekends too.
hours-do-keep = Leave the timer as it is.
hours-do-twelve = Set the timer to 12 hours on, by day.
hours-do-morning = If not, ask hours with on:{ CLOCK($morning) }.

## The answer in brief: the light of a year
hours-steady = { HOURS($least) } in every month.
hours-seasons = { HOURS($least) } in { $least_month }, { HOURS($most) } in { $most_month }.
hours-just-as-good = Beginner? 12 hours all year will do.
hours-turned-short = Turned to a June summer. South? months:own.
hours-south-short = Its summer is in December. months:turned swaps that.
hours-no-zone-short = No zone told: standard time all year.
hours-do-month = Set the timer to each month's row.
hours-no-home-title = I do not know its home
hours-no-home = I do not know where { NAME($animal, form: "a") } comes from.
hours-no-home-do = Name a latitude, such as latitude:30S.

## Why
hours-why-flat = 12 hours on and 12 hours off, all year, is a fine answer for { NAME($animal, form: "a") }. It needs the dark hours as much as the light ones.

## Steps
hours-step-morning = Want 12 hours by day? Ask hours with on:{ CLOCK($morning) }. Light at night is right only where the room stays dark by day, so that the animal has 12 dark hours all the same.
hours-step-set = Set a timer once, at hours that suit your own day, and keep them at weekends too.
hours-step-one-timer = Put the UV tube and the basking lamp on one timer that can bear the watts of both.
hours-step-dark = Switch off everything that shines at night. A dark night is part of the day.
hours-step-seasons = Want seasons? Ask hours with latitude:home and your zone, such as zone:America/Chicago.
hours-step-month = Change the timer once a month, to the row of the month.
hours-step-rest = Seasons can change appetite and start breeding or a winter rest. If you are not ready for that, stay with 12 hours.

## Numbers
hours-label-simple = The simple answer
hours-simple-known = 12 hours on, 12 hours off, all year (common practice, no source)
hours-label-told = Your lights
hours-told = { CLOCK($on) } to { CLOCK($off) }, { HOURS($lit) } of light
hours-label-target = Keepers use
# Only with: $target, $target_known
hours-target = { HOURS($target, form: "range") } over the year for { NAME($animal, form: "a") } ({ $target_known })
hours-label-unused = Not used
hours-unused-flat = { LIST($unused) }: it counts only with a latitude, such as latitude:home
hours-unused-seasons = { LIST($unused) }: lights that follow the seasons are centred on noon, as the sun is
hours-label-latitude = Latitude
hours-latitude = { hours-place }. South of the equator write it with S, such as 30S.
hours-label-bound = Bound
hours-bound = Never shorter than { HOURS($bound, form: "low") } nor longer than { HOURS($bound, form: "high") }, whatever the sky does. That limit is our own.
hours-label-day = Day
hours-day-meant = From sunrise to sunset, the mean of each month. Twilight is not counted.
hours-label-clock = Clock
# Only with: $zone
hours-clock = { $changing ->
    [yes] { $zone }. The clocks change on { LIST($changes) }. The times hold for the middle of each month.
   *[no] { $zone }, where the clocks do not change.
  }
hours-day = { DAY($day) }
hours-no-zone = You told no time zone, so these are standard times all year. Move the timer by an hour when your clocks change, or ask with your zone, such as zone:America/Chicago.
hours-label-seasons = Seasons
hours-turned = Turned by half a year, so that its summer falls in the other half of the calendar.
hours-south = Those of the southern half of the earth: summer is in December. months:turned swaps them.
hours-label-polar = Polar
hours-polar = { $polar_all_year ->
    [yes] There, all year, the sun there never sets or never rises. The bound holds.
   *[no] In { LIST($polar) } the sun there never sets or never rises. The bound holds.
  }
hours-column-month = Month
hours-column-lit = Lights
hours-column-on = On
hours-column-off = Off
hours-column-outside = Day outside there
hours-cell-lit = { HOURS($lit) }
hours-cell-on = { CLOCK($on) }
hours-cell-off = { CLOCK($off) }
hours-cell-outside = { HOURS($outside) }

## Care
hours-care = More hours do not make up for a weak tube, and lights on all night do harm.
hours-care-short = Lights on all night do harm.

## The picture
hours-picture-alt-day = A day as a bar: when the lights are on, and the dark night.
hours-picture-on = on { CLOCK($on) }
hours-picture-off = off { CLOCK($off) }
hours-picture-dark = dark
hours-picture-lights = lights
hours-picture-title = The light of { hours-place }
hours-picture-subtitle = hours of light a day, over the year
hours-picture-axis = Hours a day
hours-picture-timer = your timer
hours-picture-outside = sunrise to sunset
hours-picture-note = Steps: what the timer is set to, once a month. Dashed: the day outside there. Shaded blue: the bounds, { HOURS($bound, form: "range") }.
hours-picture-alt = Chart: { hours-picture-title }, { hours-picture-subtitle }. The timer follows the day outside in monthly steps, from { HOURS($least) } in { $least_month } to { HOURS($most) } in { $most_month }.
hours-picture-alt-outside = Outside, the day goes from { HOURS($outside, form: "low") } to { HOURS($outside, form: "high") }.
