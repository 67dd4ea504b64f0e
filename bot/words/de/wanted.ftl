### Was statt eines Textes ginge, der nicht zu lesen war: steht hinter „ich brauche“, also im Akkusativ.

## Maße
wanted-length = eine Länge mit Einheit (in, ft, cm, mm oder m)
wanted-temperature = eine Temperatur mit Einheit (F oder C)
wanted-difference = einen Temperaturunterschied mit Einheit (F oder C)
wanted-power = eine Wattzahl
wanted-time = eine Zeit mit Einheit (hours, days, months oder years)
wanted-volume = einen Rauminhalt mit Einheit (gallons oder litres)
wanted-convertible = eine Länge, eine Temperatur oder einen Unterschied, mit Einheit (in, ft, cm, F oder C)
wanted-above-zero = eine Temperatur über dem absoluten Nullpunkt (−273,15 °C)
wanted-which-degrees = eine Temperatur mit Einheit, { $text }F oder { $text }C, je nachdem, was dein Thermometer zeigt
wanted-right-unit = die richtige Einheit, denn so kalt ist es unter Lampen fast nie: { $text }C, wenn dein Thermometer °C zeigt
wanted-not-negative = { $what }, und nicht unter null
wanted-one-value = einen einzelnen Wert und keine Spanne
wanted-clear-number = eine eindeutige Zahl, denn das kann { $one } oder { $other } heißen
wanted-number = eine Zahl
wanted-number-range = eine Zahl oder eine Spanne
wanted-percent = einen Anteil von 0 % bis 100 %
wanted-setting = den Wert, auf den das Infrarot-Thermometer eingestellt ist, von 50 % bis 100 %
wanted-size = Länge, Tiefe und Höhe mit Einheit
wanted-size-unit = Länge, Tiefe und Höhe mit Einheit, denn das können Zoll oder Zentimeter sein
wanted-there = hides, side by side, uv meter, white light, long tube, two heat lamps, seasons oder plants
wanted-white-lamps = eine weiße Lampe, die nicht wärmt, mit Watt oder Lumen: white tube, led bar, led panel oder led flood
wanted-lamps = Lampen mit Watt oder Lumen, getrennt durch +
wanted-lamp-count = wie viele Lampen einer Art, eine bis { $most }
wanted-lumens = Lumen, wie sie auf dem Etikett stehen
wanted-lux = Lux, oder foot-candles mit fc
wanted-beam = den Winkel des Lichtkegels in Grad

## Auswahl
wanted-choice = { LIST($names, join: "list-or") }{ $near ->
    [none] {""}
   *[some] {" "}(meintest du { $near }?)
  }
wanted-fixture = polished (ein Reflektor, blank wie ein Spiegel) oder plain (weiß oder keiner){ $near ->
    [none] {""}
   *[some] {" "}(meintest du { $near }?)
  }
wanted-state = young (jung), pale (Albino), gravid (trächtig), female (Weibchen), ill (krank), quarantine oder none
wanted-zone = eine Zeitzone mit Erdteil und Stadt{ $near ->
    [none] {""}
   *[some] {" "}(meintest du { $near }?)
  }

## Röhren, Gitter und Messwerte
wanted-tube = die Stärke auf dem Aufdruck einer T5-HO-Röhre, von 1 % bis 20 %
wanted-tube-of-ho = die Stärke einer T5-HO-Röhre, denn zu anderen Lampen habe ich keine Zahlen: Sie brauchen ein UV-Messgerät
wanted-one-lamp = hier eine Lampe: für mehrere kleine zusammen gib Messwerte an, die unter allen gemessen sind
wanted-tubes = wie viele Röhren nebeneinander hängen, eine bis { $most }
wanted-animals = ein bis { $most } Tiere, getrennt mit „;“
wanted-strengths = eine bis { $most } Stärken, getrennt mit „;“
wanted-screens = ein bis { $most } Gitter, getrennt mit „;“
wanted-screen = none, wie viel es schluckt (45%), wie viel es durchlässt, oder Maschen und Draht
wanted-screen-go-on = wie viel es schluckt, Maschen und Draht (18x16 0.011in) oder none. Unbekannt? Fliegengitter: etwa 45% (gängige Praxis, ohne Quelle)
wanted-no-pane = nichts dazwischen oder ein Gitter, denn Glas und fast jeder klare Kunststoff schlucken nahezu alles UV
wanted-share = einen Anteil von 0 % bis 100 %
wanted-through = ein Gitter, das etwas durchlässt
wanted-wire = die Maschen und die Dicke des Drahts mit Einheit
wanted-thin-wire = einen Draht, der dünner ist als eine Masche
wanted-placed = Messwerte mit ihren Abständen
wanted-dated = Messwerte mit ihrem Datum
wanted-one-figure = eine Zahl für jede Messung
wanted-uvi = einen UV-Index, denn µW/cm² oder mW zeigt ein anderes Messgerät, und keine feste Zahl macht daraus einen UV-Index
wanted-uvi-one = einen UV-Index
wanted-other-set-up = einen zweiten Aufbau: nenn, was an ihm anders ist
wanted-line = eine Zeile aus höchstens { $most } Buchstaben, Ziffern und einfachen Zeichen, oder none
wanted-uvi-range = eine Spanne des UV-Index
wanted-reminder = die Nummer einer Erinnerung
wanted-case = die Nummer eines Falls
wanted-short-list = { $what }, mit höchstens 1000 Zeichen

## Zeit und Ort
wanted-date = ein Datum als Jahr-Monat-Tag
wanted-date-calendar = ein Datum, das es im Kalender gibt, als Jahr-Monat-Tag
wanted-date-year = das Datum als Jahr-Monat-Tag, das Jahr mit vier Ziffern
wanted-date-clear = ein eindeutiges Datum, denn das kann { $one } oder { $other } sein
wanted-moment = wann, als Zeit von jetzt an oder als Tag mit Uhrzeit
wanted-moment-ahead = einen Zeitpunkt, der noch kommt, höchstens drei Jahre von heute
wanted-clock = eine Uhrzeit von 0:00 bis 23:59
wanted-year = ein Jahr von 1950 bis 2090
wanted-month = einen Monat, englisch mit Namen oder als Zahl
wanted-latitude = einen Breitengrad von 0 bis 90, Nord (N) oder Süd (S)
wanted-latitude-side = entweder ein Minus oder N oder S
wanted-month-too = auch den Monat, zum Vergleich mit der Sonne
wanted-latitude-too = auch den Breitengrad, zum Vergleich mit der Sonne
wanted-day-hours = Stunden am Tag, mehr als 0 und höchstens 24
wanted-uvi-up-to = einen UV-Index über 0 und höchstens { $most }
wanted-an-hour = wie viele Posts in der Stunde, von 1 bis { $most }, oder none
wanted-role = eine Rolle, als Erwähnung geschrieben, oder none
wanted-weeks = eine Zahl von Wochen, von 1 bis { $most }
wanted-how-often = wie oft, von jedem Tag bis alle 3 Jahre

## Zeilen
wanted-short-line = eine Zeile mit höchstens { $most } Zeichen
wanted-question = eine Frage
wanted-command = { $near ->
    [none] den Namen einer Frage, oder deine Frage in eigenen Worten
   *[some] den Namen einer Frage, vielleicht { $near }
  }
wanted-second-word = { $first } und dahinter { LIST($seconds, join: "list-or") }
wanted-once = { $text } nur einmal, und es steht zweimal da
wanted-value = etwas hinter { $text }:
wanted-options = Angaben als name:wert ({ $near ->
    [none] {""}
   *[some] meintest du { $near }?{" "}
  }{ LIST($names, join: "list-and") })
wanted-small-file = eine Datei mit höchstens zwei Megabyte
wanted-file-here = eine Datei auf diesem Computer, die sich lesen lässt
wanted-name = einen Namen mit 1 bis { $most } Zeichen: zuerst ein Buchstabe, dann Buchstaben, Ziffern, Leerzeichen, Bindestriche, Punkte oder Apostrophe
wanted-scientific = einen wissenschaftlichen Namen aus einfachen Buchstaben
wanted-address = eine Adresse, die mit https:// anfängt und höchstens 200 Zeichen hat
wanted-nothing-more = hier nichts weiter

## Tiere
wanted-animal = das Tier, denn jedes braucht sein eigenes Licht und seine eigene Wärme
wanted-animal-with-figures = ein Tier, zu dem ich Zahlen habe: nie die eines anderen
wanted-animal-near = ein Tier, das ich kenne, vielleicht { LIST($here, join: "list-or") }
wanted-animal-known = ein Tier, das ich kenne, mit seinem üblichen Namen
wanted-which-of = genau eines: { LIST($here, join: "list-or") }{ $more ->
    [yes] , oder ein anderes mit eigenem Namen
   *[no] {""}
  }
wanted-which-of-both = genau eines: { LIST($here, join: "list-or") } (zu den anderen fehlen mir Zahlen)

## Was eine Antwort braucht
wanted-uvi-trusted = den UV-Index, den ein Halter oder reptilienkundiger Tierarzt deines Vertrauens nennt, denn zu diesem Tier kenne ich keinen
wanted-uvi-read = einen UV-Index von höchstens { $most }: Vielleicht zeigt das Messgerät µW/cm², das ist eine andere Zahl
wanted-uvi-not-zero = eine Spanne, die nicht bei 0 anfängt
wanted-uvi-harmless = einen UV-Index, der { $animal ->
    [none] keinem Tier schadet, das ich kenne
   *[some] { NAME($animal, form: "dat") } nicht schadet
  }: { $own ->
    [none] {""}
   *[some] { UVI($own, form: "range") } ist richtig,{" "}
  }{ UVI($now, form: "given") } ist zu stark
wanted-reading-near = einen Messwert, der etwas sagt: Miss näher an der Röhre, wo das Messgerät 1 oder mehr zeigt
wanted-screen-or-without = entweder das Gitter oder Messwerte ohne es, denn die sagen, was es durchlässt
wanted-without-higher = Messwerte ohne Gitter, die höher sind als die mit Gitter
wanted-days-past = Messwerte von Tagen, die schon waren, und heute ist der { DAY($today) }
wanted-length-or-watts = die Länge der Röhre oder die Watt auf einer T5-HO-Röhre: { LIST($names, join: "list-or") } W
wanted-tube-that-fits = eine Röhre, die ins Terrarium passt, das { LENGTH($long) } lang ist
wanted-reading-or-all = die Nummer eines Messwerts, oder all
wanted-reading = die Nummer eines Messwerts
