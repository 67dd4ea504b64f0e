### Facts: Known
### What several questions say.

## How a figure is known
known = { $how ->
    [common_practice] common practice, no source
    [memory] from memory, unchecked
    [own] the group's own figure
   *[published] published: { $citation }
  }{ $note ->
    [none] { $set_on ->
        [none] {""}
       *[some] , set on { DAY($set_on) }
      }
   *[some] ; { $note }
  }
memory-short = Range from memory, unchecked.

## Cautions of lamps and heaters
care-guard = Heat lamps burn skin and start fires. Use a guard, a ceramic holder and two supports, and keep everything that burns away.
care-guard-short = Put a guard over every heater.
care-off-first = Switch off and let it cool before you move or change a lamp. Follow your local electrical codes.
care-vet-heat = Call a reptile vet if your animal gapes and stays in the coolest corner, lies limp or has a burn.

## Cautions of UV lamps
care-eyes = Do not look into the lit lamp, and switch it off before you reach in.
care-eyes-short = Never look into the lit lamp.
care-shade = Give shade: your animal must be able to leave the UV.
care-shade-short = Give it shade, out of the UV.
care-uv-meter = A tube that is unknown, older than a year or stronger than 12 % needs a UV meter.

## Steps of lamps and heaters
step-after-change = Measure again after two hours, and go on in small steps. The numbers here are a start, your thermometer decides.
step-warm-room = That is more than one lamp gives, and many lamps on one box are a fire risk. Warm the room first, or close more of the lid with something that cannot burn.

## Another language
only-english = This answer is not there in your language yet.
only-english-rest = The rest of this answer is not there in your language yet.
