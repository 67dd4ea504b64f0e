### Facts: ReadJoined, ReadItem, ReadUnclear, ReadWhich, ReadLength, ReadTemp, ReadShare, ReadUvi, ReadStrength, ReadName, ReadText
### What was read from the words of a set-up.

read-label-animal = Read of the animal
read-label-uv = Read of the UV
read-label-heat = Read of the heat
read-label-lamps = Read of the lamps
read-label-enclosure = Read of the enclosure
read-joined = { $item }{ $rest ->
    [none] {""}
   *[some] ; { $rest }
  }
read-item = { read-what }{ $value ->
    [none] {""}
   *[some] {" "}{ $value }
  } ({ $option ->
    [yes] as you corrected it
   *[no] from “{ $words }”
  }{ $hedged ->
    [yes] , you were not sure
   *[no] {""}
  }{ $taken ->
    [unit] , the unit is my reading
    [blocks] , which I assumed is what it blocks
   *[nothing] {""}
  })
read-what = { $what ->
    [animal] animal
    [animal_age] age
    [tube] tube
    [tubes] tubes together
    [gap] tubes apart
    [across] the tube lies across
    [tube_length] tube length
    [age] tube age
    [lamp] lamp
    [uv_lamp] UV lamp
    [without] no
    [reflector] reflector
    [screen] screen
    [placement] the tube is
    [lid] lid
    [distance] tube at
    [distance_back] tube to back
    [distance_perch] tube to perch
    [distance_floor] tube to floor
    [lamp_distance] heat lamp at
    [enclosure] size
    [enclosure_length] length
    [volume] volume
    [material] material
    [basking] basking
    [warm] warm end
    [cool] cool end
    [night] night
    [room] room
    [room_night] room at night
    [temperature] temperature
    [thermometer] measured with
    [watts] watts
    [other_watts] watts of a heater
    [dimmer] dimmer
    [thermostat] thermostat
    [hours] hours of light
    [on_for] lamp on for
    [uvi] meter shows UVI
    [uvi_at] meter shows UVI
   *[text] text
  }
read-unclear-label = Unclear
read-unclear = “{ $words }”: { $question }
read-which = Which one is it: { LIST($names, join: "list-or") }?

## Values
read-length = { LENGTH($length) }
read-length-range = { LENGTH($length, form: "range") }
read-temp = { TEMP($temp) }
read-temp-range = { TEMP($temp, form: "range") }
read-share = { SHARE($share) }
read-blocks = blocks { SHARE($share) }
read-passes = passes { SHARE($share) }
read-uvi = { UVI($uvi, form: "range") }
read-strength = { $percent } %{ $older ->
    [yes] {" "}(older scale)
   *[no] {""}
  }
read-name = { NAME($name) }
read-text = { $text }
read-none = none
read-uvb = UVB
read-night-heat = heat at night
read-fixture-polished = polished
read-fixture-plain = plain
read-placement-over = over the mesh
read-placement-inside = inside
read-lid-mesh = mesh
read-lid-solid = solid
read-lid-glass = glass
read-lid-plastic = plastic
read-material-glass = glass
read-material-mesh = mesh
read-material-wood = wood
read-material-pvc = PVC
read-material-melamine = melamine
read-thermometer-infrared_gun = infrared gun
read-thermometer-digital_probe = digital probe
read-thermometer-dial = dial
read-uv-t5_ho = T5 HO tube
read-uv-other_tube = T8 or other tube
read-uv-compact = compact lamp
read-uv-metal_halide = metal halide lamp
read-uv-mercury = mercury vapour lamp
read-uv-led = LED bar
read-uv-unknown = not sure
