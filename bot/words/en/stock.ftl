### Facts: SpareTold, LampLine, LampsKept
### Lamps in stock and in use.

stock-title = Spare lamp “{ $name }”
stock-head = { $gone ->
    [yes] Gone from your stock.
   *[no] { $box ->
        [none] Kept{ $bought ->
            [none] {""}
           *[some] , bought on { DAY($bought) }
          }.
       *[some] It hangs over “{ $box }” from today.
      }
  }
# Only with: $lamp
stock-lamp = { CAP($lamp) }.
stock-step-measure = Measure the UV before the animal is under it: a new lamp may be stronger.
stock-step-all = All your lamps: mine lamps
stock-list-title = Your UV lamps
stock-list-head = { $used ->
    [0] No lamp in use
    [one] { $used } in use
   *[other] { $used } in use
  }, { $spares ->
    [0] none in stock
    [one] { $spares } in stock
   *[other] { $spares } in stock
  }.
stock-worn = { $worn ->
    [one] By its age, { $worn } is due for a new one.
   *[other] By their age, { $worn } are due for new ones.
  }
stock-list-step-keep = Keep a spare: mine spare name:Spare tube tube:12% bought:today
stock-list-step-use = Hang it over an enclosure: mine spare name:Spare tube into:Pebble's box
stock-column-where = Where
stock-column-lamp = Lamp
stock-column-age = Age
stock-where = { $used ->
    [yes] over { $name }
   *[no] in stock: { $name }
  }
stock-age = { $since ->
    [none] not told
   *[some] { $used ->
        [yes] since { DAY($since) }{ $due ->
            [yes] : due for a new one
           *[no] {""}
          }
       *[no] bought { DAY($since) }
      }
  }
