### Was die Befehlszeile dem sagt, der das Programm betreibt.

## Hilfe
run-about = Licht und Wärme für Reptilien, aus dem Zollstock berechnet.
run-ask = eine Frage beantworten und aufhören
run-ask-question = etwa "convert 14in"
run-ask-json = die Antwort als JSON ausgeben, in SI-Einheiten
run-ask-with = das Gespräch aus --json, das weitergeht
run-ask-full = jeden Teil der Antwort ausgeben
run-ask-out = ein Ordner für das Bild, wenn es eines gibt
run-console = Fragen Zeile für Zeile beantworten
run-console-out = ein Ordner für die Bilder der Antworten
run-demo = ein erfundener Morgen einer Gruppe
run-demo-all = jede Frage, nicht nur die erste
run-demo-out = ein Ordner für die Antworten als Dateien
run-demo-sample = nur das Beispiel aus der README
run-commands = alle Fragen aufzählen
run-commands-json = mit Angaben und Beispielen, als JSON
run-commands-table = als Tabelle der README
run-discord = den Discord-Bot starten (NOONSTONE_TOKEN)
run-pages = der Leitfaden als Website: in einen Ordner geschrieben oder ausgeliefert
run-pages-out = die Website in diesen Ordner schreiben
run-pages-address = wo die Seiten stehen werden, etwa https://guide.example: bringt Sitemap und Karten für Chats
run-pages-serve = sie ausliefern, mit einer Seite zum Ausprobieren
run-pages-port = der Port auf 127.0.0.1 (8040)
run-deploy = eine Datei ausgeben, mit der man den Bot installiert
run-doctor = nachsehen, ob alles da ist, was der Bot braucht
run-backup = alle gespeicherten Daten in eine neue Datei schreiben
run-restore = die gespeicherten Daten einer Sicherung zurückholen
run-restore-replace = auch wo schon Daten gespeichert sind, die dann verloren gehen
run-language = die Sprache der Antworten
run-units = die Einheit, die zuerst steht

## Was getan wurde
run-kept = Alle gespeicherten Daten sind in { $file }. Heb sie auf, wo nur du sie lesen kannst.
run-restored = { $rows ->
    [one] { $rows } Zeile ist aus { $file } zurückgeholt.
   *[other] { $rows } Zeilen sind aus { $file } zurückgeholt.
  }
run-fault-would_be_lost = Es sind schon Daten gespeichert, und sie gingen verloren. Mach eine Sicherung davon und hol die andere dann mit --replace zurück.
run-fault-there_already = { $file } gibt es schon. Nenn eine neue Datei.
run-fault-unwritable = { $file } lässt sich nicht schreiben.
run-fault-unreadable = { $file } ist keine Sicherung, die sich lesen lässt.
run-fault-no_backup = { $file } ist keine Sicherung dieses Programms.
run-fault-damaged = { $file } ist beschädigt oder keine Sicherung dieses Programms.
run-no-token = NOONSTONE_TOKEN ist nicht gesetzt. Trag dort den Token des Bots ein und starte neu.

## Was argparse sagt; was hinter % steht, setzt es selbst ein
run-argparse-usage = Aufruf:
run-argparse-options = Angaben
run-argparse-arguments = Was dazugehört
run-argparse-help = diese Hilfe zeigen und aufhören
run-argparse-version = die Version zeigen und aufhören
run-argparse-error = %(prog)s: Fehler: %(message)s
run-argparse-argument = %(argument_name)s: %(message)s
run-argparse-required = es fehlt noch: %s
run-argparse-one-required = es fehlt eines von: %s
run-argparse-unknown = damit kann ich nichts anfangen: %s
run-argparse-choice = %(value)r gibt es hier nicht (es gibt: %(choices)s)
run-argparse-value = %(value)r passt hier nicht (%(type)s)
run-argparse-one = dahinter fehlt noch etwas
run-argparse-beside = das geht nicht zusammen mit %s
run-argparse-ignored = %r ist hier zu viel
run-argparse-ambiguous = %(option)s ist nicht eindeutig: %(matches)s

## Eine Einstellung, die es nicht gibt
run-setting = { $name } kann nicht „{ $text }“ sein. { $takes }
run-takes-units = Möglich ist in oder cm, zum Beispiel: cm.
run-takes-language = Möglich ist en oder de, zum Beispiel: de.
run-takes-pictures = Möglich ist dark oder light, zum Beispiel: dark.
run-takes-log = Möglich ist debug, info, warning oder error, zum Beispiel: info.
run-takes-health_port = Möglich ist ein Port von 1 bis 65535, zum Beispiel: 9100.
run-takes-shards-form = Möglich sind die Shards dieses Prozesses und wie viele es gibt, zum Beispiel 0,1/4 oder 0-3/16.
run-takes-shards-count = Es gibt mindestens 1 und höchstens { $count } Shards, zum Beispiel: 0/1.
run-takes-shards-twice = Ein Shard steht zweimal da. Nenn jeden einmal, zum Beispiel 0,1/4.
run-takes-shards-order = Nenn eine Spanne vom kleineren zum größeren, zum Beispiel 0-3/16.
run-takes-shards-beyond = Von { $count } Shards ist der erste 0 und der letzte { $last }, zum Beispiel 0/{ $count }.
