### Der erfundene Morgen eines Neulings: was gesagt wird, und wo Worte getippt werden, auch diese.

demo-distance = Ich habe eine Röhre mit 12 % in einer spiegelnden Leuchte, innen, ohne Gitter. Wie hoch?
demo-temps = Seit drei Stunden an. Der Stein hat 98 °F, das andere Ende 75 °F. Passt das?
demo-night = Vor Sonnenaufgang hat es hier 58 °F. Muss ich die ganze Nacht heizen?
demo-check = Ich weiß nicht, was ich fragen soll. Ich erzähle einfach, was ich habe.
demo-convert = Was sind 14 und ein halber Zoll in Zentimetern?
demo-typed-check = check hallo, meine bartagame: röhre 12%, reflektor, liegt auf dem gitter, 36 cm bis zum ast, sonnenplatz 37 grad, kühle seite 24 grad, passt das so
demo-rest = Das war ein Morgen. Wo der Rest steht:
demo-rest-all = jede Frage mit ihren Beispielen
demo-rest-full = alles zu einer Antwort
demo-rest-console = selbst fragen
