### Facts: KeptIn, Restored, ShardCount, Unset
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
run-pages-address = where the site will be, such as https://guide.example: adds a sitemap and cards for chats
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

## What argparse says; what stands behind % is put in by it
run-argparse-usage = usage:
run-argparse-options = options
run-argparse-arguments = positional arguments
run-argparse-help = show this help message and exit
run-argparse-version = show the program's version and exit
run-argparse-error = %(prog)s: error: %(message)s
run-argparse-argument = argument %(argument_name)s: %(message)s
run-argparse-required = the following arguments are required: %s
run-argparse-one-required = one of the arguments %s is required
run-argparse-unknown = unrecognized arguments: %s
run-argparse-choice = invalid choice: %(value)r (choose from %(choices)s)
run-argparse-value = invalid %(type)s value: %(value)r
run-argparse-one = expected one argument
run-argparse-beside = not allowed with argument %s
run-argparse-ignored = ignored explicit argument %r
run-argparse-ambiguous = ambiguous option: %(option)s could match %(matches)s

## A setting that cannot be
run-setting = { $name } cannot be “{ $text }”. { $takes }
run-takes-units = It takes in or cm, for example: in.
run-takes-language = It takes en or de, for example: en.
run-takes-pictures = It takes dark or light, for example: dark.
run-takes-log = It takes debug, info, warning or error, for example: info.
run-takes-health_port = It takes a port from 1 to 65535, for example: 9100.
run-takes-shards-form = It takes this process's shards and how many there are, such as 0,1/4 or 0-3/16.
run-takes-shards-count = There are at least 1 and at most { $count } shards, for example: 0/1.
run-takes-shards-twice = It names a shard twice. It takes each once, such as 0,1/4.
run-takes-shards-order = It takes a span from the lower to the higher, such as 0-3/16.
run-takes-shards-beyond = Of { $count } shards the first is 0 and the last is { $last }, such as 0/{ $count }.
