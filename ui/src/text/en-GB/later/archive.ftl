# A journal as one file: what can be wrong with it.

error-not-an-archive = This file is not a journal saved by this app. Choose one whose name ends in .zip or .age.
error-archive-newer = This file was saved by a newer version of the app. Update this one, then try again.
error-archive-damaged = This file is damaged: it is not what was saved. Nothing here was changed. Copy it again from where it came, or save a new one.
error-archive-too-large = This file holds more than a journal can. Nothing here was changed.
error-passphrase-wanted = This file is under a passphrase. Enter the one it was saved with.
error-passphrase-wrong = That is not the passphrase this file was saved with. Try again; capitals and spaces count.
error-passphrase-empty = A passphrase needs at least one letter. Enter one, or save without.
