### Was zu einem Zielwert vermerkt ist: note-<Tier>-<Thema>.

note-horsfields-tortoise-night_floor = für ein waches, gesundes Tier im Haus
note-hermanns-tortoise-night_floor = für ein waches, gesundes Tier im Haus
note-blue-tongued-skink-uvi = zwischen Zone 2 und Zone 3
note-green-anole-uvi = zwischen Zone 2 und Zone 3
note-corn-snake-uvi = mit Schatten zur freien Wahl
note-boa-uvi = mit Schatten zur freien Wahl
note-leopard-gecko-uvi = mit Schatten zur freien Wahl
note-royal-python-uvi = mit Schatten zur freien Wahl
note-crested-gecko-uvi = mit Schatten zur freien Wahl
note-slider-uvi = auf dem trockenen Sonnenplatz
note-slider-basking_surface = auf dem trockenen Sonnenplatz
note-veiled-chameleon-uvi = auf dem höchsten Ast, mit Blattschatten darunter
note-panther-chameleon-uvi = auf dem höchsten Ast, mit Blattschatten darunter
note-uromastyx-basking_surface = nur auf einem kleinen Fleck
note-argentine-tegu-basking_surface = breit genug für das ganze Tier
note-ackie-monitor-basking_surface = nur auf einem kleinen Fleck; Halter sind sich nicht einig
note-leopard-gecko-basking_surface = der warme Boden oder ein flacher Stein
note-bearded-dragon-warm_air = außerhalb des Lichtkegels gemessen
note-crested-gecko-warm_air = 28 °C (82 °F) sind die Obergrenze, nicht das Ziel
