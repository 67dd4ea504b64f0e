### Ob eine Röhre bewegt wird, und wie weit.

# Only with: $mild
move-step-until_mild = Miss die Länge der Röhre von Ende zu Ende. Häng sie bis dahin { LENGTH($mild) } über den Rücken: Dort ist auch die längste nicht zu stark.
move-step-by_length = Miss die Länge der Röhre von Ende zu Ende: Kein Abstand passt für jede Länge.
# Only with: $begin
move-step-until_known = Bis du die Länge der Röhre kennst, häng sie { LENGTH($by) } weiter weg vom Rücken, auf { LENGTH($begin) }.
# Only with: $begin
move-step-leave = Lass sie so. Die Mitte des Bereichs läge bei { LENGTH($begin) }.
# Only with: $begin
move-step-until_read = Lass sie so, bis ein UV-Messgerät es zeigt: { LENGTH($begin) } wäre die Mitte.
# Only with: $begin
move-step-farther = Häng die Röhre { LENGTH($by) } weiter weg vom Rücken, auf { LENGTH($begin) }. Den Sonnenplatz tiefer zu setzen wirkt genauso.
# Only with: $begin
move-step-closer = Häng die Röhre { LENGTH($by) } näher an den Rücken, auf { LENGTH($begin) }. Den Sonnenplatz höher zu setzen wirkt genauso.
move-step-other_tube = Frag tube nach diesem Abstand, dann siehst du, welche Röhre passt.

## In Kürze
# Only with: $mild
move-do-until_mild = Bis du die Länge kennst: { LENGTH($mild) }.
move-do-by_length = Miss die Röhre von Ende zu Ende.
# Only with: $begin
move-do-until_known = Länge unklar: häng sie auf { LENGTH($begin) }.
move-do-leave = Dort ist es gut: lass sie so.
move-do-until_read = Lass sie, bis du neu gemessen hast.
move-do-farther = Häng sie { LENGTH($by) } weiter weg.
move-do-closer = Häng sie { LENGTH($by) } näher.
move-do-other_tube = Frag tube, welche passt.
