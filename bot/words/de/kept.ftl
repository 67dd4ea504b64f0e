### Eigene Zahlen einer Gruppe: gemerkt, abgelehnt, weggenommen.

## Lampen
kept-lamp-title = { $replaced ->
    [yes] Die Lampe „{ $name }“ ist geändert
   *[no] Die Lampe „{ $name }“ ist gemerkt
  }
kept-lamp = Hier können jetzt alle damit fragen: tube:{ $name }
kept-label-lamp = Nach ihren Messwerten
kept-step-lamp = Probier es: distance tube:{ $name } screen:none
kept-step-all = Sieh dir alle an: server show

## Gitter
kept-screen-title = { $replaced ->
    [yes] Das Gitter „{ $name }“ ist geändert
   *[no] Das Gitter „{ $name }“ ist gemerkt
  }
kept-screen = Hier können jetzt alle damit fragen: screen:{ $name }
kept-label-screen = Euer Gitter
kept-step-screen = Probier es: distance tube:12% reflector:polished screen:{ $name }

## Zielwerte
kept-target-title = { $replaced ->
    [yes] Der Zielwert eurer Gruppe für { NAME($animal, form: "many") } ist geändert
   *[no] Der Zielwert eurer Gruppe für { NAME($animal, form: "many") } ist gemerkt
  }
kept-target = Gemerkt. Jede Antwort hier richtet sich jetzt danach.
kept-target-told = { CAP($told) }.
kept-step-target = Nimm ihn wieder weg: server remove animal:{ $called } of:{ $of }
kept-care-target = Euer Zielwert steht anstelle von dem mit Quelle. Die Antworten sagen, dass er von euch ist.

## Tiere
kept-animal-title = { $replaced ->
    [yes] Das Tier „{ $name }“ ist geändert
   *[no] Das Tier „{ $name }“ ist gemerkt
  }
kept-animal = Hier können jetzt alle nach { $name } fragen.
kept-animal-by = Die Antworten sagen, dass die Zahlen von eurer Gruppe sind.
kept-label-scientific = Wissenschaftlicher Name
# Only with: $scientific
kept-scientific = { $scientific }
kept-label-target = Zielwert
kept-label-limit = Grenze
kept-label-back = Rücken
# Only with: $back
kept-back = { LENGTH($back) } über dem, worauf es liegt
kept-label-life = Lebensweise
kept-life-climbs = klettert: Wärme und UV werden am höchsten Ast gemessen
kept-life-water = lebt in und an Wasser: Sein trockener Platz ist der Liegeplatz
kept-life-digs = gräbt: Sein Gang ist die kühlste Stelle
kept-life-night = ist nachts wach: Schatten kommt zuerst
kept-step-needs = Sieh nach, was es braucht: needs { $name }
kept-step-animal = Nimm es wieder weg: server remove animal:{ $name }
kept-care-vouch = Für diese Zahlen steht ihr ein. Lasst eine reptilienkundige Tierarztpraxis darauf schauen, oder jemanden mit langer Erfahrung mit genau diesem Tier.

## Weggenommen
kept-gone-title = Weggenommen
kept-gone = { CAP($what) } ist weg.
kept-ours-again = Hier gelten wieder meine Zahlen.
kept-thing = { $kind ->
    [screen] euer Gitter „{ $name }“
    [animal] euer Tier „{ $name }“
   *[lamp] eure Lampe „{ $name }“
  }
kept-aim = euer Zielwert für { NAME($animal, form: "many") } ({ owned-of })
kept-name = „{ $name }“
kept-care-board = Der Aushang { $topic ->
    [distances] mit den Abständen
   *[temperatures] mit den Temperaturen
  } zeigt es noch. Nimm ihn in seinem Kanal ab: board remove topic:{ $typed }

## Warum nicht
kept-no-length = Sag mir auch, wie lang die Röhre ist. Davon hängt ab, wie viel UV weiter weg ankommt.
kept-no-tube = Nein: Keine Röhre gibt diese Messwerte.
kept-no-tube-own = Sie nehmen ab wie vor einer kleinen Lampe. Sag mir mit lamp, was für eine es ist.
kept-no-small = Nein: Keine kleine Lampe gibt diese Messwerte.
kept-no-small-own = Sie nehmen ab wie unter einer Röhre. Ist es eine? Dann nenn mir ihre Länge, und lass die Art weg.
kept-no-kind = Finde zuerst heraus, was für eine Lampe es ist: Damit fragen hier alle.
kept-no-two-places = Bei so einer Lampe sagt ein Abstand zu wenig. Miss bei zwei oder mehr.
kept-no-share = Wie viel lässt das Gitter durch? Sag es mir, oder nenn Messwerte mit und ohne Gitter.
kept-no-free-name = Dieser Name heißt schon eine Röhre oder ein Gitter.
kept-no-order = Diesen Bereich gibt es nicht. Von unten nach oben muss er hier hineinpassen: { $within }.
kept-no-limit = Diese Grenze gibt es nicht. Sie muss hier liegen: { $within }.
kept-no-harm = Nein: Das schadet { NAME($animal, form: "dat") }.
kept-no-harm-limit = Die Grenze ist { $limit }, bei jedem Zielwert. Ich kenne sie aus dem Gedächtnis: Das Wort einer Tierarztpraxis zählt mehr.
kept-no-harm-law = Die Grenze ist { $limit }, bei jedem Zielwert: Flacher lässt es keine öffentliche Vorgabe zu, die ich kenne.
kept-no-water = Ich kenne kein Wasser, in dem { NAME($animal, form: "a") } lebt.
kept-no-harm-own = Die Grenze ist { $limit }.{ $careful ->
    [none] {""}
   *[some] {" "}Sie ist eine vorsichtige von mir. Kennst du die eigene? Nenn sie mit { $careful }:
  }
kept-no-whole = „{ $name }“ ist ein Tier eurer Gruppe: Ändere es als Ganzes.
kept-no-target = Nenn mir etwas, das es braucht. Das ist eins von uvi, basking, warm, cool, night, night_off, water, depth und hours.
kept-no-zero = Ein UV-Index als Ziel ist über 0. Lass ihn weg, wo keiner gebraucht wird.
kept-no-limit-order = Diese Grenzen passen nicht zusammen. Die der Nacht liegt unter der des kühlsten Platzes, und beide unter der der Fläche.
kept-no-new-name = Dieses Tier kenne ich schon: { NAME($ours) }. Setz seine Zielwerte mit server target.
kept-no-one-animal = Dieser Name kann mehrere Tiere meinen. Nimm den Namen von einem.
kept-no-plain-name = Dieser Name geht nicht. Nimm ein bis fünf Wörter ohne Ziffern, und kein Alltagswort.
kept-no-such = So etwas hat eure Gruppe nicht.
kept-known = Sie hat { LIST($known) }.
kept-known-none = Sie hat noch keine eigenen Zahlen.
kept-no-thing = Sag mir, was weg soll.
kept-no-thing-how = Eine eigene Lampe, ein Gitter oder ein Tier, oder ein Tier und welcher seiner Zielwerte.
