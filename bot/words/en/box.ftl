### Facts: Box

box-label = Enclosure
box-told = { $size }, { box-walls }, { box-lid }{ $untold ->
    [both] . You did not say material: and lid:, so I assumed them.
    [walls] . You did not say material:, so I assumed it.
    [lid] . You did not say lid:, so I assumed it.
   *[nothing] .
  }
box-assumed = I assumed { $untold ->
    [walls] { box-walls }.
    [lid] a { box-lid }.
   *[both] { box-walls-short } and a { box-lid }.
  }
box-walls = { $walls ->
    [mesh] mesh on all sides
    [glass] glass
    [wood] wood with a glass front
    [pvc] PVC with a glass front
   *[melamine] melamine board with a glass front
  }
box-walls-short = { $walls ->
    [mesh] mesh
    [glass] glass
    [wood] wood
    [pvc] PVC
   *[melamine] melamine board
  }
box-lid = { $lid ->
    [solid] solid lid
    [part_mesh] part mesh lid
   *[full_mesh] full mesh lid
  }
