### Facts: Examined
### What the check-up before the start tells.

doctor-state-fine = fine
doctor-state-to_do = to do
doctor-state-unknown = not checked
doctor-part-python = Python
doctor-part-packages = packages
doctor-part-folder = data folder
doctor-part-clock = clock
doctor-part-database = database
doctor-part-pictures = pictures
doctor-part-token = token
doctor-part-rights = permissions
doctor-end = { $count ->
    [0] Nothing to do.
   *[other] { $count } to do.
  }

## The machine
doctor-python = { $here }
doctor-python-old = { $here } is too old: install { $wanted } or newer.
doctor-not-installed = { $here } is not installed here: install it as README.md says.
doctor-packages = { $count } needed, all there
doctor-packages-wrong = install again: { $here }.
doctor-folder = { $here }; { $count } MB free
doctor-folder-new = { $here }, made at the first start; { $count } MB free
doctor-folder-full = only { $count } MB are free at { $here }: make room.
doctor-folder-unwritable = { $here } cannot be written: give it to this user, or set NOONSTONE_DATA_DIR.
doctor-clock = { $here }; time zones known
doctor-clock-behind = it says { $here }, before this program was written: set it.
doctor-zones-unknown = time zones are not known here: pip install tzdata.
doctor-zones-wrong = time zones are wrong here: pip install tzdata.
doctor-database = { $here }
doctor-database-new = { $here }, new; set up at the first start
doctor-database-old = { $here }; the next start brings it to { $wanted }: make a backup before
doctor-database-away = it cannot be reached or written: check that it runs, and the address and password in NOONSTONE_DATABASE_URL.
doctor-database-starting = { $here } is starting up: look again in a minute.
doctor-database-busy = others keep { $here } busy: look again in a minute, and see who else holds it.
doctor-database-full = the disk of { $here } is full: make room. What was saved is still there.
doctor-database-read_only = { $here } may only be read: give it to this user to write. What was saved is still there.
doctor-database-refused = { $here } refuses this login, or its tables belong to somebody else: check the rights, and the name and password in NOONSTONE_DATABASE_URL.
doctor-database-damaged = { $here } is damaged. Stop the bot, move that file away but keep it, then put the newest backup back: noonstone restore BACKUP.
doctor-pictures = drawn, with letters in { $count } weights ({ $here } bytes)
doctor-pictures-none = none can be drawn ({ $here }): install it again.

## Discord
doctor-token = Discord knows the bot as { $here }
doctor-token-none = NOONSTONE_TOKEN is not set; Discord needs it, the console and the pages do not.
doctor-token-refused = Discord refused the token: put a fresh one into NOONSTONE_TOKEN.
doctor-token-away = it is set, but Discord cannot be reached from here ({ $here })
doctor-invite = invite the bot with { $here }
doctor-link = the portal's install link has { $here }
doctor-link-lacks = the portal's install link lacks { $here }: set { $wanted } there.
