### Was andere Quellen dagegen sagen: others-<Tier>-<Thema>-<Nummer>.

others-blue-tongued-skink-uvi-1 = Manche Listen führen ihn in Zone 2, andere in Zone 3. Ich habe keine davon geprüft.
others-corn-snake-zone-1 = Manche Listen führen sie in Zone 1, andere in Zone 2. Ich habe keine davon geprüft.
others-corn-snake-uvi-1 = In einem Versuch stieg ihr Vitamin D nach 28 Tagen unter UV-Lampen. Sie kann UV also nutzen.
others-crested-gecko-basking_surface-1 = Manche bieten gar keinen warmen Platz an, andere einen milden mit etwa 28 bis 29,5 °C (82 bis 85 °F).
others-green-anole-uvi-1 = Manche Listen führen ihn in Zone 2, andere in Zone 3. Ich habe keine davon geprüft.
others-panther-chameleon-zone-1 = Messungen in Madagaskar sprechen für Zone 4.
others-panther-chameleon-zone-2 = Ältere Übersichten nennen Zone 2.
others-royal-python-uvi-1 = In einem Versuch stieg sein Vitamin D nach 70 Tagen unter UV-Lampen nicht. Ob er UV braucht, ist also offen.
