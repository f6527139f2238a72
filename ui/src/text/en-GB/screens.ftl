# Words of the screens themselves. What the app says of trays, jobs and crops is in core.ftl.

## Everywhere

screen-range = { $low } to { $high }
screen-close = Close
screen-keep = Keep it
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
start-offline = Everything stays on this device. No network is used.

## Round

round-title = Round
round-morning = { $day }
round-evening = Evening round, { $day }
round-away = You are away until { $day }. Nothing is called for while you are gone.
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
do-cut-apart = Cut the tray apart
do-cover-off = Cover is off
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
reasons-title = Why { $name } did badly

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
tray-empty-do = Empty it

note-words = Note
note-save = Write down

cells-legend = Cells
cells-all = All
cells-none = None
cells-all-free = all that are free
cells-count = { $cells } chosen
cells-chosen = { $chosen } of { $free } free cells chosen; none chosen means all.
cells-row = Row { $row }, all its cells
cells-cell = Row { $row }, cell { $cell }
cells-cell-taken = Row { $row }, cell { $cell }, taken
cells-drawing = The tray from above, { $rows } rows of { $columns } cells.
cells-of = { $what }, { $cells ->
    [one] one cell
   *[other] { $cells } cells
}

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
timeline-corrected = (corrected)
timeline-unknown = (from a newer version; kept as it is)
timeline-withdraw = Withdraw
timeline-withdraw-this = Withdraw: { $what }
timeline-withdraw-title = Withdraw this line?
timeline-withdraw-what = It stays in the journal, struck out, and no longer counts. Undo brings it back.
timeline-keep = Keep it

trays-title = Trays
trays-find = Find a tray
trays-find-hint = By code, plant, place or kind.
trays-not-found = No tray like that.
trays-empty-title = No trays yet
trays-free = { $cells ->
    [one] one cell free
   *[other] { $cells } cells free
}
trays-due = { $jobs ->
    [one] · one job due
   *[other] · { $jobs } jobs due
}
trays-aside = Set aside ({ $trays })
trays-aside-what = Nothing was said of these for 120 days. Any answer takes one back up.
trays-past = Past trays ({ $trays })

## Seed

seed-title = Seed
seed-add = Add packets
seed-empty-title = No packets yet
seed-empty-what = Add the ones you have at hand; the rest can wait until you sow them.
seed-packed = Packed { $year }, { $age ->
    [0] this year's
    [one] one year old
   *[other] { $age } years old
}
seed-harvested = Harvested { $year }, { $age ->
    [0] this year's
    [one] one year old
   *[other] { $age } years old
}
seed-treated = treated seed
seed-sowings = { $sowings ->
    [0] Not sown from yet.
    [one] Sown from once.
   *[other] Sown from { $sowings } times.
}
seed-sow-it = Sow it
seed-edit = Change
seed-edit-this = Change: { $name }

packet-crop = Plant
packet-crop-hint = As it is called, tomato for one.
packet-crop-unknown = Not in the crop book: kept under your word, without a forecast.
packet-variety = Variety
packet-year-of = The year is when it was
packet-packed = Packed
packet-harvested = Harvested by you
packet-year = Year
packet-year-unknown = Year not known
packet-storage = Kept
packet-more = More from the packet
packet-seeds = Seeds in it
packet-stated = Germination stated
packet-treated = Treated seed
packet-treated-caution = Treated seed: wear gloves, keep it from food, children and animals, and follow the packet and your local rules.
packet-source = From
packet-note = Note
packet-add = Add this packet
packet-saved = { $name } is in. The next?
packet-save = Save
packet-retire = No longer used
packet-perhaps = perhaps { $low } to { $high } in 10 come up
packet-perhaps-one = perhaps { $high } in 10 come up
packet-seeds-left = { $seeds ->
    [one] one seed left
   *[other] { $seeds } seeds left
}

## Sow

sow-title = Sow
sow-from = What you start from
sow-from-seed = From seed
sow-from-other = Without seed
sow-packet = Which packet?
sow-find-packet = Find a packet
sow-found = { $found ->
    [one] One packet found
   *[other] { $found } packets found
}
sow-no-packet = No packet like that.
sow-all-packets = All { $packets } packets
sow-add-packet = Add a packet
sow-change = Another packet
sow-how-many = How many
sow-wanted = Plants wanted
sow-seeds-for = { $seeds ->
    [one] One seed
   *[other] { $seeds } seeds
} will most likely give { $wanted ->
    [one] one plant
   *[other] { $wanted } plants
} (9 times in 10).
sow-seeds-unknown = How many will come up is not known for this one.
sow-seeds = Seeds sown
sow-exact = Counted
sow-about = About
sow-pinch = A pinch
sow-seeds-number = Seeds
sow-per-cell = { $seeds } seeds over { $cells } cells.
sow-where = Where it will stand
sow-where-stands = { $code } stands in: { $place }.
sow-no-place = No place yet.
sow-tray = Into what
sow-depth = How deep
sow-depth-advised = { $low } to { $high } is usual.
sow-depth-mm = Depth in mm
sow-compost-caution = Compost dust can carry Legionella: damp it before you fill trays, keep your face away from it, and wash your hands.
sow-save = Save the sowing

depth-drawing = To scale: seed { $length } long and { $thick } thick, { $depth } deep.
depth-drawing-bare = { $depth } deep; the size of this seed is not known.

batch-origin = Started from
batch-number = How many
batch-save = Save

saved-title = It is in the journal
saved-copy = Copy this onto its label with a pencil; ink fades.
saved-same-again = Same again
saved-another = Sow something else
saved-see = See tray { $code }
label-title = The label

## Settings

settings-title = Settings
settings-demo = Demo journal
settings-demo-what = You are in the demo. Nothing here touches a journal of your own.
settings-demo-leave = Leave the demo
settings-demo-leave-what = The demo journal is thrown away whole, with all you wrote in it.
settings-demo-stay = Stay in it
settings-demo-throw-away = Throw it away
settings-places = Places
settings-places-what = In the order you walk them.
settings-garden = Rounds and the garden
settings-away = Away
settings-away-what = While you are away nothing calls for you.
settings-device = This device
settings-entries = { $entries ->
    [one] One entry in the journal.
   *[other] { $entries } entries in the journal.
}

place-add = Add a place
place-kind = Kind of place
place-name = Name
place-name-hint = What you call it, such as kitchen sill.
place-usual = Usual temperatures, until a thermometer says better:
place-coldest = Coldest
place-warmest = Warmest
place-unheated = With the heat off, if you know:
place-coldest-unheated = Coldest, unheated
place-warmest-unheated = Warmest, unheated
place-light = Light for seedlings
place-covered = Closed or covered, so that it dries slowly
place-save = Save the place
place-retire = No longer used
place-use-again = Use it again
place-earlier = { $place }: earlier in the walk
place-later = { $place }: later in the walk
place-change = Change
place-change-this = Change: { $place }
place-none = No places yet.
place-retired = No longer used ({ $places })

garden-morning = Morning round
garden-evening = Evening round
garden-last-frost = Last frost of spring
garden-first-frost = First frost of autumn
garden-frost-hint = The day after which one is rare. The year does not count.
garden-latitude = Latitude
garden-latitude-hint = Degrees north; south of the equator with a minus.
garden-zone = Time zone
garden-zone-hint = By its name, such as Europe/London.
garden-save = Save

away-from = First day
away-to = Last day
away-save = I shall be away

device-temperature = Temperatures
device-temperature-celsius = °C
device-temperature-fahrenheit = °F
device-length = Lengths
device-length-mm = mm
device-length-inch = inches
device-theme = Light or dark
device-theme-system = As the device
device-theme-light = Light
device-theme-dark = Dark
device-hand = Held in
device-hand-right = Right hand
device-hand-left = Left hand
device-notices = Notices at round times
device-quiet-from = Quiet from
device-quiet-to = Quiet until
device-quiet-hint = No notice in these hours. The same time twice means none.
device-initials = Initials
device-initials-hint = Written beside what is entered here, where several share the work.
