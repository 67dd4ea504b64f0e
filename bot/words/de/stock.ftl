### Lampen auf Vorrat und in Betrieb.

stock-title = Ersatzlampe „{ $name }“
stock-head = { $gone ->
    [yes] Nicht mehr in deinem Vorrat.
   *[no] { $box ->
        [none] Gemerkt{ $bought ->
            [none] {""}
           *[some] , gekauft am { DAY($bought) }
          }.
       *[some] Ab heute hängt sie über „{ $box }“.
      }
  }
# Only with: $lamp
stock-lamp = { CAP($lamp) }.
stock-step-measure = Miss das UV, bevor das Tier darunter sitzt: Eine neue Lampe kann stärker sein.
stock-step-all = Alle deine Lampen: mine lamps
stock-list-title = Deine UV-Lampen
stock-list-head = { $used ->
    [0] Keine in Betrieb
    [one] { $used } in Betrieb
   *[other] { $used } in Betrieb
  }, { $spares ->
    [0] keine auf Vorrat
    [one] { $spares } auf Vorrat
   *[other] { $spares } auf Vorrat
  }.
stock-worn = { $worn ->
    [one] Nach dem Alter ist { $worn } davon fällig.
   *[other] Nach dem Alter sind { $worn } davon fällig.
  }
stock-list-step-keep = Merk dir eine Ersatzlampe: mine spare name:Spare tube tube:12% bought:today
stock-list-step-use = Häng sie über ein Terrarium: mine spare name:Spare tube into:Pebble's box
stock-column-where = Wo
stock-column-lamp = Lampe
stock-column-age = Alter
stock-where = { $used ->
    [yes] über { $name }
   *[no] auf Vorrat: { $name }
  }
stock-age = { $since ->
    [none] nicht genannt
   *[some] { $used ->
        [yes] seit { DAY($since) }{ $due ->
            [yes] : fällig
           *[no] {""}
          }
       *[no] gekauft am { DAY($since) }
      }
  }
