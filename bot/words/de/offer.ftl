### Ein Messwert für die Gruppe, und wieder zurück

## Was gemessen wurde
# Only with: $strength, $long
offer-lamp = T5 HO, { SHARE($strength, form: "given") }, { $fixture ->
    [polished] polierter Reflektor
   *[plain] einfache Leuchte
  }, { LENGTH($long) } lang
# Only with: $own
offer-lamp-own = die Lampe „{ $own }“ deiner Gruppe
offer-read = UV-Index { UVI($read) } bei { LENGTH($at) }, { DAY($day) }
offer-between = { CAP($between) }
offer-age = { $months ->
    [none] nicht gesagt
   *[some] etwa { NUMBER($months) } Monate
  }
offer-label-read = Gemessen
offer-label-lamp = Lampe
offer-label-between = Gitter
offer-label-age = Alter der Lampe
offer-line = { $lamp }, { $between }: UV-Index { UVI($read) } bei { LENGTH($at) }, { DAY($day) }

## Zuerst gefragt
offer-title = Darf deine Gruppe diesen Messwert haben?
offer-ask = { $count ->
    [one] Noch ist nichts weitergegeben, er gehört dir.
   *[other] Noch ist nichts weitergegeben, sie gehören dir.
  }
offer-what = Sie bekommt nur Zahlen, keinen Namen.
offer-back = Du kannst ihn jederzeit zurücknehmen.
offer-step-yes = Ja, weitergeben: { $again }
offer-step-no = Nein? Dann tu nichts. Es wird nichts aufgehoben.
offer-why = Die Messwerte vieler Halter zeigen, wie stark eine Art Lampe wirklich ist. Sobald genug Halter ihre gegeben haben, gehen die Antworten deiner Gruppe danach.

## Weitergegeben
offer-given-title = Danke
offer-given = { $new ->
    [0] Das hat deine Gruppe schon.
    [one] Jetzt hat ihn deine Gruppe.
   *[other] Deine Gruppe hat { $new } Messwerte mehr.
  }
offer-step-group = Sieh, was sie zeigen: mine group
offer-step-withdraw = Zurücknehmen: mine withdraw

## Zurückgenommen
offer-list-title = Was du dieser Gruppe gegeben hast
offer-list = { $count ->
    [0] Du hast dieser Gruppe nichts gegeben.
    [one] Du hast dieser Gruppe einen Messwert gegeben.
   *[other] Du hast dieser Gruppe { $count } Messwerte gegeben.
  }
offer-number = Messwert { $number }
offer-step-one = Einen zurücknehmen: mine withdraw reading:NUMMER, mit seiner Nummer
offer-step-all = Alle zurücknehmen: mine withdraw reading:all
offer-step-first = Einen geben: mine offer
offer-gone-title = Zurückgenommen
offer-gone = { $gone ->
    [0] Es gab nichts zurückzunehmen.
    [one] Ein Messwert ist endgültig gelöscht.
   *[other] { $gone } Messwerte sind endgültig gelöscht.
  }
offer-step-list = Sieh, was noch da ist: mine withdraw
offer-backups = In Sicherungen, die vorher gemacht wurden, steht es noch, bis sie weggeworfen werden. Sie liegen bei denen, die diesen Bot betreiben.
offer-no-such = Keiner deiner Messwerte hier hat diese Nummer.

## Warum nicht
offer-no-pane = Durch Glas und Kunststoff kommt kein brauchbares UV. So ein Messwert sagt nichts über die Lampe.
offer-no-several = Unter mehreren Lampen zugleich weiß niemand, welche was gibt. Miss unter einer.
offer-lacks-tube = Sag mir, welche Röhre es ist, nach ihrem Aufdruck.
offer-lacks-reflector = Sag mir, was hinter der Röhre ist: polished oder plain.
offer-lacks-screen = Sag mir, was zwischen Messgerät und Lampe war, oder none.
offer-lacks-length = Sag mir, wie lang die Röhre ist.
offer-lacks-reading = Es gibt keinen UV-Messwert, den du geben könntest.
offer-lacks-place = Sag mir, wie weit von der Lampe du gemessen hast.
