### Was mehrere Fragen sagen.

## Woher eine Zahl kommt
known = { $how ->
    [common_practice] übliche Praxis, ohne Quelle
    [memory] aus dem Gedächtnis, ungeprüft
    [own] die eigene Zahl der Gruppe
   *[published] veröffentlicht: { $citation }
  }{ $note ->
    [none] { $set_on ->
        [none] {""}
       *[some] , festgelegt am { DAY($set_on) }
      }
   *[some] ; { $note }
  }
memory-short = Bereich aus dem Gedächtnis, ungeprüft.

## Vorsicht mit Lampen und Heizern
care-guard = Wärmelampen verbrennen die Haut und können Brände auslösen. Nimm einen Schutzkorb, eine Keramikfassung und zwei Halterungen, und halte alles fern, was brennt.
care-guard-short = Strahler nur mit Schutzkorb.
care-off-first = Schalte die Lampe aus und lass sie abkühlen, bevor du sie bewegst oder wechselst. Halte dich an die Elektrovorschriften bei dir.
care-vet-heat = Ruf eine reptilienkundige Tierarztpraxis an, wenn dein Tier mit offenem Maul in der kühlsten Ecke bleibt, schlaff daliegt oder verbrannt ist.

## Vorsicht mit UV-Lampen
care-eyes = Sieh nicht in die leuchtende Lampe, und schalte sie aus, bevor du hineingreifst.
care-eyes-short = Nie in die leuchtende Lampe sehen.
care-shade = Biete Schatten: Dein Tier muss dem UV ausweichen können.
care-shade-short = Gib ihm Schatten, weg vom UV.
care-uv-meter = Eine Röhre, die du nicht kennst, die über ein Jahr alt oder stärker als 12 % ist, braucht ein UV-Messgerät.

## Schritte mit Lampen und Heizern
step-after-change = Miss nach zwei Stunden wieder und geh in kleinen Schritten weiter. Die Zahlen hier sind ein Anfang, dein Thermometer entscheidet.
step-warm-room = Das ist mehr, als eine Lampe gibt, und viele Lampen an einem Terrarium sind eine Brandgefahr. Heiz zuerst den Raum, oder schließ mehr vom Deckel mit etwas, das nicht brennt.

## Eine andere Sprache
only-english = Diese Antwort gibt es noch nicht auf Deutsch.
only-english-rest = Den Rest gibt es noch nicht auf Deutsch.
