### Facts: Converted, ShownIn
### A measure the other way.

convert-title = Conversion
convert-head = { $first } is { $second }.
convert-also = Also { LIST($also, join: "list-or") }.
convert-reading = That is a reading. For how much warmer or colder, write difference before it: convert difference 10F
convert-difference = That is how much warmer or colder, not a reading.
convert-label-also = Also
convert-in = { $high ->
    [none] { DIGITS($low) }
   *[some] { DIGITS($low) } to { DIGITS($high) }
  } { $sign ->
    [inch] in
    [foot] ft
    [centimetre] cm
    [millimetre] mm
    [fahrenheit] °F
   *[celsius] °C
  }{ $differs ->
    [yes] {" "}of difference
   *[no] {""}
  }
