## What cannot be done, what is asked first, what went wrong

refused-nothing-to-write = There is nothing to write down. Choose what happened.
refused-nothing-to-undo = There is nothing to undo: it was taken back already.
refused-amendment-by-hand = That can only be done by correcting or withdrawing a line.
refused-entry-too-large = That is too much for one line. Shorten it or make two of it.
refused-reading-out-of-range = { $temperature } cannot be right: between { $lowest } and { $highest } is possible. Look at the thermometer again.
refused-min-above-max = The lowest, { $lowest }, is above the highest, { $highest }. Swap them or read again.
refused-before-the-sowing = It began only on { $day }. Choose a later time, or correct its beginning.
refused-in-the-future = { $day } has not come yet. Choose now or earlier.
refused-zone-unknown = “{ $zone }” is not a time zone. Choose one from the list.
refused-name-empty = It needs a name. Type one.
refused-name-too-long = That name is too long. Use at most { $most } letters.
refused-text-empty = The note is empty. Type something or leave it.
refused-text-too-long = That text is too long. Use at most { $most } letters, or make two of it.
refused-tray-without-cells = A tray needs at least one row and one column.
refused-tray-too-large = That is more than { $most } cells. Use fewer rows or columns.
refused-tray-would-lose-cells = Plants stand in cells that { $code } would no longer have. Move them first.
refused-cells-none = There is no free cell for it. Choose cells, or take another tray.
refused-cells-outside = Those cells lie outside { $code }, which has { $cells }. Choose others.
refused-cells-taken = Some of those cells are taken ({ $cells }). Choose free ones.
refused-code-taken = Another tray in use is called { $code }. Give this one another code.
refused-place-unknown = That place is not in the journal. Choose another.
refused-packet-unknown = That packet is not in the journal. Choose another.
refused-tray-unknown = That tray is not in the journal. Choose another.
refused-sowing-unknown = That sowing is not in the journal. Go back and choose again.
refused-batch-unknown = Those plants are not in the journal. Go back and choose again.
refused-entry-unknown = That line is not in the journal. Go back and choose again.
refused-entry-not-understood = That line was written by a newer version and cannot be changed here. Update first.
refused-id-taken = That was written down already.
refused-place-retired = { $name } is no longer in use. Choose another place, or take it into use again in Settings.
refused-tray-emptied = { $code } was emptied. Take another tray, or undo the emptying.
refused-tray-occupied = Something still lives in { $code }. Say what became of it first.
refused-already-ended = That is done with already. Undo its end first if it lives.
refused-something-came-up =
    { $up ->
        [one] { $up } came up, so it cannot be that nothing did. Say what became of it instead.
       *[other] { $up } came up, so it cannot be that nothing did. Say what became of them instead.
    }
refused-number-zero = The number must be at least 1.
refused-number-too-large = That is too large to be right: at most { $most }. Type it again.
refused-parts-none = Say into which trays they went.
refused-more-than-there =
    { $there ->
        [one] Only { $there } is there. Count again, or give a smaller number.
       *[other] Only { $there } are there. Count again, or give a smaller number.
    }
refused-more-than-seeds =
    { $seeds ->
        [one] Only { $seeds } seed is not up. Give smaller numbers.
       *[other] Only { $seeds } seeds are not up. Give smaller numbers.
    }
refused-latitude-out-of-range = The latitude must lie between { $most } south and { $most } north. Give it again.
refused-month-day-unknown = There is no such day. Give month and day, as 05-14.
refused-days-out-of-range = Days to come up: from 1 to { $most }, the fewest first.
refused-germination-out-of-range = The germination must lie between 0 and 100 %.
refused-year-out-of-range = That year cannot be right. Look at the packet again.
refused-night-out-of-range = { $day } is no night to say that of: choose one from last night to two weeks ahead.
refused-night-temperature-out-of-range = That is no temperature of a night: give one from { $least } to { $most }.
refused-frost-nothing-reckoned = There is nothing to keep: neither spring nor autumn had enough years with a frost. Bring a longer record.
refused-frost-out-of-range = Those frost dates cannot be right. Read the record in again.
refused-not-away = No days away are noted for then, so there is nothing to end.
refused-heat-not-off = The heat of { $name } was not off then. Note first since when it was off.
refused-soak-out-of-range = Seed does not stand that much water: soak it for more than 0 and at most { $most } hours.
refused-depth-out-of-range = That is too deep to be right: at most { $most }. Give it again.
refused-photo-malformed = That photo could not be taken in. Take it again.
refused-felt-nothing = Say how it felt, how it was watered, or both.
refused-ends-before-it-starts = It ends before it starts. Swap the two.
refused-job-malformed = That job is not known any more. Look at the round again.
refused-correction-of-another-kind = A line can only be corrected to one of its own kind. Withdraw it and write a new one.
refused-correction-does-not-add-up = With that the numbers no longer add up. Correct what came after it first.
asks-above-the-seeds = { $up } up is more than the { $seeds } seeds that were sown. Write it down all the same?
asks-far-back = { $day } is { $days } days back. Is the date right?
asks-above-the-batch = { $up } is more than the { $before } that were set in. Write it down all the same?
asks-count-falls = That is { $lost } fewer than before: they count as lost, and { $there } as there. Is that so?
asks-reading-differs = { $temperature } is far from the { $before } that { $place } had before. Is it right?
asks-others-build-on-it = Other lines build on this one and would go with it. One undo brings them all back. Go on?
asks-after-the-end = It was done with on { $day }. Write this down all the same?
error-save-failed = The file could not be saved there. Choose another folder, or make room, and try again.
error-bad-time = “{ $text }” is not a time. Give hours and minutes, as 08:00.
error-bad-day = “{ $text }” is not a day of the year. Give month and day, as 05-14.
error-bad-zone = “{ $text }” is not a time zone. Choose one from the list.
error-draft-too-long = This is too long to keep while you type. Write it down in two notes.
error-no-folder = The shared folder is not there. Connect it, or choose another one.
error-no-folder-here = On this device no folder can be shared. Save all to one file and take that in on the other.
error-work-busy = Something else is still under way. Wait until it is done, or call it off.
error-no-file-chosen = No file is chosen. Choose one first.
error-leave-demo-first = The demo is open. Leave it first, in the settings.
error-bad-habit = “{ $text }” cannot be set here. Choose one of those shown.
error-initials-too-long = “{ $text }” is too long for initials. Use at most 12 letters.
error-nothing-chosen = Nothing was chosen. Choose at least one tray.
error-cancelled = It was stopped. Nothing was changed.
error-backup-unknown = That backup is not there any more. Choose another one.
