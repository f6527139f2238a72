# A journal as one file: what can be wrong with it.

error-not-an-archive = This file is not a journal saved by this app. Choose one whose name ends in .zip or .age.
error-archive-newer = This file was saved by a newer version of the app. Update this one, then try again.
error-archive-damaged = This file is damaged: it is not what was saved. Nothing here was changed. Copy it again from where it came, or save a new one.
error-archive-too-large = This file holds more than a journal can. Nothing here was changed.
error-passphrase-wanted = This file is under a passphrase. Enter the one it was saved with.
error-passphrase-wrong = That is not the passphrase this file was saved with. Try again; capitals and spaces count.
error-passphrase-empty = A passphrase needs at least one letter. Enter one, or save without.

## Checking the journal

finding-file-damaged = The journal’s file is damaged ({ $fault }). Recover the journal: it is set aside, and what is still good is brought over.
finding-entries-unread = Lines { $first } to { $last } of the file cannot be read. Recover the journal to bring over the rest.
finding-entry-unreadable = Line { $entry } of the file is damaged and cannot be read. Recover the journal to bring over the rest.
finding-entry-altered = Line { $entry } of the file is not as it was written. Recover the journal to bring over the rest.
finding-entry-misfiled = Line { $entry } of the file is good, but filed wrongly ({ $columns }). Recover the journal to put it right.
finding-entries-missing = Lines { $first } to { $last } of one device ({ $device }) are not here. An older backup or the other device may still have them.
finding-projection-differs = What the journal adds up to is out of date in { $rows } places ({ $table }). Every line is there; have it added up again.
finding-photo-missing = A photo is missing ({ $photo }). Taking in a backup or another device that has it brings it back.
finding-photo-altered = A photo is damaged ({ $photo }). Taking in a backup or another device that has it brings it back.
