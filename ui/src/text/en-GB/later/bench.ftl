### What the core says of the bench

## How many are enough

times-80 = 8 times in 10
times-90 = 9 times in 10
times-95 = 19 times in 20
enough-seeds =
    { $seeds ->
        [one] One seed gives
       *[other] { $seeds } seeds give
    } { $wanted ->
        [one] one plant
       *[other] { $wanted } plants
    } or more, { $times }.
enough-cells =
    { $cells ->
        [one] One cell
       *[other] { $cells } cells
    } with { $each ->
        [one] one seed in each
       *[other] { $each } seeds in each
    } { $cells ->
        [one] gives
       *[other] give
    } { $wanted ->
        [one] one plant
       *[other] { $wanted } plants
    } or more, { $times }.
enough-unknown = How many will come up is not known for this one: sow a few more than you want.
enough-better-seed = Too little of this seed is likely to come up for so many plants: test it on damp paper, want fewer, or get better seed.

## What speaks against it

warn-wants-light = It comes up better in the light, and { $place } is dark.
warn-wants-dark = It comes up better in the dark, and { $place } is bright: lay card over the tray until the first are up.
warn-alternating = { $place } is as warm by night as by day. This seed is tested at { $night } for 16 hours and { $day } for 8: cooler nights may help it.
warn-due-while-away = It would come up there while you are away, { $from } to { $to }.
warn-mixed-warmth = To come up it wants { $low } to { $high }; the { $there } in this tray wants { $there_low } to { $there_high }.
warn-mixed-warmth-after = Once up it wants { $low } to { $high } by day; the { $there } in this tray wants { $there_low } to { $there_high }. Choose a tray that you can cut apart.
warn-mixed-light = One wants light to come up and the other the dark: this one and the { $there } in this tray.
warn-mixed-days = Half of it should be up on { $half }, of the { $there } in this tray on { $there_half }: more than a week apart.
warn-mixed-up = The { $there } in this tray is up and wants light and air; new seed wants warmth and often a cover.
warn-too-early = Early for planting out after your last frost: usual is { $from } to { $to }.
warn-too-late = Late in the season: usual is { $from } to { $to }.
warn-too-shallow = Shallower than usual: it dries out sooner there. Watch the surface.
warn-too-deep = Deeper than usual: fewer come up, and later.
warn-buried = It comes up better in the light: so deep it may not come up at all.
warn-compost-garden-soil = Garden soil sets hard in a tray and brings weeds and moulds: use it for big plants.
warn-compost-coarse = Coarse compost leaves gaps round the seed: sieve it.
warn-compost-rich = Potting compost is rich for seedlings: it can scorch fine roots.
warn-compost-lumps = Fine seed falls between lumps: sieve a layer for the top.
compost-wanted-fine-seed = Fine seed compost, sieved and low in feed, suits it.
compost-wanted-gritty = Seed compost with about a third of sharp sand or grit suits it.
compost-wanted-multi-purpose = Multi-purpose compost with the lumps taken out will do.

## The last sowing

last-sown =
    { $seeds ->
        [one] one seed
       *[other] { $seeds } seeds
    } in { $cells ->
        [one] one cell
       *[other] { $cells } cells
    }, { $place }
last-sown-pinch =
    a pinch in { $cells ->
        [one] one cell
       *[other] { $cells } cells
    }, { $place }

## Seed, light and cautions at the bench

bench-due =
    { $to ->
        [one] { $from } to { $to } day
       *[other] { $from } to { $to } days
    }
bench-none-below = None comes up below { $limit }; it is { $temperature } there.
bench-none-above = None comes up above { $limit }; it is { $temperature } there.
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
light-need-needed = Comes up better in the light: cover thinly or not at all
light-need-dark = Comes up better in the dark: cover it well
caution-compost-dust = Compost dust can carry Legionella: wear gloves, damp the compost and the bench before you tip or sweep, keep your face away, and wash your hands. Follow the words on the bag and local rules.
caution-treated-seed = Treated seed: wear gloves, keep it from children and animals, never eat it, and follow the packet.
caution-poisonous-leaves = Leaves and stems are poisonous to eat: keep them from children and animals.
caution-poisonous-raw-seeds = The seeds are poisonous raw: keep them from children and animals.
caution-poisonous-berries = The berries are poisonous: keep them from children.
caution-sap-burns-in-sun = The sap on skin burns it in sunlight: wear gloves and wash it off.
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
