### Ein Maß im anderen System.

convert-title = Umrechnung
convert-head = { $first } sind { $second }.
convert-also = Auch { LIST($also, join: "list-or") }.
convert-reading = Das ist ein Messwert. Für wärmer oder kälter um so viel: schreib difference davor, etwa convert difference 10F
convert-difference = So viel wärmer oder kälter, kein Messwert.
convert-label-also = Auch
convert-in = { $high ->
    [none] { DIGITS($low) }
   *[some] { DIGITS($low) } bis { DIGITS($high) }
  } { $sign ->
    [inch] in
    [foot] ft
    [centimetre] cm
    [millimetre] mm
    [fahrenheit] °F
   *[celsius] °C
  }{ $differs ->
    [yes] {" "}Unterschied
   *[no] {""}
  }
