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
why-stocktake = Before seed is ordered: { $left ->
        [one] one packet has
       *[other] { $left } packets have
    } not been in your hand this year.

hardiness-hardy = hardy
hardiness-half-hardy = half-hardy
hardiness-tender = tender

## Forecasts

forecast-due = The first about { $first }, half by { $half }, nearly all by { $most }: { $spread ->
        [0] { $high }
       *[other] { $low } to { $high }
    } in the end. It is { $way }: { $place } has been at { $temperature }.
forecast-due-today = Nearly all by { $most }: { $spread ->
        [0] { $high }
       *[other] { $low } to { $high }
    } in the end. Sown today, into { $temperature } in { $place }.
forecast-half-up = Half were due by { $half }, nearly all are by { $most }: { $spread ->
        [0] { $high }
       *[other] { $low } to { $high }
    } in the end. It is { $way }: { $place } has been at { $temperature }.
forecast-past = Nearly all should have been up by { $most }; { $spread ->
        [0] { $high }
       *[other] { $low } to { $high }
    } were expected. It is { $way }: { $place } has been at { $temperature }.
way-0 = hardly begun
way-1 = a quarter of the way
way-2 = half-way
way-3 = three quarters of the way
way-4 = at the time when half of them are up
way-5 = past the time when half of them are up
way-6 = long past the time when half of them are up
forecast-none = None comes up within a year at { $temperature }.
forecast-winter = Waiting out the winter: it is looked for again from { $until }.
forecast-cold-until = In its cold weeks until { $until }: it starts then.
forecast-cold-fridge-until = In its cold weeks: it may leave the fridge on { $until }, and starts then.
forecast-cold-weeks = In its cold weeks: it starts when it leaves the fridge.
bench-due =
    { $to ->
        [one] { $from } to { $to } day
       *[other] { $from } to { $to } days
    }
bench-none-below = None comes up below { $limit }; it is { $temperature } there.
bench-none-above = None comes up above { $limit }; it is { $temperature } there.
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

## Why it did badly

reason = { $likely ->
        [1] Likely
       *[0] Possibly
    } { $cause }: that may have cost about { $seedlings ->
        [one] one seedling
       *[other] { $seedlings } seedlings
    }.
reason-cause-too-cold = too cold
reason-cause-too-hot = too hot
reason-cause-old-seed = old seed
reason-cause-too-deep = sown too deep
reason-cause-too-shallow = sown too shallow
reason-cause-buried-from-light = buried away from the light
reason-cause-dried-out = dried out
reason-cause-wet-and-cool = kept wet in the cool
reason-cause-wrong-compost = the wrong compost
reason-cause-washed-out = washed out by a can
reason-cause-eaten = eaten
reason-cause-damped-off = damped off
reason-cause-frosted = frosted
reason-cause-baked = baked
reason-cause-want-of-light = leggy for want of light
reason-cause-long-in-the-heat = kept too long in the heat

reason-fact-days = { $days ->
        [one] One day
       *[other] { $days } days
    } at { $temperature } on average; it wants { $from } to { $to }.
reason-fact-germination = Perhaps { $packed } in 10 of it came up when it was packed, and { $now ->
        [0] fewer than 1
       *[other] { $now }
    } in 10 now.
reason-fact-germination-year = Of { $year }: perhaps { $packed } in 10 of it came up then, and { $now ->
        [0] fewer than 1
       *[other] { $now }
    } in 10 now.
reason-fact-depth-most = Sown { $depth } deep, where { $right } is the most.
reason-fact-depth-least = Sown { $depth } deep, where { $right } is the least.
reason-fact-dry = Felt dry and not watered that day: { $felt ->
        [one] once
        [2] twice
       *[other] { $felt } times
    } before it came up.
reason-fact-gap = Once not felt for { $days } days.
reason-fact-wet = Felt wet { $felt ->
        [2] twice
       *[other] { $felt } times
    } at { $temperature } on average; it wants { $from } to { $to }.
reason-fact-sown-in = Sown in { $compost }.
reason-fact-can = Watered { $times ->
        [one] once
       *[other] { $times } times
    } by a can without a rose.
reason-fact-saw = You wrote down { $number } lost to it.
reason-fact-saw-it = You wrote it down.
reason-fact-light = It stood away from bright light after it came up.
reason-fact-heat = { $days } days over the heat after it came up.

remedy-too-cold = Next time stand it at { $from } to { $to } until it is up.
remedy-too-hot = Next time stand it at { $from } to { $to }: out of the sun and off the heat until it is up.
remedy-old-seed = Buy or save new seed, or sow half of this and half of a new packet: a fair trial.
remedy-too-deep = Next time sow it { $least } to { $most } deep; half and half is a fair trial.
remedy-too-shallow = Next time cover it { $least } to { $most } deep; half and half is a fair trial.
remedy-buried-from-light = Press it on and leave it bare, or cover it by { $most } at most; half and half is a fair trial.
remedy-dried-out = Feel it every couple of days, and cover it until it is up.
remedy-wet-and-cool = Water only when it feels dry, and stand it warmer.
remedy-wrong-compost = Next time use seed compost, damped before you tip it; half and half is a fair trial.
remedy-washed-out = Water small seed from below or by mist.
remedy-eaten = Next time stand it out of reach, under a lid or fine mesh.
remedy-damped-off = Sow thinner, in clean trays and fresh compost, with the cover off as soon as it is up.
remedy-frosted = Next time bring it in, or cover it, on a night that may freeze.
remedy-baked = Next time shade it and open the lid on sunny mornings.
remedy-want-of-light = Next time move it into bright light on the day it comes up.
remedy-long-in-the-heat = Next time take it off the heat on the day it comes up.

## Notices

notice-morning = This morning’s round
notice-evening = This evening’s round
notice-frost-title = Frost tonight
notice-light-title = Into the light
notice-place = { $place }: { $what }
notice-feel-the-compost =
    { $count ->
        [one] { $count } tray to feel
       *[other] { $count } trays to feel
    }
notice-read-the-thermometer = read the thermometer
notice-frost-tonight = frost tonight: { $crops }
notice-open-the-lid = open the lid
notice-close-the-lid = close the lid
notice-last-chance = last chance to sow { $crops } again
notice-before-you-go = water before you go
notice-look-over = look it over after your days away
notice-end-of-the-cold-weeks = { $crops } out of the cold
notice-sow-on = sow on { $crops }
notice-look-for-seedlings = look for { $crops }
notice-it-is-late = { $crops } late
notice-into-the-light = { $crops } into the light
notice-cover-off = cover off { $crops }
notice-thin = thin { $crops }
notice-prick-out = prick out { $crops }
notice-pot-on = pot on { $crops }
notice-harden-off = { $crops } out for the day
notice-plant-out = plant out { $crops }
notice-bring-in = bring { $crops } in for the night
notice-seed = Seed: { $what }
notice-count-the-test =
    { $count ->
        [one] a germination test to count
       *[other] { $count } germination tests to count
    }
notice-stocktake = stocktake before ordering

## What was done: lines of the journal, and the answer to an act

line-garden-described = Garden settings noted
line-away = Away from { $from } to { $to }
line-place-described = Place noted: { $place }
line-packet-described = Packet noted: { $crop }{ $variety }
line-test-counted = Germination test of { $crop }{ $variety }: { $sprouted } of { $seeds } sprouted so far
line-test-closed = Germination test of { $crop }{ $variety } closed: { $sprouted } of { $seeds } sprouted
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
line-away-open = Away from { $from } until further notice
line-came-back = Back on { $day }
line-frost-reckoned = Frost odds reckoned from minima of { $from } to { $to }
line-night = Tonight’s low outdoors on { $day }: { $temperature }
line-night-in = Tonight’s low in { $place } on { $day }: { $temperature }
line-sheltered-brought-in = Brought { $tray } in for the night
line-sheltered-brought-in-many = Brought { $trays } trays in for the night
line-sheltered-fleece = Fleece over { $tray } for the night
line-sheltered-fleece-many = Fleece over { $trays } trays for the night
line-aired = Opened the lid: { $place }
line-heat-back = Heat back on in { $place }: { $at }
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
outlook-few = Fewer than 1 in 10 come up
outlook-few-packed = Fewer than 1 in 10 come up: packed { $year }, kept { $storage }; the usual life is { $life ->
        [one] { $life } year
       *[other] { $life } years
    }
outlook-few-harvested = Fewer than 1 in 10 come up: harvested { $year }, kept { $storage }; the usual life is { $life ->
        [one] { $life } year
       *[other] { $life } years
    }
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

outlook-own = { $sowings ->
        [one] Your own sowing
       *[other] Your own { $sowings } sowings
    }: { $up } of { $of }

## Light and cautions

light-need-needed = Comes up better in the light: cover thinly or not at all
light-need-dark = Comes up better in the dark: cover it well

caution-compost-dust = Compost dust can carry Legionella: wear gloves, damp the compost and the bench before you tip or sweep, keep your face away, and wash your hands. Follow the words on the bag and local rules.
caution-treated-seed = Treated seed: wear gloves, keep it from children and animals, never eat it, and follow the packet.
caution-electricity = Heat and water: use only kit made for damp places, on a protected socket, and follow local rules; leave wiring to a qualified electrician.
caution-poisonous-leaves = Leaves and stems are poisonous to eat: keep them from children and animals.
caution-poisonous-raw-seeds = The seeds are poisonous raw: keep them from children and animals.
caution-poisonous-berries = The berries are poisonous: keep them from children.
caution-sap-burns-in-sun = The sap on skin burns it in sunlight: wear gloves and wash it off.

## What cannot be done: refused by the journal

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
refused-night-temperature-out-of-range = That is no temperature of a night: give one from { $least } to { $most } °C.
refused-frost-nothing-reckoned = There is nothing to keep: neither spring nor autumn had enough years with a frost. Bring a longer record.
refused-frost-out-of-range = Those frost dates cannot be right. Read the record in again.
refused-not-away = No days away are noted for then, so there is nothing to end.
refused-heat-not-off = The heat of { $name } was not off then. Note first since when it was off.
refused-soak-out-of-range = Seed does not stand that much water: soak it for more than 0 and at most { $most } hours.
refused-depth-out-of-range = That is too deep to be right: at most { $most } mm. Give it again.
refused-photo-malformed = That photo could not be taken in. Take it again.
refused-felt-nothing = Say how it felt, how it was watered, or both.
refused-ends-before-it-starts = It ends before it starts. Swap the two.
refused-job-malformed = That job is not known any more. Look at the round again.
refused-correction-of-another-kind = A line can only be corrected to one of its own kind. Withdraw it and write a new one.
refused-correction-does-not-add-up = With that the numbers no longer add up. Correct what came after it first.

## What is asked first

asks-above-the-seeds = { $up } up is more than the { $seeds } seeds that were sown. Write it down all the same?
asks-far-back = { $day } is { $days } days back. Is the date right?
asks-above-the-batch = { $up } is more than the { $before } that were set in. Write it down all the same?
asks-count-falls = That is { $lost } fewer than before: they count as lost, and { $there } as there. Is that so?
asks-reading-differs = { $temperature } is far from the { $before } that { $place } had before. Is it right?
asks-others-build-on-it = Other lines build on this one and would go with it. One undo brings them all back. Go on?
asks-after-the-end = It was done with on { $day }. Write this down all the same?

## What went wrong

error-store-failed = The journal could not be written. Try again; nothing was lost.
error-disk-full = The disk is full. Make room and try again; nothing was lost.
error-journal-read-only = The journal may not be written. Check that its folder may be.
error-journal-busy = The journal is open elsewhere. Close that and try again.
error-journal-damaged = The journal is damaged. It is left as it is; bring back a backup.
error-journal-newer = The journal was written by a newer version. Update before opening it.
error-not-a-journal = That file is not a journal. It is left as it is.
error-file-failed = A file could not be read or written. Check the disk and try again.
error-save-failed = The file could not be saved there. Choose another folder, or make room, and try again.
error-bad-request = “{ $text }” is not known here. Go back and choose again.
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
error-not-open = No journal is open. Close the app and open it again.
error-unexpected = Something went wrong in the app. Nothing was half written; try again.
error-nothing-chosen = Nothing was chosen. Choose at least one tray.

## What is odd about a tray or its plants

problem-more-left-than-there = More plants left than were there: look at the lines below and correct one.
problem-cells-twice = Some cells hold two things at once or lie outside the tray.
problem-never-described = Its first entry is missing or withdrawn.
problem-after-the-end = Something was written about it after it was done with.

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

caution-poisonous-plant = Poisonous in all its parts: wear gloves, wash your hands, and keep it and its seed from children and animals.
caution-harmful-if-eaten = Parts of it do harm if eaten: keep it from children and animals.
caution-poisonous-leaf-blades = The leaf blades are poisonous: only the stalks are eaten.
caution-poisonous-seeds = The seeds are poisonous: keep them from children and animals, and never among food.
caution-irritates-skin = It can irritate the skin: wear gloves if yours is sensitive.
caution-burns-eyes = Seeds and fruit burn eyes and skin: wear gloves to handle them and wash your hands.
caution-favism = The beans and the pollen can harm people with favism (G6PD deficiency): they should keep away and follow their doctor.

treatment-soak-hours = Soak the seed in lukewarm water for { $low } to { $high } hours.
treatment-or-soak-hours = Or soak it in lukewarm water for { $low } to { $high } hours: either is enough.
treatment-chip = Nick or rub the seed coat, away from the eye.
treatment-cold-weeks = Keep the seed moist in the fridge for { $low } to { $high } weeks.
treated-soaked =
    { $hours ->
        [one] Soaked for { $hours } hour.
       *[other] Soaked for { $hours } hours.
    }
treated-chipped = The seed coat was chipped.
treated-cold-weeks =
    { $weeks ->
        [one] { $weeks } week in the cold first.
       *[other] { $weeks } weeks in the cold first.
    }

sowing-compost-fine-seed = fine seed compost
sowing-compost-gritty = seed compost with a third of sharp sand or grit
sowing-compost-multi-purpose = multi-purpose compost, the lumps taken out

## Checking the journal, and backups

error-cancelled = It was stopped. Nothing was changed.
error-backup-unknown = That backup is not there any more. Choose another one.
finding-file-damaged = The journal’s file is damaged ({ $fault }). Recover the journal: it is set aside, and what is still good is brought over.
finding-entries-unread = Lines { $first } to { $last } of the file cannot be read. Recover the journal to bring over the rest.
finding-entry-unreadable = Line { $entry } of the file is damaged and cannot be read. Recover the journal to bring over the rest.
finding-entry-altered = Line { $entry } of the file is not as it was written. Recover the journal to bring over the rest.
finding-entry-misfiled = Line { $entry } of the file is good, but filed wrongly ({ $columns }). Recover the journal to put it right.
finding-entries-missing = Lines { $first } to { $last } of one device ({ $device }) are not here. An older backup or the other device may still have them.
finding-projection-differs = What the journal adds up to is out of date in { $rows } places ({ $table }). Every line is there; have it added up again.
finding-photo-missing = A photo is missing ({ $photo }). Taking in a backup or another device that has it brings it back.
finding-photo-altered = A photo is damaged ({ $photo }). Taking in a backup or another device that has it brings it back.
