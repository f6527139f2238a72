# What the core says. Keys with a dash for every underscore of a word or code.
# $variety brings its own leading blank and quotes, or is empty.

list-last = { $rest } and { $last }

## Crops

crop-asparagus = asparagus
crop-bean-lima = lima bean
crop-bean-snap = French bean
crop-beet = beetroot
crop-cabbage = cabbage
crop-carrot = carrot
crop-cauliflower = cauliflower
crop-celery = celery
crop-corn-sweet = sweetcorn
crop-cucumber = cucumber
crop-eggplant = aubergine
crop-lettuce = lettuce
crop-muskmelon = melon
crop-okra = okra
crop-onion = onion
crop-parsley = parsley
crop-parsnip = parsnip
crop-pea = pea
crop-pepper = pepper
crop-radish = radish
crop-spinach = spinach
crop-tomato = tomato
crop-turnip = turnip
crop-watermelon = watermelon

## Words of the closed sets

place-kind-heated-propagator = heated propagator
place-kind-windowsill = windowsill
place-kind-shed = shed
place-kind-greenhouse = greenhouse
place-kind-cold-frame = cold frame
place-kind-outdoors = outdoors
place-kind-fridge = fridge

light-dark = dark
light-dim = dim
light-bright = bright

container-cells = cells
container-open-tray = open tray
container-pot = pot
container-pots = group of pots
container-damp-paper = damp paper
container-bag = bag

compost-seed = seed compost
compost-multi-purpose = multi-purpose compost
compost-potting = potting compost
compost-garden-soil = garden soil
compost-coarse = coarse compost
compost-no-compost = no compost

storage-fridge-sealed = sealed in the fridge
storage-cool-cupboard = in a cool cupboard
storage-warm-room = in a warm room
storage-damp-shed = in a damp shed

feel-dry = dry
feel-moist = moist
feel-wet = wet

watering-below = from below
watering-rose = by rose
watering-mist = by mist

medium-air = air
medium-compost = compost

step-cut-apart = cut apart
step-sown-on = sown on
step-pricked-out = pricked out
step-potted-on = potted on

cause-eaten = eaten
cause-damped-off = damped off
cause-frosted = frosted
cause-baked = baked
cause-dried-out = dried out
cause-spilt = spilt
cause-unknown = cause not known

origin-cuttings = cuttings
origin-tubers = tubers
origin-bulbs = bulbs
origin-plugs = plugs

leaving-thinned = thinned
leaving-lost = lost
leaving-planted-out = planted out
leaving-sold = sold
leaving-given-away = given away

stage-sown = sown
stage-coming-up = coming up
stage-up = up
stage-pricked-out = pricked out
stage-set = set in
stage-potted-on = potted on
stage-hardening-off = hardening off
stage-ready = ready
stage-gone = gone
stage-nothing-came-up = nothing came up
stage-lost = lost
stage-finished = finished

job-into-the-light = into the light
job-cover-off = cover off
job-look-for-seedlings = look for seedlings
job-it-is-late = it is late
job-feel-the-compost = feel the compost
job-read-the-thermometer = read the thermometer
job-thin = thin
job-prick-out = prick out
job-pot-on = pot on
job-harden-off = harden off
job-plant-out = plant out

## What was done: lines of the journal, and the answer to an act

line-garden-described = Garden settings noted
line-away = Away from { $from } to { $to }
line-place-described = Place noted: { $place }
line-packet-described = Packet noted: { $crop }{ $variety }
line-tray-described = Tray { $tray } labelled
line-moved = { $tray } moved to { $place }
line-moved-many =
    { $trays ->
        [one] { $trays } tray moved to { $place }
       *[other] { $trays } trays moved to { $place }
    }
line-covered = { $tray } covered
line-uncovered = Cover off { $tray }
line-emptied = { $tray } emptied
line-sown =
    { $seeds ->
        [one] Sown in { $tray }: { $seeds } seed of { $crop }{ $variety }
       *[other] Sown in { $tray }: { $seeds } seeds of { $crop }{ $variety }
    }
line-sown-about = Sown in { $tray }: about { $seeds } seeds of { $crop }{ $variety }
line-sown-pinch = Sown in { $tray }: a pinch of { $crop }{ $variety }
line-started-cuttings =
    { $number ->
        [one] Set in { $tray }: { $number } cutting of { $crop }{ $variety }
       *[other] Set in { $tray }: { $number } cuttings of { $crop }{ $variety }
    }
line-started-tubers =
    { $number ->
        [one] Set in { $tray }: { $number } tuber of { $crop }{ $variety }
       *[other] Set in { $tray }: { $number } tubers of { $crop }{ $variety }
    }
line-started-bulbs =
    { $number ->
        [one] Set in { $tray }: { $number } bulb of { $crop }{ $variety }
       *[other] Set in { $tray }: { $number } bulbs of { $crop }{ $variety }
    }
line-started-plugs =
    { $number ->
        [one] Set in { $tray }: { $number } plug of { $crop }{ $variety }
       *[other] Set in { $tray }: { $number } plugs of { $crop }{ $variety }
    }
line-felt = { $tray } felt { $feel }
line-felt-and-watered = { $tray } felt { $feel }, watered { $water }
line-watered = { $tray } watered { $water }
line-felt-many =
    { $trays ->
        [one] { $trays } tray felt { $feel }
       *[other] { $trays } trays felt { $feel }
    }
line-felt-and-watered-many =
    { $trays ->
        [one] { $trays } tray felt { $feel }, watered { $water }
       *[other] { $trays } trays felt { $feel }, watered { $water }
    }
line-watered-many =
    { $trays ->
        [one] { $trays } tray watered { $water }
       *[other] { $trays } trays watered { $water }
    }
line-fed = { $tray } fed
line-hardened-off = { $tray } put out for the day
line-reading = { $place }: { $low } to { $high } ({ $of })
line-reading-now = { $place }: { $temperature } now ({ $of })
line-heat-off = { $place }: heat off from { $from } to { $to }
line-heat-off-still = { $place }: heat off from { $from }
line-counted =
    { $number ->
        [0] Looked in { $tray }: no { $crop }{ $variety } up
       *[other] Counted in { $tray }: { $number } { $crop }{ $variety } up
    }
line-counted-batch = Counted in { $tray }: { $number } { $crop }{ $variety } alive
line-counted-few = Looked in { $tray }: a few { $crop }{ $variety } up
line-counted-half = Looked in { $tray }: half of the { $crop }{ $variety } up
line-counted-nearly-all = Looked in { $tray }: nearly all of the { $crop }{ $variety } up
line-went-on-cut-apart = Cut apart from { $tray }: { $number } { $crop }{ $variety } into { $into }
line-went-on-sown-on = Sown on from { $tray }: { $number } { $crop }{ $variety } into { $into }
line-went-on-pricked-out = Pricked out from { $tray }: { $number } { $crop }{ $variety } into { $into }
line-went-on-potted-on = Potted on from { $tray }: { $number } { $crop }{ $variety } into { $into }
line-left-thinned = Thinned in { $tray }: { $number } { $crop }{ $variety } taken out
line-left-planted-out = Planted out from { $tray }: { $number } { $crop }{ $variety }
line-left-sold = Sold from { $tray }: { $number } { $crop }{ $variety }
line-left-given-away = Given away from { $tray }: { $number } { $crop }{ $variety }
line-left-lost = Lost in { $tray }: { $number } { $crop }{ $variety } ({ $cause })
line-ready = Ready in { $tray }: { $crop }{ $variety }
line-dug-up = Dug up in { $tray }: { $firm } firm and { $soft } soft seeds of { $crop }{ $variety }
line-nothing-came-up = Nothing came up in { $tray }: { $crop }{ $variety }
line-finished = Done with in { $tray }: { $crop }{ $variety }
line-noted = Note: { $text }
line-photo-taken = Photo taken
line-photo-named = Photo given its name
line-job-put-off = Put off until { $until }: { $job }
line-job-dismissed = Not again: { $job }
line-withdrawn = An entry was withdrawn
line-corrected = An entry was corrected
line-undone = Undone
line-unknown = Written by a newer version: { $kind }

## What the compost was last like

felt-only = Felt { $feel } { $at }
felt-and-watered = Felt { $feel } and watered { $water } { $at }
felt-watered = Watered { $water } { $at }

## What is likely to come up

outlook-span = Perhaps { $low } to { $high } in 10 come up
outlook-about = About { $low } in 10 come up
outlook-span-packed = Perhaps { $low } to { $high } in 10 come up: packed { $year }, kept { $storage }; the usual life is { $life ->
        [one] { $life } year
       *[other] { $life } years
    }
outlook-about-packed = About { $low } in 10 come up: packed { $year }, kept { $storage }; the usual life is { $life ->
        [one] { $life } year
       *[other] { $life } years
    }
outlook-span-harvested = Perhaps { $low } to { $high } in 10 come up: harvested { $year }, kept { $storage }; the usual life is { $life ->
        [one] { $life } year
       *[other] { $life } years
    }
outlook-about-harvested = About { $low } in 10 come up: harvested { $year }, kept { $storage }; the usual life is { $life ->
        [one] { $life } year
       *[other] { $life } years
    }

## Light and cautions

light-need-needed = Comes up better in the light: cover thinly or not at all
light-need-dark = Comes up better in the dark: cover it well

caution-compost-dust = Damp compost before you tip it and keep the dust out of your lungs: it can carry Legionella. Wash your hands.
caution-treated-seed = Treated seed: wear gloves, keep it from children and animals, never eat it, and follow the packet.
caution-electricity = Heat and water: use only kit made for damp places, on a protected socket, and follow local rules; leave wiring to a qualified electrician.
caution-poisonous-leaves = Leaves and stems are poisonous to eat: keep them from children and animals.
caution-poisonous-raw-seeds = The seeds are poisonous raw: keep them from children and animals.
caution-poisonous-berries = The berries are poisonous: keep them from children.
caution-sap-burns-in-sun = The sap on skin burns it in sunlight: wear gloves and wash it off.

## What cannot be done: refused by the journal

refused-nothing-to-write = There is nothing to write down. Choose what happened.
refused-nothing-to-undo = There is nothing to undo: it was taken back already.
refused-reading-out-of-range = { $temperature } cannot be right for a place where plants stand. Look at the thermometer again.
refused-min-above-max = The lowest ({ $min }) is above the highest ({ $max }). Swap them or read again.
refused-before-the-sowing = That was before it was sown. Choose a later time, or correct the sowing.
refused-in-the-future = That time has not come yet. Choose now or earlier.
refused-zone-unknown = That time zone is not known. Choose one from the list.
refused-name-empty = It needs a name. Type one.
refused-name-too-long = That name is too long. Shorten it.
refused-text-empty = The note is empty. Type something or leave it.
refused-text-too-long = That text is too long. Shorten it or make two of it.
refused-tray-without-cells = A tray needs at least one row and one column.
refused-tray-too-large = That is more cells than a tray can have. Use fewer rows or columns.
refused-tray-would-lose-cells = Plants stand in cells that the smaller tray would not have. Move them first.
refused-cells-none = There is no free cell for it. Choose cells, or take another tray.
refused-cells-outside = Those cells lie outside the tray. Choose others.
refused-cells-taken = Some of those cells are taken. Choose free ones.
refused-code-taken = Another tray in use has that code. Give it another.
refused-place-unknown = That place is not in the journal. Choose another.
refused-packet-unknown = That packet is not in the journal. Choose another.
refused-tray-unknown = That tray is not in the journal. Choose another.
refused-sowing-unknown = That sowing is not in the journal. Go back and choose again.
refused-batch-unknown = Those plants are not in the journal. Go back and choose again.
refused-entry-unknown = That line is not in the journal. Go back and choose again.
refused-entry-not-understood = That line was written by a newer version and cannot be changed here. Update first.
refused-id-taken = That was written down already.
refused-place-retired = That place is no longer in use. Choose another, or take it into use again in Settings.
refused-tray-emptied = That tray was emptied. Take another, or undo the emptying.
refused-tray-occupied = Something still lives in that tray. Say what became of it first.
refused-already-ended = That is done with already. Undo its end first if it lives.
refused-something-came-up = Some came up, so it cannot be that nothing did. Say what became of them instead.
refused-number-zero = The number must be at least 1.
refused-number-too-large = That number is too large to be right. Type it again.
refused-parts-none = Say into which trays they went.
refused-more-than-there = That is more than are there. Count them again, or give a smaller number.
refused-more-than-seeds = That is more than the seeds that are not up. Give smaller numbers.
refused-latitude-out-of-range = The latitude must lie between 66 south (-66) and 66 north.
refused-month-day-unknown = There is no such day. Give month and day, as 05-14.
refused-germination-out-of-range = The germination must lie between 0 and 100 %.
refused-year-out-of-range = That year cannot be right. Look at the packet again.
refused-depth-out-of-range = That depth cannot be right. Give it again.
refused-photo-malformed = That photo could not be taken in. Take it again.
refused-felt-nothing = Say how it felt, how it was watered, or both.
refused-ends-before-it-starts = It ends before it starts. Swap the two.
refused-job-malformed = That job is not known any more. Look at the round again.
refused-correction-of-another-kind = A line can only be corrected to one of its own kind. Withdraw it and write a new one.
refused-correction-does-not-add-up = With that the numbers no longer add up. Correct what came after it first.

## What is asked first

asks-above-the-seeds = That is more than the seeds that were sown. Write it down all the same?
asks-far-back = That is a good while back. Is the date right?
asks-count-falls = That is fewer than before. The rest count as gone; is that so?
asks-reading-differs = That is far from what this place had before. Is it right?
asks-others-build-on-it = Other lines build on this one and would go with it. One undo brings them all back. Go on?
asks-after-the-end = That is after it was done with. Write it down all the same?

## What went wrong

error-store-failed = The journal could not be written. Try again; nothing was lost.
error-disk-full = The disk is full. Make room and try again; nothing was lost.
error-journal-read-only = The journal may not be written. Check that its folder may be.
error-journal-busy = The journal is open elsewhere. Close that and try again.
error-journal-damaged = The journal is damaged. It is left as it is; bring back a backup.
error-journal-newer = The journal was written by a newer version. Update before opening it.
error-not-a-journal = That file is not a journal. It is left as it is.
error-file-failed = A file could not be read or written. Check the disk and try again.
error-bad-request = “{ $text }” is not known here. Go back and choose again.
error-bad-time = “{ $text }” is not a time. Give hours and minutes, as 08:00.
error-bad-day = “{ $text }” is not a day of the year. Give month and day, as 05-14.
error-bad-zone = “{ $text }” is not a time zone. Choose one from the list.
error-bad-habit = “{ $text }” cannot be set here. Choose one of those shown.
error-initials-too-long = “{ $text }” is too long for initials. Use at most 12 letters.
error-nothing-chosen = Nothing was chosen. Choose at least one tray.

## What is odd about a tray or its plants

problem-more-left-than-there = More plants left than were there: look at the lines below and correct one.
problem-cells-twice = Some cells hold two things at once or lie outside the tray.
problem-never-described = Its first entry is missing or withdrawn.
problem-after-the-end = Something was written about it after it was done with.
