### Was über Körper veröffentlicht ist: body-<Tier>-<Zahl>, wie die Tabelle des Tieres es hat.

body-label = Körper, nicht Fläche
body-told = { $what }: { TEMP($range, form: "range") } (veröffentlicht).
body-bearded-dragon-1 = Pogona vitticeps, mittlere Körpertemperatur bei freier Wahl
body-bearded-dragon-2 = australische Agamen, Körpertemperaturen, die mehrere Arten wählen
body-blue-tongued-skink-1 = Tiliqua rugosa, verwandt, Körpertemperatur beim Aufwärmen
body-blue-tongued-skink-2 = australische Skinke, Körpertemperaturen, die mehrere Arten wählen
body-box-turtle-1 = Terrapene ornata, verwandt, Körpertemperaturen aktiver Tiere (im Mittel 28,8 °C, das sind 84 °F)
body-carpet-python-1 = Morelia spilota imbricata, etwa die höchsten Körpertemperaturen am Tag
body-carpet-python-2 = Morelia spilota spilota, etwa die Körpertemperatur beim Brüten
body-corn-snake-1 = Pantherophis obsoletus, verwandt, Körpertemperaturen bei freier Wahl
body-garter-snake-1 = sieben Arten von Thamnophis, mittlere Körpertemperaturen im Freien
body-hermanns-tortoise-1 = Testudo hermanni, mittlere Körpertemperatur im Wald im August
body-leopard-gecko-1 = Eublepharis macularius, Körpertemperatur, die er wählt
body-panther-chameleon-1 = sechs Chamäleons aus Kenia, verwandt, Körpertemperaturen, die sie wählen (sie gingen bei 34 bis 36 °C, das sind 93 bis 97 °F)
body-slider-1 = Trachemys scripta, Körpertemperatur, die sie wählt (darunter sonnt sie sich wenig)
body-veiled-chameleon-1 = sechs Chamäleons aus Kenia, verwandt, Körpertemperaturen, die sie wählen (sie gingen bei 34 bis 36 °C, das sind 93 bis 97 °F)
