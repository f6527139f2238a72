# American English: only what is said otherwise than in en-GB.

list-last = { $rest }, and { $last }
crop-bean-snap = snap bean
crop-beet = beet
crop-corn-sweet = sweet corn
crop-eggplant = eggplant
crop-muskmelon = muskmelon
place-kind-heated-propagator = heat mat
container-cells = cell tray
container-open-tray = open flat
compost-seed = seed-starting mix
compost-multi-purpose = all-purpose potting mix
compost-potting = potting mix
compost-coarse = coarse mix
compost-no-compost = no mix
medium-compost = mix
step-potted-on = potted up
cause-spilt = spilled
stage-potted-on = potted up
job-cover-off = dome off
job-feel-the-compost = feel the mix
job-pot-on = pot up
job-stocktake = seed inventory
why-frost-fleece = { $low } tonight in { $place }: near the edge for { $crops }. Two layers of row cover will do, or bring it in, to { $to }.
why-frost-fleece-only = { $low } tonight in { $place }: too cold for { $crops }. Bring it indoors if you can, else two layers of row cover.
why-sow-on =
    { $there ->
        [one] { $there } seed of { $crop }{ $variety } has sprouted: lay it { $low } to { $high } deep in potting mix before its root is longer than the seed. Hold it by the seed, not by the root.
       *[other] { $there } seeds of { $crop }{ $variety } have sprouted: lay them { $low } to { $high } deep in potting mix before the roots are longer than the seeds. Hold them by the seed, not by the root.
    }
why-sow-on-surface =
    { $there ->
        [one] { $there } seed of { $crop }{ $variety } has sprouted: lay it on the mix, and do not cover it.
       *[other] { $there } seeds of { $crop }{ $variety } have sprouted: lay them on the mix, and do not cover them.
    }
why-sow-on-unknown =
    { $there ->
        [one] { $there } seed of { $crop }{ $variety } has sprouted: lay it in potting mix before its root is longer than the seed.
       *[other] { $there } seeds of { $crop }{ $variety } have sprouted: lay them in potting mix before the roots are longer than the seeds.
    }
why-feed = Set into fresh mix on { $since }: four weeks on { $crop }{ $variety } has used it up. Feed at half strength, on moist potting mix.
why-feed-again = Last fed on { $since }: { $crop }{ $variety } wants it every two weeks until it goes out. At half strength, on moist potting mix.
why-feed-pale = The leaves of { $crop }{ $variety } were pale on { $since }, and it has true leaves: feed at half strength, on moist potting mix.
why-pot-on-plugs = Plugs came on { $began } ({ $there }): pot them up before they dry out.
why-cover-off = Up: { $crops } ({ $up }). Under a dome seedlings rot, so take it off.
why-cover-off-mixed = Up: { $crops } ({ $up }), but { $waiting } not yet. Take the dome off and feel it more often, or cut the tray apart.
gives-give-up = It is written down that nothing came up; { $cells ->
        [one] its cell and the mix are
       *[other] its { $cells } cells and the mix are
    } free for something else.
caution-electricity = Heat and water: use only equipment made for damp places, on a GFCI outlet, and follow local rules; leave wiring to a licensed electrician.
crop-aquilegia = columbine
crop-begonia = wax begonia
crop-broad-bean = fava bean
crop-calendula = calendula
crop-chilli = hot pepper
crop-chinese-cabbage = napa cabbage
crop-coriander = cilantro
crop-corn-salad = mâche
crop-impatiens = impatiens
crop-lupin = lupine
crop-nicotiana = flowering tobacco
crop-pak-choi = bok choy
crop-pelargonium = zonal geranium
crop-poppy-californian = California poppy
crop-portulaca = moss rose
crop-rocket = arugula
crop-rutabaga = rutabaga
crop-squash = zucchini
crop-tomato-husk = tomatillo or ground cherry
crop-vinca = annual vinca
