### Facts: Dose, People, SunThere, SunHour

dose-title = A day's UV, and your own time in it

## The answer in brief
dose-head-minutes = A full day: like { NUMBER($noon_time, form: "range") } min of midday { dose-which-sun }.
dose-head-hours = A full day: like { NUMBER($noon_time, form: "range") } hours of midday { dose-which-sun }.
dose-head-half_a_day = A full day: more than 12 hours of midday { dose-which-sun }.
# Only with: $month
dose-head-none = The sun there gives next to nothing in { $month }.
dose-which-sun = { $month ->
    [none] summer sun
   *[some] sun there
  }
dose-people-minutes = Healthy adults: at most { $minutes } min a day.
dose-people-hours = Healthy adults: at most { HOURS($time) } a day.
dose-people-whole_day = Healthy adults: all of an { HOURS($time) } workday.
dose-people-unknown = How long you may stay, nobody can say.
dose-assumed-tube = I assumed no UV shorter than 290 nm.
dose-assumed-other = Its shortest UV is not known: keep away.
dose-do-shade = Give shade, so that it can leave.
dose-do-off = Switch it off before you reach in.

## Why
dose-why-most = That is the most: an animal that comes and goes takes less. Nobody knows the dose a reptile needs.
dose-why-length = You gave no length, so arm's length counts for the standard tube that gives most there.
dose-why-kept = I assumed no mesh under your group's own lamp. Mesh takes some of the UV away.

## Steps
dose-step-shade = Let the animal choose: it must be able to leave the UV. Shade it can go to matters more than any dose.
dose-step-off = Switch the lamp off while you work inside. If you cannot, wear sleeves and glasses that stop UV.

## Numbers
dose-label-tube = Under the lamp
dose-tube = UVI { UVI($at, form: "range") } for { HOURS($lit) } gives up to { NUMBER($dose, form: "range") } SED. 1 SED is 100 J/m² as human skin reddens.
dose-label-beside = As much as
dose-beside-minutes = { NUMBER($noon_time, form: "doubt") } min of midday sun { dose-which-noon }.
dose-beside-hours = { NUMBER($noon_time, form: "doubt") } hours of midday sun { dose-which-noon }.
dose-beside-half_a_day = More than 12 hours of midday sun { dose-which-noon }.
# Only with: $month
dose-beside-none = The midday sun there is too weak in { $month } to compare with.
dose-which-noon = { $month ->
    [none] at UVI 10
   *[some] there in { $month }
  }
dose-label-clear-day = A clear day there
# Only with: $share
dose-share = That is about { SHARE($share) } ({ SHARE($share, form: "range") }) of its sun from dawn to dusk.
# Only with: $times
dose-times = That is about { NUMBER($times, form: "doubt") } times its sun from dawn to dusk.
dose-label-sun = The sun there
dose-sun = { ANGLE($latitude) } { $south ->
    [yes] S
   *[no] N
  }, { $month }, clear sky at sea level: UVI { UVI($noon_uvi, form: "doubt") } at noon, { NUMBER($dose, form: "range") } SED from dawn to dusk, { HOURS($strong) } over UVI 3. Cloud takes much of it away.
dose-label-people = You, at that spot
dose-label-arm = At arm's length
dose-arm = { LENGTH($arm) } from the lamp it is about UVI { UVI($at, form: "given") }.
dose-label-at-arm = You, at arm's length
dose-limit-minutes = At UVI { UVI($at, form: "given") }, skin and eyes reach the limit for a day at work (30 J/m²) after about { $minutes } min.
dose-limit-hours = At UVI { UVI($at, form: "given") }, skin and eyes reach the limit for a day at work (30 J/m²) after about { HOURS($time) }.
dose-limit-whole_day = At UVI { UVI($at, form: "given") }, skin and eyes stay under the limit for a day at work (30 J/m²) all of { HOURS($time) }.

## Care
dose-care-look = Never look into the lit lamp: your time in it is not for that.
dose-care-whom = The limit is for healthy adults at work. It is not for children, or for skin or eyes that react to light.
dose-care-waves-other = These times hold only for a lamp that gives nothing under 290 nm. Of this kind nobody can promise that, so stay out of its light, and never use one whose outer glass is cracked.
dose-care-waves-tube = I assumed that the tube gives nothing under 290 nm. Its true light may allow you several times as long. A lamp with shorter waves allows less.

## Picture
dose-picture-axis = UV dose (SED)
dose-picture-lamp = up to { NUMBER($dose, form: "range") } in { HOURS($lit) }
dose-picture-hour = An hour of midday summer sun
dose-sun-gives = { NUMBER($dose, form: "range") }
dose-picture-minutes = { $minutes } min at most
dose-picture-hours = { HOURS($time) } at most
dose-picture-whole_day = { HOURS($time) }, still under the limit
dose-picture-note-tube = SED: how much UV reddens human skin. Your bar ends at the limit of a day at work, for healthy adults.
dose-picture-note-other = SED: how much UV reddens human skin.
dose-picture-alt = Bars: { dose-title }.
