### Das Terrarium

box-label = Terrarium
box-told = { $size }, { box-walls }, { box-lid }{ $untold ->
    [both] . Du hast material: und lid: nicht genannt, also habe ich sie angenommen.
    [walls] . Du hast material: nicht genannt, also habe ich es angenommen.
    [lid] . Du hast lid: nicht genannt, also habe ich es angenommen.
   *[nothing] .
  }
box-assumed = Angenommen: { $untold ->
    [walls] { box-walls }.
    [lid] { box-lid }.
   *[both] { box-walls-short }, { box-lid }.
  }
box-walls = { $walls ->
    [mesh] Gitter an allen Seiten
    [glass] Glas
    [wood] Holz mit Glasfront
    [pvc] PVC mit Glasfront
   *[melamine] Melaminplatte mit Glasfront
  }
box-walls-short = { $walls ->
    [mesh] Gitter
    [glass] Glas
    [wood] Holz
    [pvc] PVC
   *[melamine] Melaminplatte
  }
box-lid = { $lid ->
    [solid] geschlossener Deckel
    [part_mesh] Deckel mit etwas Gitter
   *[full_mesh] Gitterdeckel
  }
