# What the core says at the start and of the round. Keys with a dash for every underscore of a word or code.
# $variety brings its own leading blank and quotes, or is empty.

list-two = { $rest } and { $last }
list-last = { $rest } and { $last }

variety = ‘{ $name }’

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

job-say-where = say where it stands
job-cooler-now = cooler now
job-look-for-legginess = look for legginess
job-feed = feed
job-empty-the-tray = empty the tray
job-into-the-light = into the light
job-cover-off = cover off
job-frost-tonight = frost tonight
job-bring-in = bring in for the night
job-open-the-lid = open the lid
job-close-the-lid = close the lid
job-last-chance = last chance to sow again
job-before-you-go = before you go
job-look-over = look it over
job-end-of-the-cold-weeks = end of the cold weeks
job-sow-on = sow on
job-look-for-seedlings = look for seedlings
job-it-is-late = it is late
job-feel-the-compost = feel the compost
job-read-the-thermometer = read the thermometer
job-thin = thin
job-prick-out = prick out
job-pot-on = pot on
job-harden-off = harden off
job-plant-out = plant out
job-count-the-test = count the germination test
job-sow = sow
job-stocktake = stocktake of seed

## Why something is to be done

why-feel-first = { $days ->
        [0] Sown today
        [one] One day since it was filled
       *[other] { $days } days since it was filled
    }; at { $temperature } it dries in about { $interval ->
        [one] { $interval } day
       *[other] { $interval } days
    }.{ $lift ->
        [1] {" "}The seed lies on top: lift the tray, do not poke.
       *[0] {""}
    }
why-feel = Felt { $felt } { $days ->
        [0] today
        [one] yesterday
       *[other] { $days } days ago
    }; at { $temperature } it dries in about { $interval ->
        [one] { $interval } day
       *[other] { $interval } days
    }.{ $lift ->
        [1] {" "}The seed lies on top: lift the tray, do not poke.
       *[0] {""}
    }
why-feel-watered = Watered { $days ->
        [0] today
        [one] yesterday
       *[other] { $days } days ago
    }; at { $temperature } it dries in about { $interval ->
        [one] { $interval } day
       *[other] { $interval } days
    }.{ $lift ->
        [1] {" "}The seed lies on top: lift the tray, do not poke.
       *[0] {""}
    }
why-feel-daily = Something is up under glass or over heat, at { $temperature }: feel it every day. Last { $days ->
        [0] today
        [one] yesterday
       *[other] { $days } days ago
    }.{ $lift ->
        [1] {" "}The seed lies on top: lift the tray, do not poke.
       *[0] {""}
    }
why-feel-dry = Felt dry { $days ->
        [0] today
        [one] yesterday
       *[other] { $days } days ago
    } and not watered since.{ $lift ->
        [1] {" "}The seed lies on top: lift the tray, do not poke.
       *[0] {""}
    }
why-read = No reading in { $place } for { $days ->
        [one] { $days } day
       *[other] { $days } days
    }, and { $trays ->
        [one] a tray stands there
       *[other] { $trays } trays stand there
    }.
why-look = It is { $progress } of the way: the first { $crop }{ $variety } is due by { $first }.
why-frost-bring-in = { $low } tonight in { $place }: too cold for { $crops }. Bring it in, to { $to }.
why-frost-fleece = { $low } tonight in { $place }: near the edge for { $crops }. Two layers of fleece will do, or bring it in, to { $to }.
why-frost-fleece-only = { $low } tonight in { $place }: too cold for { $crops }. Bring it indoors if you can, else two layers of fleece.
why-bring-in = Put out by day: { $crops } comes in before dusk.
why-open-the-lid = It was { $highest } in { $place }: on a sunny morning open the lid, before the sun cooks { $crops }.
why-open-the-lid-unread = Under a lid the sun can cook { $crops }: open it on a sunny morning, and close it before dusk.
why-close-the-lid = { $place } was opened this morning: close it before dusk.
why-last-chance =
    { $days ->
        [0] Today is the last useful day to sow { $crop }{ $variety } again; { $up } up so far.
        [one] Tomorrow, { $last }, is the last useful day to sow { $crop }{ $variety } again; { $up } up so far.
       *[other] { $last } is the last useful day to sow { $crop }{ $variety } again, in { $days } days; { $up } up so far.
    }
why-before-you-go =
    { $open ->
        [1] You are away from { $from }
       *[other] You are away from { $from } to { $to }
    }. Water what is here from below, take seedlings out of the heat, and leave the sheet for whoever looks after them ({ $trays ->
        [one] { $trays } tray
       *[other] { $trays } trays
    }).
why-before-you-go-meanwhile =
    { $open ->
        [1] You are away from { $from }
       *[other] You are away from { $from } to { $to }
    }. Water what is here from below and take seedlings out of the heat ({ $trays ->
        [one] { $trays } tray
       *[other] { $trays } trays
    }). Falling due meanwhile: { $jobs }. Do it before, or let it wait.
why-look-over = You were away until { $to }. Look over { $trays ->
        [one] the tray here
       *[other] the { $trays } trays here
    } once: what is dry, what is up. What still wants doing comes after that.
why-feel-together = { $trays } trays here are due: feel the smallest ({ $smallest }), the warmest ({ $warmest }) and one at the edge ({ $edge }). If they agree, answer for all.
why-look-sprouts = It is { $progress } of the way: look for the first roots of { $crop }{ $variety }, due by { $first }.
why-look-sprouts-more = Sprouted so far: { $up } of { $seeds } { $crop }{ $variety }, and more are due.
why-sow-on =
    { $there ->
        [one] { $there } seed of { $crop }{ $variety } has sprouted: lay it { $low } to { $high } deep in compost before its root is longer than the seed. Hold it by the seed, not by the root.
       *[other] { $there } seeds of { $crop }{ $variety } have sprouted: lay them { $low } to { $high } deep in compost before the roots are longer than the seeds. Hold them by the seed, not by the root.
    }
why-sow-on-surface =
    { $there ->
        [one] { $there } seed of { $crop }{ $variety } has sprouted: lay it on the compost, and do not cover it.
       *[other] { $there } seeds of { $crop }{ $variety } have sprouted: lay them on the compost, and do not cover them.
    }
why-sow-on-unknown =
    { $there ->
        [one] { $there } seed of { $crop }{ $variety } has sprouted: lay it in compost before its root is longer than the seed.
       *[other] { $there } seeds of { $crop }{ $variety } have sprouted: lay them in compost before the roots are longer than the seeds.
    }
why-cold-over-fridge =
    { $weeks ->
        [0] The cold weeks of { $crop }{ $variety } are over: out of the fridge and into { $from } to { $to }.
        [one] { $crop }{ $variety } has had { $weeks } week in the cold: out of the fridge and into { $from } to { $to }.
       *[other] { $crop }{ $variety } has had { $weeks } weeks in the cold: out of the fridge and into { $from } to { $to }.
    }
why-cold-over =
    { $weeks ->
        [one] { $crop }{ $variety } has had { $weeks } week in the cold. It is { $temperature } in { $place }: it wants { $from } to { $to } now.
       *[other] { $crop }{ $variety } has had { $weeks } weeks in the cold. It is { $temperature } in { $place }: it wants { $from } to { $to } now.
    }
why-look-more = Up so far: { $up } of { $seeds } { $crop }{ $variety }, and more are due.
why-say-where = Nobody said where { $tray } ({ $crops }) stands, so nothing can be reckoned for it. Say where it is, and it is in that place’s round.
why-cooler = Up: { $crops }. At { $temperature } in { $place } seedlings grow soft and tall; once up they want { $from } to { $to } by day.
why-leggy = { $crop }{ $variety } is up in { $place } ({ $light }): by { $days } days stems stretch for want of light. Are they long and thin, or short and stout?
why-light-leggy = { $crops } in { $place } is leggy: more light and less warmth today, and it grows stout from here on. Set deeper when pricking out, most stand again.
why-feed = Set into fresh compost on { $since }: four weeks on { $crop }{ $variety } has used it up. Feed at half strength, on moist compost.
why-feed-again = Last fed on { $since }: { $crop }{ $variety } wants it every two weeks until it goes out. At half strength, on moist compost.
why-feed-pale = The leaves of { $crop }{ $variety } were pale on { $since }, and it has true leaves: feed at half strength, on moist compost.
why-empty = All { $crops } that came up in { $tray } has gone{ $seeds ->
        [0] .
        [one] ; one seed never came up.
       *[other] ; { $seeds } seeds never came up.
    } Empty it, or say later if you still wait for more.
why-look-unknown = { $crop }{ $variety } is not in the crop book, so nobody can say when: most seed comes up one to three weeks after sowing, and this is day { $days }.
why-late-unknown = { $crop }{ $variety } is not in the crop book, so no odds can be told; at { $days } days, with { $up } up, most seed would have come. Dig up two, wait, or sow again.
why-light-dark = Up: { $crops } ({ $up }), and it is dark in { $place }. Into the light today.
why-light-heated = Up: { $crops } ({ $up }), over the heat of { $place }, where seedlings stretch. Somewhere light and cooler today.
why-light-mixed = Up: { $crops } ({ $up }), but { $waiting } still wants the heat of { $place }. Cut the tray apart, move it all, or hang a lamp made for damp places over it.
why-light-mixed-dark = Up: { $crops } ({ $up }), in the dark of { $place }, but { $waiting } not yet. Cut the tray apart, move it all, or hang a lamp made for damp places over it.
why-cover-off = Up: { $crops } ({ $up }). Under a cover seedlings rot, so take it off.
why-cover-off-mixed = Up: { $crops } ({ $up }), but { $waiting } not yet. Take the cover off and feel it more often, or cut the tray apart.
why-late = Nine in ten should have been up by { $most }, { $days ->
        [one] { $days } day ago
       *[other] { $days } days ago
    }; { $up ->
        [0] none is
       *[other] { $up } are
    }, of { $spread ->
        [0] { $high }
       *[other] { $low } to { $high }
    } expected. It had { $temperature } on average and is { $way }.
why-late-too-cold = At { $temperature } no { $crop }{ $variety } will come up: it wants { $from } to { $to }. Move it somewhere warmer.
why-late-too-hot = At { $temperature } no { $crop }{ $variety } will come up: it wants { $from } to { $to }. Move it somewhere cooler.
why-thin = There are { $there } { $crop }{ $variety } in { $cells ->
        [one] { $cells } cell
       *[other] { $cells } cells
    }; up since { $up }, { $days } days later they have their first true leaves. Keep the best of each.
why-prick-out = There are { $there } { $crop }{ $variety } close together; up since { $up }, after { $days } days they have their first true leaves.
why-pot-on = Sown on { $sown }: { $crop }{ $variety } takes { $weeks } to { $weeksmost } weeks to raise, and half-way its cells are full.
why-pot-on-cuttings = Cuttings set on { $began } root in about four weeks: look for roots underneath.
why-pot-on-plugs = Plugs came on { $began } ({ $there }): pot them on before they dry out.
why-harden-off-first = From { $from } the { $crop }{ $variety } may go out (last frost { $frost }{ $record ->
        [0] )
       *[other] ; odds of frost after { $out }: { $chance })
    }: before that, out by day and in at night for { $least } to { $most } days.
why-harden-off-no-frost-date = Sown on { $sown }: { $crop }{ $variety } is raised in { $weeks } to { $weeksmost } weeks. Out by day and in at night. No last frost date is set: set it in Settings.
why-harden-off = Day { $day } of { $least } to { $most } out by day and in at night.
why-plant-out = Hardened off for { $hardened ->
        [one] { $hardened } day
       *[other] { $hardened } days
    }; { $crop } is { $hardiness }, and the last frost, { $frost }, allows it from { $from }{ $record ->
        [0] .
       *[other] ; odds of frost after { $out }: { $chance }.
    }
why-plant-out-no-frost-date = Hardened off for { $hardened ->
        [one] { $hardened } day
       *[other] { $hardened } days
    }. No last frost date is set: set it in Settings and watch the nights; { $crop } is { $hardiness }.
why-plant-out-not-hardened = It could go out from { $from }, but no week of hardening off is noted ({ $hardened ->
        [one] { $hardened } day
       *[other] { $hardened } days
    }); { $crop } is { $hardiness }.

why-count-the-test = { $crop }{ $variety }: { $seeds } seeds, { $days ->
        [0] laid on paper today
        [one] one day on paper
       *[other] { $days } days on paper
    }. Count all that have sprouted so far and take them off.
why-count-the-test-last = { $crop }{ $variety }: { $seeds } seeds, { $days ->
        [one] one day on paper
       *[other] { $days } days on paper
    }. Most that can sprout have: count once more, then close the test.
why-sow-by = { $crop }{ $variety }: { $wanted ->
    [one] one plant
   *[other] { $wanted } plants
} ready by { $day }. { $own ->
    [1] By your own word that takes { $longest } days.
   *[other] That takes up to { $longest } days, { $up } of them to come up.
} { $seeds ->
    [0] {""}
   *[other] Sow { $seeds } seeds.
} It is of use until { $last }.
why-sow-sale = { $crop }{ $variety }: { $wanted ->
    [one] one plant
   *[other] { $wanted } plants
} for the sale on { $day }, some over among them. { $own ->
    [1] By your own word that takes { $longest } days.
   *[other] That takes up to { $longest } days, { $up } of them to come up.
} { $seeds ->
    [0] {""}
   *[other] Sow { $seeds } seeds.
} It is of use until { $last }.
why-sow-again = { $crop }{ $variety }: { $expected } of { $wanted } are there or expected for { $day }. Sow for { $plants } more{ $seeds ->
    [0] {""}
    [one] , one seed
   *[other] , { $seeds } seeds
}. It is of use until { $last }.
why-sow-every = { $crop }{ $variety }: { $weeks ->
    [one] a week
   *[other] { $weeks } weeks
} from one sowing to the next. { $seeds ->
    [0] Sow for { $plants }.
   *[other] Sow { $seeds } seeds for { $plants }.
}
why-sow-first = { $crop }{ $variety }: the first sowing of your plan. { $seeds ->
    [0] Sow for { $plants }.
   *[other] Sow { $seeds } seeds for { $plants }.
}
why-sow-leaves = { $crop }{ $variety }: the last sowing has its true leaves. { $seeds ->
    [0] Sow for { $plants }.
   *[other] Sow { $seeds } seeds for { $plants }.
}
why-stocktake = Before seed is ordered: { $left ->
        [one] one packet has
       *[other] { $left } packets have
    } not been in your hand this year.

hardiness-hardy = hardy
hardiness-half-hardy = half-hardy
hardiness-tender = tender

## Forecasts

way-0 = hardly begun
way-1 = a quarter of the way
way-2 = half-way
way-3 = three quarters of the way
way-4 = at the time when half of them are up
way-5 = past the time when half of them are up
way-6 = long past the time when half of them are up
next-due = { $place }: { $job }
next-due-seed = Seed: { $job }

## Wait or sow again

odds-under = less than 1 in 20
odds-1 = about 1 in 10
odds-2 = about 2 in 10
odds-3 = about 3 in 10
odds-4 = about 4 in 10
odds-5 = about even
odds-6 = about 6 in 10
odds-7 = about 7 in 10
odds-8 = about 8 in 10
odds-9 = about 9 in 10
odds-over = better than 19 in 20

verdict-look = Last counted too long ago to tell the odds: count what is up now, none as 0.
verdict-too-early = No odds can be told before it has had some warmth it can grow in.
verdict-pinch = Nobody counts a pinch, so there are no odds to tell; most { $crop }{ $variety } is usually up by { $usual }.
verdict-record-wrong = The temperatures written down allow no { $crop }{ $variety } to come up, and { $up } { $up ->
        [one] is
       *[other] are
    } up: look at the readings and where it stood, for no odds can be told from them.
verdict-wait = Wait: the odds that any more come are { $any }, those of the { $wanted } wanted { $reach } ({ $up } up, about { $expected } in the end). The next is expected by { $until }.
verdict-wait-look = The next was expected by { $until }: count again. The odds of the { $wanted } wanted were { $reach }.
verdict-warm = Slow from cold, more likely than dead: at { $temperature } the odds of { $wanted } in time are { $reach }, at { $from } to { $to } { $there }.{ $place ->
        [0] {" "}None of your places is that warm.
       *[1] {""}
    }
verdict-cool = Held back by heat, more likely than dead: at { $temperature } the odds of { $wanted } in time are { $reach }, at { $from } to { $to } { $there }.{ $place ->
        [0] {" "}None of your places is that cool.
       *[1] {""}
    }
verdict-nothing-more = Nothing more is likely: the odds that any come are { $any }, and { $up } of { $wanted } wanted { $up ->
        [one] is
       *[other] are
    } up.{ $dug ->
        [0] {" "}Dig up two seeds to be sure.
       *[other] {""}
    }{ $over ->
        [1] {" "}It is late to sow again for this season: { $last } was the last useful day.
       *[0] {""}
    }
verdict-sow-beside = The odds that any more come are { $any }, those of the { $wanted } wanted { $reach } ({ $up } up, about { $expected } in the end).{ $over ->
        [1] {" "}It is late to sow more for this season: { $last } was the last useful day.
       *[0] { $seeds ->
            [0] {" "}Sow better seed beside it.
            [one] {" "}Sow one more seed beside it.
           *[other] {" "}Sow { $seeds } more beside it.
        }
    }

choice-wait = Wait until { $until }
choice-move-to = Move to { $place }
choice-dig-up = { $number ->
        [one] Dig up one
       *[other] Dig up two
    }
choice-sow-beside = Sow { $seeds } more beside it
choice-sow-again = Sow again
choice-sow-other = Sow another packet
choice-sow-better = Sow { $seeds } of { $crop }{ $variety }{ $year }
choice-give-up = Give it up
choice-enough = { $up ->
        [one] The one that is up will do
       *[other] The { $up } that are up will do
    }

gives-wait = { $reach } for the { $wanted } wanted, and about { $expected } in the end.
gives-move = { $there } for the { $wanted } wanted, against { $reach } where it stands.
gives-move-to = Half of them would be up about { $days } days from now.
gives-dig-up = { $number ->
        [one] Firm, the odds that any more come are { $firm }; soft, { $soft }.
       *[other] Both firm, the odds that any more come are { $firm }; both soft, { $soft }.
    }
gives-sow = From the same packet: about 9 in 10 for the { $wanted } wanted.{ $season ->
        [1] {" "}Of use until { $last }.
       *[0] {""}
    }
gives-sow-better = Better seed, so fewer do: about 9 in 10 for the { $wanted } wanted.{ $season ->
        [1] {" "}Of use until { $last }.
       *[0] {""}
    }
gives-give-up = It is written down that nothing came up; { $cells ->
        [one] its cell and the compost are
       *[other] its { $cells } cells and the compost are
    } free for something else.
gives-enough = No more is said of its being late, until you count again.

find = { $soft ->
        [0] { $firm ->
            [one] It was firm
           *[other] Both firm
        }
       *[other] { $firm ->
            [0] { $soft ->
                [one] It was soft
               *[other] Both soft
            }
           *[other] One firm, one soft
        }
    }
find-gives = Then the odds that any more come are { $any }.

## What the compost was last like

felt-only = Felt { $feel } { $at }
felt-and-watered = Felt { $feel } and watered { $water } { $at }
felt-watered = Watered { $water } { $at }

## Light and cautions

caution-electricity = Heat and water: use only kit made for damp places, on a protected socket, and follow local rules; leave wiring to a qualified electrician.

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
error-not-open = No journal is open. Close the app and open it again.
error-unexpected = Something went wrong in the app. Nothing was half written; try again.

## Crops and cautions of the whole crop book

crop-achillea = yarrow
crop-ageratum = ageratum
crop-alyssum = sweet alyssum
crop-aquilegia = aquilegia
crop-artichoke = artichoke
crop-basil = basil
crop-bean-runner = runner bean
crop-begonia = bedding begonia
crop-borage = borage
crop-broad-bean = broad bean
crop-broccoli = broccoli
crop-brussels-sprouts = Brussels sprouts
crop-calendula = pot marigold
crop-campanula = bellflower
crop-celeriac = celeriac
crop-celosia = celosia
crop-chard = chard
crop-chervil = chervil
crop-chicory = chicory
crop-chilli = chilli
crop-china-aster = China aster
crop-chinese-cabbage = Chinese cabbage
crop-chives = chives
crop-coleus = coleus
crop-coriander = coriander
crop-corn-salad = corn salad
crop-cornflower = cornflower
crop-cosmos = cosmos
crop-cress-garden = garden cress
crop-delphinium = delphinium
crop-dill = dill
crop-echinacea = coneflower
crop-endive = endive
crop-eryngium = sea holly
crop-fennel = Florence fennel
crop-foxglove = foxglove
crop-gomphrena = globe amaranth
crop-hollyhock = hollyhock
crop-impatiens = busy Lizzie
crop-kale = kale
crop-kohlrabi = kohlrabi
crop-larkspur = larkspur
crop-lavender = lavender
crop-leek = leek
crop-lemon-balm = lemon balm
crop-lisianthus = lisianthus
crop-lobelia = lobelia
crop-lupin = lupin
crop-marigold = French or African marigold
crop-morning-glory = morning glory
crop-mustard = mustard greens
crop-nasturtium = nasturtium
crop-new-zealand-spinach = New Zealand spinach
crop-nicotiana = tobacco plant
crop-nigella = love-in-a-mist
crop-oregano = oregano
crop-pak-choi = pak choi
crop-pansy = pansy
crop-pelargonium = pelargonium
crop-petunia = petunia
crop-poppy-californian = Californian poppy
crop-portulaca = portulaca
crop-primrose = primrose
crop-pumpkin = pumpkin
crop-rhubarb = rhubarb
crop-rocket = rocket
crop-rosemary = rosemary
crop-rudbeckia = rudbeckia
crop-rutabaga = swede
crop-sage = sage
crop-salsify = salsify
crop-salvia-scarlet = scarlet sage
crop-savory-summer = summer savory
crop-snapdragon = snapdragon
crop-sorrel = sorrel
crop-squash = courgette
crop-statice = statice
crop-stock = stock
crop-strawflower = strawflower
crop-sunflower = sunflower
crop-sweet-pea = sweet pea
crop-sweet-william = sweet William
crop-thyme = thyme
crop-tomato-husk = tomatillo or physalis
crop-verbena = verbena
crop-verbena-bonariensis = tall verbena
crop-vinca = Madagascar periwinkle
crop-wallflower = wallflower
crop-zinnia = zinnia
