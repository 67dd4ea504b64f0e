### Facts: SetupTold, ReadOnce, UvStanding
### A kept set-up and its readings.

## The set-up
home-label-animal = Animal
# Only with: $animal
home-told-animal = { NAME($animal) }
home-label-lamp = UV lamp
# Only with: $lamp_known
home-told-lamp = { $lamp_known }{ $percent ->
    [none] {""}
   *[some] { $is_t5 ->
        [yes] , { SHARE($percent, form: "given") }
       *[no] , { SHARE($percent, form: "given") } on its label
      }
  }
home-label-fixture = Fixture
# Only with: $reflector
home-told-fixture = { $reflector ->
    [polished] polished reflector
   *[plain] plain, without a reflector
  }
home-label-long = Length of the tube
# Only with: $tube_length
home-told-long = { LENGTH($tube_length) }
home-label-since = In use since
# Only with: $since
home-told-since = { DAY($since) }
home-label-tubes = Side by side
# Only with: $tubes
home-told-tubes = { $tubes } of them{ $gap ->
    [none] {""}
   *[some] , { LENGTH($gap) } from middle to middle
  }
home-label-screen = Screen
# Only with: $screen
home-told-screen = { $screen }
home-screen-glass = glass, which lets no useful UV through
home-screen-plastic = plastic, which lets no useful UV through
home-label-lid = Lid
# Only with: $lid
home-told-lid = { $lid ->
    [glass] glass: it lets no useful UV through
   *[plastic] plastic: it lets no useful UV through
  }
home-label-distance = Tube to back
# Only with: $distance
home-told-distance = { LENGTH($distance) }
home-label-size = Enclosure
# Only with: $length
home-told-size = { $depth ->
    [none] { LENGTH($length) } long
   *[some] { $height ->
        [none] { LENGTH($length) } by { LENGTH($depth) }
       *[some] { LENGTH($length, units: "first") } × { LENGTH($depth, units: "first") } × { LENGTH($height, units: "first") } ({ LENGTH($length, units: "second") } × { LENGTH($depth, units: "second") } × { LENGTH($height, units: "second") })
      }
  }

## The readings
home-what-uvi = UV index
home-what-basking_surface = Basking surface
home-what-warm_air = Warm end
home-what-cool_air = Cool end
home-what-night_air = Night low
home-last-uvi = Last UV index
home-last-basking_surface = Last surface
home-last-warm_air = Last warm end
home-last-cool_air = Last cool end
home-last-night_air = Last night
# Only with: $uvi
home-uvi = { UVI($uvi, form: "given") }{ $at ->
    [none] {""}
   *[some] {" "}at { LENGTH($at) }
  }
# Only with: $temp
home-temp = { TEMP($temp) }
home-standing = { $told }: { $verdict }. Aim for UV index { UVI($wanted, form: "range") }.
home-labelled = { $label }: { $told }
