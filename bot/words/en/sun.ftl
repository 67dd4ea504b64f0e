### Facts: SunTold
### Where UV, heat and light meet, and where there is shade of all three.

sun-label = One patch of sun
sun-patch = UV, heat and the heat lamp's light meet on { SHARE($sun) } of the platform ({ SHARE($sun, form: "range") })
sun-label-shade = Shade from all three
sun-shade = { SHARE($open_shade) } of the box ({ SHARE($open_shade, form: "range") }), before hides and plants; a white bar leaves less
sun-label-light = Brightness
sun-light-unknown = not known: no white lamp is in this answer. To learn it, ask bright with its kind, watts and distance
sun-here = UV, heat and light
sun-note = Gold on the basking place: there UV, heat and light meet.
sun-alt = UV, heat and light meet on { SHARE($sun) } of the platform.
