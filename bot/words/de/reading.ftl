### Was die eigenen Messwerte über eine Lampe sagen.

reading-title = Diese Messwerte können nicht stimmen
reading-off-nothing = Deine Messwerte passen zu einer Lampe.
reading-off-contradict = Deine Messwerte passen nicht zu einer einzigen { $tube ->
    [yes] Röhre
   *[no] Lampe
  }: Miss noch einmal, bevor du etwas bewegst.
reading-off-strong = Du hast viel mehr gemessen, als { $strongest ->
    [yes] eine sehr starke Röhre
   *[no] eine solche Röhre
  } gibt (T5 HO, { SHARE($strength, form: "given") }): etwa { $many }-mal so viel. Lass dein Tier nicht darunter, und miss noch einmal.
reading-off-weak = Du hast viel weniger gemessen, als eine solche Röhre gibt (T5 HO, { SHARE($strength, form: "given") }): etwa { SHARE($part) } davon. Häng sie nicht näher, und miss noch einmal. Ist der Sensor oder die Röhre schmutzig, oder ist ein Gitter dazwischen?
reading-was-it = { $meant ->
    [uvi] Waren es { UVI($uvi_meant, form: "given") } statt { UVI($uvi_read, form: "given") }?
    [centimetres] Waren es { $number_meant } cm statt Zoll?
    [inches] Waren es { $number_meant } Zoll statt cm?
   *[distance] { $inches ->
        [yes] Waren es { $number_meant } in statt { $number_read } in?
       *[no] Waren es { $number_meant } cm statt { $number_read } cm?
      }
  }
reading-left-out = UV-Index { UVI($read, form: "given") } bei { $typed } passt nicht zu den anderen Werten, darum zählt er nicht.
reading-aside-label = Zählt nicht
reading-aside = UV-Index { UVI($read, form: "given") } bei { LENGTH($at) }. Nach den anderen müssten es etwa { UVI($by_others) } sein. Miss dort noch einmal.
reading-falls-label = Wie es abnimmt
reading-falls = { $by_readings ->
    [yes] Deine Messwerte zeigen: Es nimmt ab wie bei einer kleinen Lampe.
   *[no] Ich habe angenommen, dass es abnimmt wie bei einer kleinen Lampe, so wie es diese Art tut.
  } { $at_face ->
    [yes] Das Licht kommt von der Vorderseite: doppelt so weit weg ist es ein Viertel.
   *[no] Das Licht kommt von { LENGTH($behind) } hinter der Vorderseite: doppelt so weit weg ist es ein Viertel.
  } Das ist kein Messfehler. Ist es doch eine Röhre? Dann nenn mir ihre Länge.

## Was zuerst zu tun ist
reading-again = Miss noch einmal, wenn die Lampe 30 Minuten an war: unter der Mitte der Röhre, den Sensor zu ihr hin, andere Lampen aus.
reading-wipe = Wisch den Sensor ab, und die Röhre, wenn sie kalt und der Stecker gezogen ist. { reading-again }
reading-worn = Zeigt es wieder dasselbe, ist die Röhre verbraucht: Setz eine neue ein, statt näher zu gehen.
reading-check = { reading-again } Prüf, ob das Gerät einen UV-Index zeigt und nicht µW/cm², und ob du von der leuchtenden Röhre bis zum Sensor gemessen hast.
reading-nearer = Miss noch einmal näher an der Röhre, wo das Gerät 1 oder mehr zeigt. Ein so schwacher Wert ist zu stark gerundet.
reading-then-ask = Frag dann mit den neuen Messwerten noch einmal. Beweg vorher nichts.
reading-again-short = Lampe 30 min an, dann neu messen.
reading-nothing-moves = Miss neu, bevor du sie bewegst.
reading-left-out-short = Ohne { UVI($read, form: "given") } bei { $typed }.
reading-wipe-short = Lampe aus: Röhre und Sensor putzen.
reading-head-nothing = Deine Messwerte passen zusammen.
reading-head-contradict = Noch nicht: Messwerte passen nicht.
reading-head-strong = Tier fernhalten: viel zu viel UV.
reading-head-weak = Noch nicht näher: viel zu wenig UV.
