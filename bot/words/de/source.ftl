### Wie gut eine Quelle ist, neben ihr in einem Wort.

source-standard = Norm
source-paper = Studie
source-handbook = Handbuch
source-dataset = Messdaten
source-derivation = hergeleitet
source-common_practice = übliche Praxis
source-memory = Gedächtnis
