# Words of the screens themselves that the first picture needs. What the app says of trays, jobs and crops is in core.ftl; the rest is in later/.

## Everywhere

screen-range = { $low } to { $high }
screen-close = Close
screen-again = Try again
screen-not-done = Not done:
screen-unexpected = Something went wrong in the app ({ $what }). Nothing was written; try again.
screen-fewer = { $label }: one fewer
screen-more = { $label }: one more

nav-screens = Screens
nav-skip = Skip to the page
nav-round = Round
nav-sow = Sow
nav-trays = Trays
nav-seed = Seed
nav-year = Year
nav-search = Search
nav-settings = Settings

toast-undo = Undo
toast-bring-back = Bring back
toast-undone = Undone: { $what }
toast-put-away = Put this line away

asked-title = Is that right?
asked-yes = Yes, write it down
asked-no = No, go back

## First start

start-title = Plumule
start-what = A sowing journal that reminds: what to feel, look for and move on, tray by tray.
start-own = Your own journal
start-own-what = Starts empty, with today as its first day. You add your places and packets as you come to them.
start-own-do = Start my journal
start-demo = A demo journal
start-demo-what = Two made-up seasons to try everything on. It is kept apart from yours and thrown away whole when you leave it.
start-demo-do = Open the demo
start-file = From a file or another phone
start-file-what = Brings back a journal that was saved to a file.
start-file-do = I have a file
start-damaged = The journal is damaged
start-quit = Close this one
start-read-only = This journal was written by a newer version of the app. You can read all of it; to write, update the app.
start-offline = Everything stays on this device. No network is used.

## Round

round-title = Round
round-morning = { $day }
round-evening = Evening round, { $day }
round-away = You are away until { $day }. Nothing is called for while you are gone.
round-notices-off = Notices do not reach you here.
round-notices-why = Why, and what to do
round-nothing-due = Nothing is due
round-next = Next: { $what }, { $moment }.
round-empty-title = No trays yet
round-empty-what = The round fills itself once something is sown. First say where trays stand and what seed you have.
round-empty-places = Add a place
round-empty-packets = Add a packet
round-empty-sow = Sow a tray

place-reading = { $days ->
    [0] Read today: { $range }, { $of }.
    [1] Read yesterday: { $range }, { $of }.
   *[other] Read { $days } days ago: { $range }, { $of }.
}
place-never-read = No reading yet; reckoned with its usual warmth.
place-heat-off = The heat is off.
place-read = Read
place-heat-off-open = Heat off
place-all-moist = All moist ({ $trays })
place-quiet = { $trays ->
    [one] One more tray here wants nothing today.
   *[other] { $trays } more trays here want nothing today.
}

read-title = Thermometer: { $place }
read-way = What was read
read-range = Lowest and highest
read-now = Now
read-lowest = Lowest
read-highest = Highest
read-temperature = Temperature
read-of = Where it was read
read-of-air = Of the air
read-of-compost = Of the compost
read-save = Write down the reading
read-not-a-number = A temperature has to be a number, such as 18 or 18.5.

heat-title = Heat off: { $place }
heat-from = Off from
heat-to = Until
heat-to-hint = Leave empty if it is still off.
heat-low = Lowest meanwhile
heat-low-hint = Leave both empty if you do not know.
heat-high = Highest meanwhile
heat-caution = Electricity and damp do not mix: unplug before you look at a heater or its lead, and leave repairs to a qualified electrician under your local rules.
heat-save = Write down

job-for-today = Today
do-lamp = A lamp hangs over it
do-leggy = Long and thin
do-sturdy = Short and stout
do-feed = Fed
round-nowhere = Trays without a place
do-cut-apart = Cut the tray apart
do-cover-off = Cover is off
do-brought-in = Brought in
do-fleece = Fleece over it
do-open-the-lid = Lid open
do-done = Done
do-sitter-sheet = The sheet for whoever looks after them
do-sow-again = Sow it again
do-sow-on = Sow on…
feel-one-by-one = One by one ({ $trays })
place-low = Tonight down to { $low } here.
place-low-open = Tonight’s low
place-heat-off-since = The heat is off since { $moment }.
place-heat-back-open = Heat back on
heat-back-title = { $place }: heat back on
heat-back-save = The heat is back on
night-title = Tonight’s low
night-low = Lowest tonight
night-where = Where
night-outdoors = Outdoors
night-here = In { $place }
night-what = As the forecast has it. What cannot stand it is named at once, place by place.
night-save = Save
round-on-paper = The round on paper
round-back = I am back
do-prick-out = Prick out
do-pot-on = Pot on
do-harden-off = Out today

feel-dry-watered = Dry, and watered:

count-up = Up now
count-count = Count
count-roughly = Roughly
count-few = A few
count-half = Half
count-nearly_all = Nearly all

answer-number-thinned = Thinned out
answer-thinned = Thinned
answer-number-planted_out = Planted out
answer-planted_out = Planted out

verdict-choices = What can be done about { $name }

dig-how = Lift two seeds gently and press them: a firm one may still come, a soft one has rotted.
dig-firm = Firm
dig-soft = Soft
dig-save = Write down

move-to = { $place } ({ $light })
move-none = There is no other place with light.
move-add-place = Add a place in the settings

later-open = Later
later-open-for = Later: { $job }
later-title = Later: { $job }
later-next-round = Next round
later-tomorrow = Tomorrow
later-day = On a day
later-on-day = Later, on that day
later-dismiss-what = If it does not apply here, it is not asked again until something changes.
later-dismiss = Not this one

earlier-open = Writing down something earlier?
earlier-title = When was it?
earlier-what = What you answer next is written down as of then, until you come back to now.
earlier-morning = This morning
earlier-yesterday = Yesterday evening
earlier-day = Day
earlier-time = Time
earlier-set = Write down as of then
earlier-now-writing = Writing down as of { $moment }.
earlier-back = Back to now

way-share = { $share } of the way to half being up
way-there = Half of them should be up by now

## Plants

plants-sown = { $stage }, day { $day }: { $seeds ->
    [one] one seed
   *[other] { $seeds } seeds
}
plants-sown-pinch = { $stage }, day { $day }: a pinch of seed
plants-standing = { $stage }, day { $day }: { $there } there
plants-sown-on-day = Sown on { $day }.
plants-began-on-day = Begun on { $day }.
plants-depth = Depth { $depth }.
plants-wanted = { $wanted ->
    [one] One plant wanted.
   *[other] { $wanted } plants wanted.
}
plants-actions = What to do with { $name }
plants-count = Count
plants-count-title = Count: { $name }
plants-sown_on = Sow on
plants-pricked_out = Prick out
plants-potted_on = Pot on
plants-cut_apart = Cut apart
plants-thinned = Thin
plants-lost = Lost some
plants-planted_out = Plant out
plants-sold = Sell
plants-given_away = Give away
plants-ready = Ready
plants-dig-up = Dig up
plants-dig-title = Dig up: { $name }
plants-nothing = Nothing came up
plants-sow-again = Sow again
plants-finish = Done with

go-on-title = { $step }: { $what }
go-on-part = Part { $part }
go-on-number = Plants into this one
go-on-add-part = Into one more tray
go-on-remove-part = Not into this one
go-on-sum = { $moved } go on, { $rest } stay.
go-on-rest-finished = The rest is done with
go-on-save = Write down

## Trays

tray-which = Tray
tray-new = A new one, { $code }
tray-with-room = { $code }, { $container }, { $free } free, { $place }
tray-nowhere = No place
tray-kind = Kind
tray-size-cells = { $cells } cells
tray-pots = Pots
tray-strips = Strips across it
tray-place = Place
tray-compost = Compost
tray-covered = Covered
tray-code = Code on the label
tray-code-hint = Left empty, it is { $code }.
tray-nothing-in-it = Nothing in it
tray-is-covered = {", covered"}
tray-empty-do = Empty it

cells-legend = Cells
cells-all = All
cells-none = None
cells-all-free = all that are free
cells-count = { $cells } chosen
cells-chosen = { $chosen } of { $free } free cells chosen; none chosen means all.
cells-row = Row { $row }, all its cells
cells-column = Column { $column }, all its cells
cells-draw = Mark by drawing
cells-larger = Larger cells
cells-smaller = Smaller cells
cells-cell = Row { $row }, cell { $cell }
cells-cell-taken = Row { $row }, cell { $cell }, taken
cells-drawing = The tray from above, { $rows } rows of { $columns } cells.
cells-of = { $what }, { $cells ->
    [one] one cell
   *[other] { $cells } cells
}

## Round: seed

round-seed = Seed
round-sprouted = Sprouted, of { $seeds }
round-open-packet = To the packet
round-sow = Sow now
round-open-plan = To the plan
round-open-stocktake = To the stocktake
