### Ein Tier, von dem nur der Name bekannt ist.

unfigured-title = { CAP($name) }: keine Zahlen
unfigured-head = Zu „{ $name }“ habe ich keine Zahlen, und fremde könnten ihm schaden.
unfigured-step-ask = Frag einen reptilienkundigen Tierarzt oder einen erfahrenen Halter.
unfigured-step-tube = Häng nie eine UV-Röhre näher als { LENGTH($nearest) } über seinen Rücken.
unfigured-step-shade = Gib ihm Schatten ohne UV und einen kühlen Platz, beides jederzeit erreichbar.
unfigured-step-measure = Miss, bevor es einzieht: den UV-Index mit einem Messgerät, Flächen mit einem Infrarot-Thermometer, Luft und Nacht mit einem digitalen Fühler.
unfigured-step-later = Kennst du den UV-Index, den es braucht? Dann rechne ich dir auch ohne seinen Namen einen Abstand aus: Frag distance und gib die Spanne als uvi an.
