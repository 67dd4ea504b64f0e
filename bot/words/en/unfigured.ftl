### Facts: Unfigured
### An animal that is known by name alone.

unfigured-title = { CAP($name) }: no figures here
unfigured-head = I have no figures for “{ $name }”, and another animal's could hurt it.
unfigured-step-ask = Ask a reptile vet or a keeper who has had this animal for years.
unfigured-step-tube = Never hang a UV tube closer than { LENGTH($nearest) } above its back.
unfigured-step-shade = Give it shade that no UV reaches and a cool place, both open to it at any time.
unfigured-step-measure = Measure before it moves in: the UV index with a meter, surfaces with an infrared gun, the air and the night with a digital probe.
unfigured-step-later = Do you know the UV index it needs? Then I can work out a distance without its name: ask distance, and give that range with uvi.
