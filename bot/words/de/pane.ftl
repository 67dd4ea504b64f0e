### Eine Röhre über Glas oder klarem Kunststoff.

pane-what = { $glass ->
    [yes] Glas
   *[no] klarem Kunststoff
  }
pane-title = Kein nützliches UV kommt durch: { pane-what }
pane-head = Unter { pane-what } hilft kein Abstand.
pane-range = Fast das ganze UVB bleibt darin.
pane-do-move = Häng die Röhre nach innen, oder nimm Gitter.
pane-why = So klar es aussieht: Fast das ganze UVB bleibt darin. Frag noch einmal für die Röhre innen oder über offenem Metallgitter.
pane-step-move = Häng die Röhre in das Terrarium, oder setz offenes Metallgitter ein, wo jetzt die Scheibe ist.
pane-step-ask = Frag dann noch einmal: mit screen:none für eine Röhre innen, oder mit dem, was das Gitter abhält, etwa screen:45%. Fang am fernen Ende des Bereichs an.
pane-step-meter = Wenn du ein UV-Messgerät leihen kannst, halt es unter die Scheibe: Es zeigt fast nichts.
