### Was auf Knöpfen steht.

button-picture = Bild
button-change = Ändern
button-share = Teilen
button-all = Alles zeigen
