## A tray

numbers-caption = { $name }: how many are where
numbers-up = Came up or were set in
numbers-gone_on = Went on to other trays
numbers-thinned = Thinned out
numbers-lost = Lost
numbers-planted_out = Planted out
numbers-sold = Sold
numbers-given_away = Given away
numbers-there = Still there
relative-from = { $step } from { $code } on { $day }: { $number }
relative-to = { $step } into { $code } on { $day }: { $number }
leave-thinned = Thin: { $what }
leave-lost = Lost: { $what }
leave-planted_out = Plant out: { $what }
leave-sold = Sell: { $what }
leave-given_away = Give away: { $what }
leave-there = { $there ->
    [one] One plant is there.
   *[other] { $there } plants are there.
}
leave-number = How many
leave-cause = What happened
leave-save = Write down
tray-title = Tray { $code }
tray-all = All trays
tray-emptied = Emptied
tray-stands = { $place }, since { $since }
tray-due = Due
tray-in-it = In it
tray-was-in-it = Was in it
tray-do = The tray
tray-timeline = Journal
tray-water-only = Watered from below
tray-move = Move
tray-move-title = Move { $code }
tray-cover-off = Cover off
tray-cover-on = Cover on
tray-feed = Feed
tray-harden-off = Out today
tray-note = Note
tray-empty = Empty it
tray-empty-what = All that is still in { $code } is then done with.
note-words = Note
note-save = Write down
chart-title = How { $name } comes up
chart-today = today
chart-key-band = expected, with its spread
chart-key-count = counted
chart-as-table = The same as a table
chart-day = Day
chart-low = Low
chart-mid = Expected
chart-high = High
chart-counted = Counted
timeline-hand = {" "}by { $hand }
timeline-withdrawn = Withdrawn:
timeline-unknown = (from a newer version; kept as it is)
timeline-withdraw = Withdraw
timeline-withdraw-this = Withdraw: { $what }
timeline-withdraw-title = Withdraw this line?
timeline-withdraw-what = It stays in the journal, struck out, and no longer counts. Undo brings it back.
timeline-keep = Keep it

## Groups of what can be done with plants

plants-do-next = Next step
plants-do-seen = What you see
plants-do-seeds = The seed
plants-do-gone = What leaves
