### What other sources say against a target: others-<animal>-<subject>-<count>.

others-blue-tongued-skink-uvi-1 = Some lists put it in zone 2, others in zone 3. I checked neither.
others-corn-snake-zone-1 = Some lists put it in zone 1, others in zone 2. I checked neither.
others-corn-snake-uvi-1 = In one trial, 28 days under UV lamps raised its vitamin D, so it can use UV.
others-crested-gecko-basking_surface-1 = Some keepers offer no warm spot at all. Others offer a gentle one near 82 to 85 °F (28 to 29.5 °C).
others-green-anole-uvi-1 = Some lists put it in zone 2, others in zone 3. I checked neither.
others-panther-chameleon-zone-1 = Field data from Madagascar put it in zone 4.
others-panther-chameleon-zone-2 = Older summaries put it in zone 2.
others-royal-python-uvi-1 = In one trial, 70 days under UV lamps did not raise its vitamin D. So it is open whether it needs UV.
