### Was statt einer Röhre passt, die nicht taugt.

instead-fixture = { $fixture ->
    [polished] polierter Reflektor
   *[plain] einfache Leuchte
  }
instead-tube = T5 HO, bis { SHARE($strength) }, { instead-fixture }
instead-full = { $keepers ->
    [none] { instead-tube }, { $screen }, { LENGTH($away, form: "range") } vom Rücken.
   *[other] { instead-tube }, { $screen }, { LENGTH($away, form: "range") } vom Rücken (nach { $keepers } Haltern deiner Gruppe).
  }
instead-use = Nimm stattdessen: { instead-full }
instead-better = Besser für den Anfang: eine stärkere Röhre, bis { SHARE($strength) }, { instead-fixture }, { $screen }, { LENGTH($away, form: "range") } vom Rücken. Eine schwache Röhre über einem Gitter hängt so nah, dass jeder Zentimeter zählt.
instead-short = Nimm { instead-tube }{ $bare ->
    [yes] , kein Gitter
   *[no] {""}
  }: { LENGTH($away, form: "range") }.
instead-keeper = Frag jemanden mit UV-Messgerät: Keine Röhre von 6 bis 12 % passt hier.
instead-keeper-short = Frag jemanden mit UV-Messgerät.
instead-weaker = Nimm eine schwächere Röhre. Diese müsste weiter weg hängen, als in den meisten Terrarien Platz ist.
