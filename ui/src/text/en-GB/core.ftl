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

felt-dry = Felt dry { $at }
felt-moist = Felt moist { $at }
felt-wet = Felt wet { $at }
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

## When seedlings are due

due-days =
    { $first ->
        [one] { $first } to { $last } days
       *[other] { $first } to { $last } days
    }
due-one-day =
    { $first ->
        [one] about { $first } day
       *[other] about { $first } days
    }
due-none-too-cold = None come up here: too cold below { $temperature }
due-none-too-hot = None come up here: too hot above { $temperature }
due-none-within-a-year = None come up here within a year

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

## What is odd about a tray or its plants

problem-more-left-than-there = More plants left than were there: look at the lines below and correct one.
problem-cells-twice = Some cells hold two things at once or lie outside the tray.
problem-never-described = Its first entry is missing or withdrawn.
problem-after-the-end = Something was written about it after it was done with.
