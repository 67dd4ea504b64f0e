### Facts: Curve, CurvePoint
### The picture of a lamp: its UV index over the distance.

uvcurve-distance = From the tube to the animal's back
uvcurve-uvi = UV index (UVI)
uvcurve-too-near = too close
uvcurve-wanted = aim for { UVI($wanted, form: "range") }
# Only with: $advised
uvcurve-keep = keep { LENGTH($advised, form: "range") }
uvcurve-below = { LIST($below, join: "list-with") }
uvcurve-note = Line: best estimate. Pale band: where it can really lie. A UV meter narrows it.
uvcurve-alt = Seen from the side: { $title }, { uvcurve-below }.
uvcurve-alt-falls = The UV index falls steeply with distance, from { UVI($first, form: "doubt") } at { LENGTH($first_at) } to { UVI($last, form: "doubt") } at { LENGTH($last_at) }. Aim for { UVI($wanted, form: "range") }.
# Only with: $advised
uvcurve-alt-keep = Keep { LENGTH($advised, form: "range") }.
uvcurve-alt-point = Point at { LENGTH($at) }, UV index { UVI($uvi) }: { $label }.
uvcurve-alt-near = Closer than { LENGTH($nearest) } is hatched as too close.
uvcurve-zone-too_near = too close
uvcurve-zone-stronger = stronger
uvcurve-zone-right = right
uvcurve-zone-weaker = weaker
uvcurve-zone-shade = shade
uvcurve-away = { LENGTH($at) }
uvcurve-note-read = Rings: what you read. Line: best estimate, pale: where it can really lie.
