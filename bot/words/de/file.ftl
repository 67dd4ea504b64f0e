### Warum eine Datei nicht zurückgenommen wird.

file-head = Diese Datei kann ich nicht zurücknehmen.
file-at = { $where ->
    [none] Die Datei
   *[some] { $where }
  }
file-huge = Sie ist größer als zwei Megabyte. So groß ist kein Export.
file-no_json = Sie ist kein JSON, oder ihr Ende fehlt.
file-missing = { file-at } fehlt.
file-unknown = { file-at } kenne ich nicht.
file-no_word = { file-at }: Dieses Wort geht hier nicht.
file-other = { file-at } passt nicht.
file-step = Nimm einen Export, wie er war: { $example }
