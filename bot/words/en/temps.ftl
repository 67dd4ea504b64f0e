### Facts: Temps, HeatReading

temps-title = Temperatures for { NAME($animal, form: "a") }

## The answer in brief
temps-nothing-read = Give me a reading and I can help.
temps-contradict = These readings contradict each other.
temps-read = You read { LIST($told) }.
temps-too-soon = It is too soon to judge.
temps-open = What I know a target for is right.
temps-all-right = Yes. All your readings are right.
temps-head-right = Fine. { heat-verdict }
temps-head-too_low = { heat-verdict }
temps-head-too_high = { heat-verdict }
temps-head-probably_low = { heat-verdict }
temps-head-probably_high = { heat-verdict }
temps-head-cannot_tell = I cannot tell. { heat-verdict }
temps-head-keepers_differ = { heat-verdict }
temps-head-no_need = { heat-verdict }
temps-head-no_target = I cannot tell. { heat-verdict }
temps-right = Right: { LIST($right) }.
temps-lamp-time = Lamp on 2 to 3 hours? If not, wait.
# Only with: $mistaken
temps-mistaken-short = { $mistaken }: if you meant °F, ask again with F.
temps-do-open = Ask a keeper or reptile vet about the rest.
temps-do-after = Measure again after two hours.

## Steps
temps-step-open = Leave what is right as it is. Ask a keeper or reptile vet you trust about the reading for which I know no target, before you change it or rely on it.
temps-step-read-and-ask = Then measure again, with the lamp on for 2 to 3 hours, and ask again.
temps-step-one-change = Make one change at a time. Measure again after two hours, and go on in small steps. The numbers here are a start: your thermometer decides.
temps-step-after-a-night = Measure the coldest of the night again the next morning.

## Numbers
temps-label-missing = Still to measure
temps-missing = { LIST($unread) }
temps-label-room = Room
# Only with: $room
temps-room = { TEMP($room) }
# Only with: $warm_past
temps-room-untold = You did not say how warm the room is. From { TEMP($warm_past) } on, only a cooler room helps. Tell me with room:.
temps-label-mistaken = Wrong unit?
# Only with: $mistaken
temps-mistaken = { $mistaken } is far too hot in °C. If your thermometer shows °F, ask again with F.
