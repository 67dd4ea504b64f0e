### Facts: KeptPicture
### Was die Konsole um ihre Antworten herum sagt.

console-greeting = Noonstone. Tipp eine Frage ein, zum Beispiel:
console-greeting-help = help zeigt, was ich beantworte; mit quit gehst du.
console-picture = Bild: { $file }
console-no-picture = Zu dieser Antwort gibt es kein Bild.
console-with = --with nimmt den dialogue, den ask --json ausgegeben hat.
