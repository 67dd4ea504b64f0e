### Worum es in jeder Gruppe des Menüs geht, höchstens 100 Zeichen.

menu-uv = Mehr zu UV: bei einem Abstand, welche Röhre, deine Messung, Karte, ein Tag, Tabelle, echte Sonne
menu-heat = Mehr zu Wärme und Licht: Watt, Luft, Flächen, Arten von Lampen, Helligkeit, Stunden
menu-noonstone = Zu Bot und Einrichtung: was du fragen kannst, ein nächster Schritt, wie Lampen hängen, Umrechnen
menu-mine = Deine Terrarien und Messungen, nur für dich gespeichert
menu-remind = Erinnerungen ans Messen, Tauschen oder Nachsehen
menu-cases = Für Helfer: Terrarien, die jemand hier zeigt, und was geraten wurde
menu-server = Für Moderatoren: die Einstellungen der Gruppe und ihre eigenen Zahlen
menu-board = Für Moderatoren: angeheftete Aushänge, die aktuell bleiben
menu-for = für wen die Antwort ist: sie steht im Kanal, und nur diese Person wird benachrichtigt
menu-message-ask = Das beantworten
menu-message-check = Diese Einrichtung prüfen
menu-message-add = Zur letzten dazunehmen
