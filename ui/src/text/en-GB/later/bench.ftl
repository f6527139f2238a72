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
