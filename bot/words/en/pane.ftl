### Facts: ThroughPane
### A tube over glass or clear plastic.

pane-what = { $glass ->
    [yes] glass
   *[no] clear plastic
  }
pane-title = No useful UV comes through { pane-what }
pane-head = No distance helps under { pane-what }.
pane-range = Nearly all of the UVB stays in it.
pane-do-move = Move the tube inside, or use open mesh.
pane-why = However clear it looks, { pane-what } keeps nearly all of the UVB. Ask again for the tube inside, or over open metal mesh.
pane-step-move = Move the tube inside the enclosure, or put open metal mesh where the pane is.
pane-step-ask = Then ask again with screen:none for a tube inside, or with what the mesh blocks, such as screen:45%. Start at the far end of the range.
pane-step-meter = If you can borrow a UV meter, hold it under the pane: it will show hardly any.
