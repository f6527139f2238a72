# What is kept: drafts, corrections, backups, exchange.

## Drafts

draft-kept = Kept from before, not yet written down.
draft-discard = Start afresh
draft-discarded = Put aside.
draft-bring-back = Bring it back

## Corrections

fix-correct = Correct
fix-correct-this = Correct: { $what }
fix-title = Correct this line
fix-what = What it said stays in the journal, struck out; what you say now counts.
fix-day = Day
fix-time = Time
fix-feel = Compost
fix-feel-none = Not felt
fix-water = Watered
fix-water-none = Not watered
fix-how-many = How many
fix-exactly = Exactly
fix-pinch = A pinch
fix-about = About
fix-packet = Packet
fix-packet-same = The packet as it was
fix-seeds = Seeds
fix-depth = Depth
fix-wanted = Plants wanted
fix-wanted-hint = Leave empty if you have no number in mind.
fix-words = Words
fix-number = How many
fix-how = How they left
fix-how-thinned = Thinned out
fix-how-lost = Lost
fix-how-planted_out = Planted out
fix-how-sold = Sold
fix-how-given_away = Given away
fix-cause = Why
fix-place = Moved to
fix-save = Save the correction
fix-was = First written as: { $what }, { $moment }
fix-amended = Corrected { $moment }
fix-withdrawn-on = Withdrawn { $moment }
fix-bring-back = Bring back
fix-bring-back-this = Bring back: { $what }
history-title = In the journal
history-open = Journal lines
history-none = Nothing is written about it yet.

## Long work

work-progress = How far it is
work-cancel = Call it off
work-cancelled = Called off. Nothing was changed.
work-step-begins = Beginning
work-step-file = Looking at the file
work-step-entries = Reading the entries
work-step-projections = Adding up what they say
work-step-photos = Looking at the photos
work-step-copy = Copying
work-step-salvage = Reading what the damaged file still gives
work-step-verify = Reading it back

## Backup and other devices

keep-title = Backup and other devices
keep-what = Copies of the journal, a new phone, a second device, other programs.
keep-open = Open
keep-demo = This is the demo: no backups are made of it. Leave it first to save or restore your own journal.

backups-title = Backups on this device
backups-what = Made by themselves after you write, at most one an hour. They guard against damage, not against a lost phone: save a file elsewhere too.
backups-current = The newest has all that is in the journal.
backups-behind = Something was written since the newest.
backups-none = None yet.
backups-look = What is inside
backups-look-this = What is inside: { $moment }
backups-all = Show all { $number }
backups-make = Back up now
backups-made = Backed up and read back.
backups-of = Backup of { $moment }

inside-written = Saved { $moment }
inside-entries = { $entries ->
    [one] One entry, read and whole
   *[other] { $entries } entries, each read and whole
}
inside-days = From { $first } to { $last }
inside-photos = { $photos ->
    [0] No photos
   *[other] { $found } of { $photos } photos verified
}
inside-sealed = Under a passphrase

restore-title = Restore from a file
restore-what = This becomes the journal. The one that is here now is set aside, not deleted.
restore-do = Restore this

save-title = Save all to one file
save-what = The whole journal with its photos, to keep elsewhere or to bring to another device. It is read back before it counts as saved.
save-locked = Under a passphrase
save-passphrase-hint = Write it down: without it nobody can open the file, also not you.
save-do = Save to a file
save-done = Saved and read back.
save-left-out = { $entries ->
    [one] One entry is damaged here and is not in it. Check the journal below.
   *[other] { $entries } entries are damaged here and are not in it. Check the journal below.
}
keep-passphrase = Passphrase

take-in-title = Take in another device's file
file-what-restore = Choose a file saved by this app. You see what is in it before anything changes.
file-what-take_in = What is new in it comes in; nothing here goes. You see what it brings first. The same file twice changes nothing.
file-choose = Choose a file
file-passphrase-hint = This file is under a passphrase.
file-look = Look inside
file-take-in = Take it in
file-taken-in = Taken in.

brings-nothing = Nothing in it is new here.
brings-new = { $entries ->
    [one] One new entry
   *[other] { $entries } new entries
}
brings-known = { $entries ->
    [0] None that is here already
    [one] One that is here already
   *[other] { $entries } that are here already
}
brings-photos = { $photos ->
    [one] One new photo
   *[other] { $photos } new photos
}
brings-photos-missing = { $photos ->
    [one] One photo is on neither device; a later file may bring it
   *[other] { $photos } photos are on neither device; a later file may bring them
}
brings-conflicts = { $conflicts ->
    [one] One thing was changed on both sides: both lines stay, the later holds (the other side's: { $theirs })
   *[other] { $conflicts } things were changed on both sides: both lines stay, the later holds (the other side's: { $theirs })
}
brings-unknown = { $entries ->
    [one] One entry is from a newer version; it is kept as it is
   *[other] { $entries } entries are from a newer version; they are kept as they are
}
kind-sown = { $number ->
    [one] one sowing
   *[other] { $number } sowings
}
kind-felt = { $number ->
    [one] compost felt or watered once
   *[other] compost felt or watered { $number } times
}
kind-counted = { $number ->
    [one] one count
   *[other] { $number } counts
}
kind-reading-taken = { $number ->
    [one] one reading
   *[other] { $number } readings
}
kind-noted = { $number ->
    [one] one note
   *[other] { $number } notes
}
kind-photo-taken = { $number ->
    [one] one photo
   *[other] { $number } photos
}
kind-packet-described = { $number ->
    [one] one packet added or changed
   *[other] packets added or changed { $number } times
}
kind-tray-moved = { $number ->
    [one] one move
   *[other] { $number } moves
}
kind-amended = { $number ->
    [one] one correction or withdrawal
   *[other] { $number } corrections or withdrawals
}

move-phone-title = Moving to a new phone
move-phone-what = Step by step, on the old phone and the new
move-which = This is
move-old = The old phone
move-new = The new phone
move-old-save = Save everything to one file.
move-old-carry = Bring the file to the new phone: by cable, card, or whatever you send files with.
move-old-keep = Keep this phone's journal until the new one says that all photos are verified.
move-new-have = Have the file from the old phone on this one.
move-new-restore = Choose it, look at what is inside, restore it.
move-new-check = Look at a tray you know. From now on write on this phone.

check-title = Check the journal
check-what = Reads every entry and photo and compares it with what was written.
check-do = Check now
check-well = All is as it was written.
check-found = { $findings ->
    [one] One thing is not as it should be.
   *[other] { $findings } things are not as they should be.
}
check-then = Save all to a file first. Then restore the newest backup above; what is here is set aside, not deleted.
check-read = Read: { $entries } entries, { $photos } photos.

export-title = For other programs
export-what = Parts of the journal in forms that other programs read. For the whole of it save all to one file.
export-sowings = Sowings as a table
export-sowings-what = CSV: what was sown when and where, and what came of it.
export-packets = Packets as a table
export-packets-what = CSV: crop, variety, year, seeds left.
export-readings = Readings as a table
export-readings-what = CSV: lowest, highest and now, in °C.
export-calendar = What is due, for a calendar
export-calendar-what = iCalendar: the jobs of the coming four weeks. Taken in again, it replaces itself.
export-report = This season, to print
export-report-what = One page that any browser opens and prints.
export-saved = Saved.
export-as-it-is = { $text }

## A shared folder

sharing-title = Another device by a shared folder
sharing-what = A folder that a program of yours copies between devices. Each device writes its own files there and reads the others'. Nothing is ever removed by it.
sharing-by = Shared by:
sharing-choose = Choose a folder
sharing-another = Choose another folder
sharing-now = Share now
sharing-stop = Stop sharing
sharing-came = { $devices ->
    [0] No other device has written there yet.
    [one] One other device there; new here: entries { $new }, photos { $photos }.
   *[other] { $devices } other devices there; new here: entries { $new }, photos { $photos }.
}
sharing-wrote = Written there: entries { $entries }, photos { $photos }.
sharing-waiting = { $files ->
    [one] One file has not come whole yet; it is read the next time.
   *[other] { $files } files have not come whole yet; they are read the next time.
}

## When the journal is damaged

recover-nothing-deleted = Nothing is deleted: the damaged file is set aside as it is.
recover-backup = { $entries ->
    [one] The newest whole backup is of { $moment }, with one entry.
   *[other] The newest whole backup is of { $moment }, with { $entries } entries.
}
recover-no-backup = There is no whole backup; all comes from the damaged file.
recover-salvaged = { $entries ->
    [0] The damaged file gives nothing that the backup lacks.
    [one] It lacks one entry that the damaged file still gives.
   *[other] It lacks { $entries } entries that the damaged file still gives.
}
recover-altered = { $entries ->
    [one] One line is not as it was written and is left out.
   *[other] { $entries } lines are not as they were written and are left out.
}
recover-missing = { $entries ->
    [0] None is known to be lost.
    [one] One entry is known to be lost.
   *[other] { $entries } entries are known to be lost.
}
recover-entries = { $entries ->
    [one] In all, one entry is saved.
   *[other] In all, { $entries } entries are saved.
}
recover-device = The settings of this device were damaged too; they begin anew.
recover-do = Bring the journal back
recover-look = Look again
recover-done = The journal is back.
recover-open = Open it

## Everywhere

screen-keep = Keep it
