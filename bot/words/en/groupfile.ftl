### Facts: GroupTaken, GroupForgetting, GroupForgotten
### All of a group as a file, taken back, or deleted.

groupfile-title = All that this group has set
groupfile-head = Here is your group's file.
groupfile-alone = Keep it where only moderators can read it.
groupfile-step-back = Take it back with: server import file:server.json

groupfile-taken-title = The file is taken back
groupfile-taken = Kept as in the file: { $figures ->
    [one] 1 figure
   *[other] { $figures } figures
  } and { $channels ->
    [one] 1 channel
   *[other] { $channels } channels
  }.
groupfile-taken-rest = What it does not name stays as it was.
groupfile-taken-boards = { $boards ->
    [one] 1 board comes back
   *[other] { $boards } boards come back
  } in a moment, if its channel is in this server.
groupfile-step-look = Look at it: server show

groupfile-sure-title = Delete everything of this group?
groupfile-sure = Nothing is deleted yet.
groupfile-sure-what = “Yes” deletes settings, your own figures, keepers' readings, the list of boards, counts and the log, for good.
groupfile-sure-reminders = Keepers' reminders in this server's channels go too.
groupfile-step-copy = Keep a copy first: server export
groupfile-step-sure = Then delete: server forget sure:yes
groupfile-gone-title = Everything of this group is deleted
groupfile-gone = { $found ->
    [yes] Everything of this group is deleted for good.
   *[no] There was nothing to delete.
  }
groupfile-gone-boards = { $boards ->
    [one] 1 pinned board stays in its channel as a message.
   *[other] { $boards } pinned boards stay in their channels as messages.
  }
groupfile-taken-readings = The file lists { $readings ->
    [one] one reading
   *[other] { $readings } readings
  } of your keepers. Those do not come back with it: each keeper brings their own with mine import.
