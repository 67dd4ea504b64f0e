### Facts: SunTold, WhiteTold, WhiteWarms
### Where UV, heat and light meet, how bright it is, and where there is shade of all three.

sun-label = One patch of sun
sun-patch = UV, heat and { $white ->
    [yes] light meet
   *[no] the heat lamp's light meet
  } on { SHARE($sun) } of the platform ({ SHARE($sun, form: "range") })
sun-label-shade = Shade from all three
sun-shade = { SHARE($open_shade) } of the box ({ SHARE($open_shade, form: "range") }), before hides and plants{ $white ->
    [yes] {""}
   *[no] ; a white bar leaves less
  }
sun-label-light = Brightness
sun-light = { $said }, about { LUX($spot) } on the back ({ LUX($spot, form: "range") }) and { LUX($cool) } at the cool end, by the white light; the heat lamp adds its own.{ $fair ->
    [none] {""}
   *[some] {" "}{ SHARE($fair) } of the platform is fair or brighter.
  } Dim, fair and bright are words of ours: no need is published. It gives no UV
sun-words-dim = dim
sun-words-dim_or_fair = dim to fair
sun-words-fair = fair
sun-words-fair_or_bright = fair to bright
sun-words-bright = bright
sun-words-cannot_tell = dim or bright, I cannot tell
sun-words-no_band = without a level of ours for it
sun-words-night = no bright spot is asked by who wakes at night
sun-light-unknown = not known: you told me no white lamp. Add one, such as light:24W led bar
sun-label-warms = The white light's heat
sun-warms = { WATTS($power) } warm the cool end by about { DIFF($rise) }{ $fits ->
    [yes] : read it again after two hours
   *[no] , past its range: take fewer watts, or a cooler room first
  }
sun-care-warms = The white light would warm the cool end past its range. Take fewer watts.
sun-care-warms-short = White light: fewer watts.
sun-here = UV, heat and light
sun-note = Gold on the basking place: there UV, heat and light meet.
sun-bar = white light
sun-alt = UV, heat and light meet on { SHARE($sun) } of the platform.
sun-alt-light = The white light makes it { $said }, about { LUX($spot) } on the back.
