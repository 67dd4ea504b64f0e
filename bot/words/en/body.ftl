### Facts: BodyTold
### What is published on bodies: body-<animal>-<count>, as the animal's own table has it.

body-label = Body, not surface
body-told = { $what }: { TEMP($range, form: "range") } (published).
body-bearded-dragon-1 = Pogona vitticeps, mean body temperature where it could choose
body-bearded-dragon-2 = Australian agamids, the body temperatures that several species choose
body-blue-tongued-skink-1 = Tiliqua rugosa, a relative, body temperature while it warms itself
body-blue-tongued-skink-2 = Australian skinks, the body temperatures that several species choose
body-box-turtle-1 = Terrapene ornata, a relative, body temperatures of active animals (mean 84 °F, which is 28.8 °C)
body-carpet-python-1 = Morelia spilota imbricata, about the highest body temperatures of the day
body-carpet-python-2 = Morelia spilota spilota, about the body temperature while brooding eggs
body-corn-snake-1 = Pantherophis obsoletus, a relative, body temperatures it holds when it can choose
body-garter-snake-1 = seven species of Thamnophis, mean body temperatures in the field
body-hermanns-tortoise-1 = Testudo hermanni, mean body temperature in woodland in August
body-leopard-gecko-1 = Eublepharis macularius, the body temperature it chooses
body-panther-chameleon-1 = six Kenyan chameleons, relatives, the body temperatures they choose (they left at 93 to 97 °F, which is 34 to 36 °C)
body-slider-1 = Trachemys scripta, the body temperature it chooses (it basks little below it)
body-veiled-chameleon-1 = six Kenyan chameleons, relatives, the body temperatures they choose (they left at 93 to 97 °F, which is 34 to 36 °C)
