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
