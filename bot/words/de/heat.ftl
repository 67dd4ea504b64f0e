### Messwerte und die Schritte, die sie richten.

## Wo gemessen wird
heat-place = { $place ->
    [basking_surface] Fläche am Sonnenplatz
    [cool_air] Kühle Seite
    [warm_air] Warme Seite
    [water] Wasser
   *[night_air] Nacht
  }
heat-spot = { $place ->
    [basking_surface] Sonnenplatz
    [cool_air] Kühle Seite
    [warm_air] Warme Seite
    [water] Wasser
   *[night_air] Nacht
  }
heat-the = { $place ->
    [basking_surface] Der Sonnenplatz
    [cool_air] Die kühle Seite
    [warm_air] Die warme Seite
    [water] Das Wasser
   *[night_air] Die Nacht
  }
heat-listed = { $place ->
    [basking_surface] Sonnenplatz
    [cool_air] kühle Seite
    [warm_air] warme Seite
    [water] Wasser
   *[night_air] Nacht
  }
heat-clause = { heat-listed } { heat-read }

## Wie es steht
heat-off = { $touch ->
    [yes] ein wenig
   *[no] { DIFF($off) }
  }
heat-hot = { $place ->
    [basking_surface] heiß
   *[other] warm
  }
heat-verdict = { $stand ->
    [too_low] { heat-the } ist { heat-where } um { heat-off } zu kühl.
    [too_high] { heat-the } ist { heat-where } um { heat-off } zu { heat-hot }.
    [probably_low] { heat-the } ist { heat-where } wohl zu kühl.
    [probably_high] { heat-the } ist { heat-where } wohl zu { heat-hot }.
    [cannot_tell] { heat-the } ist { heat-where } richtig oder knapp daneben.
    [keepers_differ] Über eine Nacht mit { TEMP($read) } sind sich die Halter uneins.
    [no_need] { heat-the } hat { TEMP($read) }. Dein Tier braucht keinen heißen Platz: Die Luft zählt.
    [no_target] { heat-the } hat { TEMP($read) }. Dafür kenne ich kein Ziel.
   *[right] { heat-the } ist { heat-where } richtig.
  }
# Was gelesen wurde: ein Wert, oder von einem Ende zum andern; und welches Ende beurteilt ist.
heat-read = { $span ->
    [none] { TEMP($read) }
   *[some] { TEMP($span, form: "range") }
  }
heat-where = { $at ->
    [low_end] mit dem unteren Wert { TEMP($read) }
    [high_end] mit dem oberen Wert { TEMP($read) }
   *[whole] mit { heat-read }
  }
heat-spot-at = { $at ->
    [low_end] { heat-spot }, unterer Wert
    [high_end] { heat-spot }, oberer Wert
   *[whole] { heat-spot }
  }
# Eine Zeile der kurzen Antwort.
heat-line = { $stand ->
    [too_low] { heat-spot-at }: { heat-off } zu kühl.
    [too_high] { heat-spot-at }: { heat-off } zu { heat-hot }.
    [probably_low] { heat-spot-at }: wohl zu kühl.
    [probably_high] { heat-spot-at }: wohl zu { heat-hot }.
    [cannot_tell] { heat-spot-at }: richtig oder knapp daneben.
    [keepers_differ] { heat-spot }: Halter uneins.
    [no_need] { heat-spot }: braucht es nicht.
    [no_target] { heat-spot }: kein Ziel bekannt.
   *[right] { heat-spot } { heat-read }: gut.
  }
heat-off-by = { $unchecked ->
    [yes] wenn der Bereich stimmt
   *[no] so weit kann auch ein Thermometer danebenliegen
  }
heat-stand = { $stand ->
    [too_low] { heat-off } zu kühl
    [too_high] { heat-off } zu { heat-hot }
    [probably_low] wohl zu kühl ({ heat-off }, { heat-off-by })
    [probably_high] wohl zu { heat-hot } ({ heat-off }, { heat-off-by })
    [cannot_tell] das kann ich nicht sagen ({ heat-off } daneben, so weit kann auch ein Thermometer danebenliegen)
    [keepers_differ] darüber sind sich die Halter uneins
    [no_need] es braucht keinen Sonnenplatz
    [no_target] dafür kenne ich kein Ziel
   *[right] richtig
  }
heat-row = { $at ->
    [low_end] { heat-read }, unterer Wert: { heat-stand }. { heat-for }
    [high_end] { heat-read }, oberer Wert: { heat-stand }. { heat-for }
   *[whole] { heat-read }: { heat-stand }. { heat-for }
  }
# Where the readings contradict each other, none is judged.
heat-row-unjudged = { heat-read }. { heat-for }
heat-for = { $aim ->
    [none] Frag jemanden mit Erfahrung oder eine reptilienkundige Tierarztpraxis.
   *[some] { $place ->
        [night_air] Geheizt wird unter { $aim }.
       *[other] Richtig sind { $aim }.
      }
  }
heat-aim = { $has_best ->
    [yes] { TEMP($wanted, form: "range") }, am besten { TEMP($wanted) } ({ $known })
   *[no] { TEMP($wanted, form: "range") } ({ $known })
  }

## Was noch zu messen ist
heat-missing-basking_surface = die Fläche am Sonnenplatz, mit dem Infrarot-Thermometer
heat-missing-cool_air = die Luft auf der kühlen Seite, mit einem digitalen Fühler auf Höhe des Tieres
heat-missing-warm_air = die Luft auf der warmen Seite, mit einem digitalen Fühler neben dem Strahl
heat-missing-water = das Wasser, mit einem Wasserthermometer
heat-missing-night_air = das Kälteste der Nacht, mit einem Thermometer, das es sich merkt

## Warum ein Wert noch nicht zählt
heat-doubt-not_yet_a_reading = Deine Lampe war weniger als zwei Stunden an. Was jetzt zu kühl oder richtig ist, kann noch steigen. Was schon zu heiß ist, ist zu heiß.
heat-doubt-lamp_time_not_said = Du hast nicht gesagt, wie lange die Lampe an war. Vor 2 bis 3 Stunden zählt davon nichts.
heat-doubt-dial_not_trusted = Trau keinem Zeiger- und keinem Streifenthermometer.
heat-doubt-probe_for_surface = Ein Fühler misst keine Fläche.
heat-doubt-gun_for_air = Ein Infrarot-Thermometer misst keine Luft.
heat-doubt-cool_end_above_surface = Die kühle Seite kann nicht so heiß sein wie der Sonnenplatz.
heat-doubt-cool_end_above_warm_end = Die kühle Seite kann nicht wärmer sein als die warme.
heat-doubt-warm_probe_in_beam = Die warme Seite zeigt so viel, dass ihr Fühler wohl im Strahl hängt.

## Was zu tun ist, kurz
heat-do-switch_lamp_off = Schalte die Wärmelampe jetzt aus und lass alles abkühlen.
heat-do-warm_it_tonight = Bring dein Tier nachts in einen wärmeren Raum.
heat-do-wait_and_read_again = Ändere nichts. Miss neu, wenn die Lampe 2 bis 3 Stunden an war.
heat-do-use_trusted_thermometer = Miss neu: mit Infrarot-Thermometer und digitalem Fühler.
heat-do-measure_surface_with_gun = Miss den Sonnenplatz mit dem Infrarot-Thermometer.
heat-do-measure_air_with_probe = Miss die Luft mit einem digitalen Fühler.
heat-do-check_probe_places = Prüf, welcher Wert von wo ist.
heat-do-cool_down_if_true = Ist es wirklich so heiß: Lampe aus, Schatten, Raum kühlen.
heat-do-move_probe_out_of_beam = Häng den Fühler der warmen Seite aus dem Strahl.
heat-do-measure_surface = Miss den Sonnenplatz mit dem Infrarot-Thermometer.
heat-do-measure_cool_end = Miss die kühle Seite mit einem digitalen Fühler.
heat-do-measure_water = Miss das Wasser mit einem Wasserthermometer.
heat-do-lower_lamp = Häng die Lampe etwas tiefer, nie näher, als ihr Etikett erlaubt.
heat-do-raise_lamp = Häng die Lampe etwas höher.
heat-do-more_power = { $lamp ->
    [none] Nimm die nächststärkere Lampe, wenn ihre Fassung dafür zugelassen ist.
   *[some] Nimm eine Lampe mit { WATTS($lamp) }, wenn ihre Fassung dafür zugelassen ist.
  }
heat-do-less_power = { $lamp ->
    [none] { $part ->
        [none] Nimm die nächstkleinere Lampe, oder dimm höchstens um 20 %.
       *[some] Nimm eine Lampe mit etwa { SHARE($part) } der Watt, ohne Dimmer.
      }
   *[some] Nimm stattdessen eine Lampe mit { WATTS($lamp) }.
  }
heat-do-move_lamp_inward = Rück die Lampe etwas zur Mitte.
heat-do-second_weaker_lamp = { $lamp ->
    [none] Häng eine zweite, schwächere Wärmelampe näher zur Mitte.
   *[some] Häng eine zweite Wärmelampe mit { WATTS($lamp) } näher zur Mitte.
  }
heat-do-more_air = Lass mehr Luft durch den Deckel.
heat-do-less_air = Schließ mehr vom Deckel, mit etwas, das nicht brennt.
heat-do-cooler_room = { $room ->
    [none] Kühl den Raum: Fenster beschatten, kühle Luft herein.
   *[some] Kühl den Raum auf etwa { TEMP($room) } oder weniger.
  }
heat-do-warmer_room = { $room ->
    [none] Heiz den Raum etwas mehr.
   *[some] Heiz den Raum auf etwa { TEMP($room) }.
  }
heat-do-longer_enclosure = Denk über ein längeres Terrarium nach.
heat-do-check_warm_probe = Prüf, ob der Fühler der warmen Seite im Schatten hängt.
heat-do-watch_warm_end = Ändere sonst nichts. Miss die warme Seite morgen neu.
heat-do-heat_the_night = Heiz nachts ohne Licht, mit Thermostat.
heat-do-consider_night_heat = Frag zur Nacht die Tierarztpraxis oder erfahrene Halter.
heat-do-cooler_night = Lass die Nacht kühler werden: Heizer mit dem Licht aus.
heat-do-warmer_water = Wärm das Wasser langsam: ein Heizer mit Schutz, am Thermostat.
heat-do-cooler_water = Kühl das Wasser langsam: Heizer kleiner, Schatten, kühler Raum.
heat-do-check_the_range = Lass es so und prüf erst den Bereich.
heat-do-measure_again = Lass es so und miss noch einmal.
heat-do-leave_as_it_is = Gut gemacht. Lass alles, wie es ist.

## Was zu tun ist, und warum
heat-step-switch_lamp_off = { heat-do-switch_lamp_off } An einer so heißen Fläche kann sich dein Tier verbrennen, und ohne kühlen Platz kann es sich nicht retten. Wenn es das Maul aufsperrt, schlaff daliegt oder verbrannt ist, ruf sofort eine reptilienkundige Tierarztpraxis an.
heat-step-warm_it_tonight = { heat-do-warm_it_tonight } Eine so kalte Nacht schadet ihm, und ein Heizer im Terrarium reicht vielleicht nicht. Wenn es schlaff ist oder sich nicht rührt, wärm es langsam auf und ruf sofort eine reptilienkundige Tierarztpraxis an.
heat-step-wait_and_read_again = { heat-do-wait_and_read_again } Stein, Wände und Luft werden noch warm. Das ist noch kein Messwert.
heat-step-use_trusted_thermometer = { heat-do-use_trusted_thermometer } Das eine ist für die Fläche, das andere für die Luft. Zeiger und Streifen können weiter danebenliegen, als dein Tier verträgt.
heat-step-measure_surface_with_gun = { heat-do-measure_surface_with_gun } Ein Fühler, der darauf liegt, misst halb Luft und halb Lampe.
heat-step-measure_air_with_probe = { heat-do-measure_air_with_probe } Häng ihn auf Höhe deines Tieres. Das Infrarot-Thermometer misst die Fläche, auf die es zeigt, nie die Luft.
heat-step-check_probe_places = { heat-do-check_probe_places } Schau nach, wo jeder Wert gemessen wurde. Die kühle Seite kann nicht wärmer sein als die mit der Lampe: Zwei Werte sind vertauscht, oder Sonne oder Heizung wärmen diese Seite.
heat-step-cool_down_if_true = { heat-do-cool_down_if_true } Ohne kühlen Platz kann sich ein Tier nicht retten.
heat-step-move_probe_out_of_beam = { heat-do-move_probe_out_of_beam } Häng ihn in den Schatten, auf Höhe deines Tieres. Im Strahl misst er die Lampe und nicht die Luft.
heat-step-measure_surface = { heat-do-measure_surface } Ziel genau dorthin, wo dein Tier liegt. Das ist der wichtigste aller Werte.
heat-step-measure_cool_end = { heat-do-measure_cool_end } Häng ihn ans andere Ende, auf Höhe deines Tieres. Das ist der zweitwichtigste Wert.
heat-step-measure_water = { heat-do-measure_water } Miss dort, wo dein Tier ruht, nicht am Heizer.
heat-step-lower_lamp = { heat-do-lower_lamp } Das wärmt den Sonnenplatz und ändert am anderen Ende kaum etwas. Dein Tier darf sie nicht berühren können. Frag basking, dann sage ich dir, wie weit.
heat-step-raise_lamp = { heat-do-raise_lamp } Das kühlt den Sonnenplatz und ändert am anderen Ende kaum etwas. Frag basking, dann sage ich dir, wie weit.
heat-step-more_power = { heat-do-more_power } Wer eine Lampe rückt, verschiebt die Wärme nur. Eine stärkere wärmt das ganze Terrarium.
heat-step-less_power = { heat-do-less_power } Das nimmt Wärme aus dem ganzen Terrarium. Stell danach den Sonnenplatz über den Abstand der Lampe neu ein.
heat-step-move_lamp_inward = { heat-do-move_lamp_inward } Lass sie auf gleicher Höhe. Die kühle Seite bekommt mehr Wärme, und der Sonnenplatz bleibt so heiß. Rück den Stein und die UV-Röhre mit.
heat-step-second_weaker_lamp = { heat-do-second_weaker_lamp } Sie wärmt die kühle Seite und macht den Sonnenplatz nicht heißer.
heat-step-more_air = { heat-do-more_air } Öffne eine Lüftung, oder setz Gitter in einen Teil des Deckels. Warme Luft geht oben hinaus, und das andere Ende wird zuerst kühler.
heat-step-less_air = { heat-do-less_air } Tu das nicht bei den Lampen. Durch das Gitter geht viel Wärme verloren.
heat-step-cooler_room = { heat-do-cooler_room } Beschatte das Fenster, lass kühle Luft herein oder stell das Terrarium um. Kein Terrarium ist kühler als sein Raum.
heat-step-warmer_room = { heat-do-warmer_room } Das ganze Terrarium wird mit wärmer, und keine Lampe muss es allein schaffen.
heat-step-longer_enclosure = { heat-do-longer_enclosure } In einem kurzen sind beide Enden fast gleich, egal, was du mit der Lampe machst.
heat-step-check_warm_probe = { heat-do-check_warm_probe } Im Strahl darf er nicht hängen. Die warme Seite ist vor allem ein Frühzeichen. Sonnenplatz und kühle Seite zählen mehr.
heat-step-watch_warm_end = { heat-do-watch_warm_end } Solange Sonnenplatz und kühle Seite stimmen, kann dein Tier wählen.
heat-step-heat_the_night = { heat-do-heat_the_night } Ein einfaches Ein/Aus-Thermostat genügt. Diese Nacht ist kälter, als dein Tier verträgt. Frag night, dann sage ich dir, wie viel Wärme.
heat-step-consider_night_heat = { heat-do-consider_night_heat } Über so eine Nacht sind sich die Halter uneins. Ein junges oder krankes Tier braucht es wärmer.
heat-step-cooler_night = { heat-do-cooler_night } Eine Nacht, die wärmer ist als die kühle Seite am Tag, bringt keine Ruhe.
heat-step-warmer_water = { heat-do-warmer_water } Höchstens 1 °C (2 °F) in der Stunde, und außer Reichweite von Zähnen und Krallen.
heat-step-cooler_water = { heat-do-cooler_water } Nie Eis oder viel kaltes Wasser auf einmal. Zu warmes Wasser hält zu wenig Luft.
heat-step-check_the_range = { heat-do-check_the_range } So weit liegt kein Thermometer daneben, aber mein Bereich ist aus dem Gedächtnis. Vergleich ihn mit einem Buch oder frag eine reptilienkundige Tierarztpraxis, bevor du etwas änderst.
heat-step-measure_again = { heat-do-measure_again } So weit kann auch ein Thermometer danebenliegen. Zu ändern ist noch nichts.
heat-step-leave_as_it_is = { heat-do-leave_as_it_is } Was du gemessen hast, stimmt. Miss wieder, wenn die Jahreszeit oder der Raum sich ändert.
