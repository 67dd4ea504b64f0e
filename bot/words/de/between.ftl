### Was zwischen Röhre und Tier ist.

between-label = Gitter
between-name = { $net ->
    [none] kein Gitter
    [flat] ein Gitter, das { SHARE($blocks) } abhält
    [weave] { $open ->
        [none] ein Gitter
       *[some] ein Gitter, das zu { SHARE($open) } offen ist
      }
   *[as_read] das Gitter, das jetzt da ist
  }
between-row-none = Kein Gitter, also geht kein UV verloren.
between-row-flat = Es hält { SHARE($blocks) } vom UV ab, wie du gesagt hast, auf 15 % genau.
# Only with: $wire
between-row-weave = Es hält hier etwa { SHARE($blocks) } vom UV ab; was durchkommt, stimmt auf 15 % genau. { SHARE($wire) } ist Draht, von vorn gesehen. Der Rest geht verloren, weil das meiste Licht schräg kommt.
between-row-as_read = Das hast du nicht gesagt. Ich habe angenommen: Was jetzt dazwischen ist, war beim Messen da und bleibt. Kommt ein Gitter dazu oder weg? Dann miss neu.
between-assumed = Angenommen: Gitter wie beim Messen.
