### Facts: KeptIn, Restored
### What the command line says to whoever runs the program.

## Help
run-about = Reptile lighting and heat, worked out from a tape measure.
run-ask = answer one question and leave
run-ask-question = such as "convert 14in"
run-ask-json = print the reply as JSON, in SI units
run-ask-with = the dialogue of --json to go on from
run-ask-full = print every part of the answer
run-ask-out = a folder for the picture, where there is one
run-console = answer questions line by line
run-console-out = a folder for the pictures of the answers
run-demo = an invented morning of a group
run-demo-all = every question, not only the first
run-demo-out = a folder for the answers as files
run-demo-sample = the README's sample session only
run-commands = list every question
run-commands-json = with options and examples, as JSON
run-commands-table = as the README's table
run-discord = run the Discord bot (NOONSTONE_TOKEN)
run-pages = the guide as a site: written to a folder, or served
run-pages-out = write the site into this folder
run-pages-serve = serve it with a page to try questions
run-pages-port = the port on 127.0.0.1 (8040)
run-deploy = print a file to install the bot with
run-doctor = look whether everything the bot needs is there
run-backup = write all saved data into a new file
run-restore = put the saved data of a backup back
run-restore-replace = also where there is saved data, which is lost
run-language = the language of the answers
run-units = the unit shown first

## What was done
run-kept = All saved data is in { $file }. Keep it where only you can read it.
run-restored = { $rows ->
    [one] { $rows } row is restored from { $file }.
   *[other] { $rows } rows are restored from { $file }.
  }
run-fault-would_be_lost = There is saved data already, and it would be lost. Make a backup of it, then restore with --replace.
run-fault-there_already = { $file } is there already. Name a new file.
run-fault-unwritable = { $file } cannot be written.
run-fault-unreadable = { $file } is not a backup that can be read.
run-fault-no_backup = { $file } is not a backup of this program.
run-fault-damaged = { $file } is damaged, or not a backup of this program.
run-no-token = NOONSTONE_TOKEN is not set. Put the bot's token there, then start again.
