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
sow-seeds = Seeds sown
sow-exact = Counted
sow-about = About
sow-pinch = A pinch
sow-seeds-number = Seeds
sow-odds = How sure
sow-odds-80 = 8 in 10
sow-odds-90 = 9 in 10
sow-odds-95 = 19 in 20
sow-each = Seeds in each cell
sow-follow = As many as are enough
sow-too-few-cells = There are only { $free } free cells. Take a larger tray, or put more seeds in each.
sow-more-than-left = The packet should have only { $left } left.
sow-seeds-count =
    { $seeds ->
        [one] One seed
       *[other] { $seeds } seeds
    }
sow-summary =
    { $seeds }, { $cells ->
        [one] one cell
       *[other] { $cells } cells
    } of { $code }, { $place }
sow-now = Now
sow-when = When
sow-another-day = Another day
sow-best = Suits best
sow-due = Up in { $days }: { $from } to { $to }
sow-last = Last: { $what }, { $how }.
sow-no-packets = No packets yet. Add the first one.
sow-more-packets = And { $more } more: type a little more of the name.
sow-where = Where it will stand
sow-where-stands = { $code } stands in: { $place }.
sow-no-place = No place yet.
sow-tray = Into what
sow-depth = How deep
sow-depth-advised = { $low } to { $high } is usual.
sow-depth-about = { $depth } is usual.
sow-depth-surface = It is pressed onto the surface, not buried.
sow-on-top = On top
sow-deeper = Deeper
sow-shallower = Shallower
sow-save = Save the sowing

before-sowing = Before sowing
before-none-wanted = Nothing is needed; say so if you did something
before-soaked = Soaked in water
before-soaked-hours = Hours in water
before-chipped = Seed coat nicked or rubbed
before-cold = In the cold first, from now on
before-cold-weeks = Weeks in the cold
before-cold-how = Moist at { $low } to { $high }: in the fridge or, in winter, outdoors. You are told when they are over, and it is not late until then.
before-paper = To sprout it first, choose damp paper as the kind of tray: you are told when to look and when to sow it on.

depth-drawing = To scale: seed { $length } long and { $thick } thick, { $depth } deep.
depth-drawing-bare = { $depth } deep; the size of this seed is not known.

batch-origin = Started from
batch-number = How many
batch-summary =
    { $number ->
        [one] One
       *[other] { $number }
    } into { $code }
batch-save = Save
batch-how-cuttings = Cut just under a leaf joint with a clean, sharp blade, take the lower leaves off, set them before they wilt, and cover them.
batch-how-tubers = Eyes or last year's stalk up; cut pieces only once the cut is dry.
batch-how-bulbs = The pointed end up, and any that are soft or mouldy left out.
batch-how-plugs = Water them before they leave their cells; hold them by a leaf, never by the stem.

saved-title = It is in the journal
saved-copy = Copy this onto its label with a pencil; ink fades.
saved-same-again = Same again
saved-beside = Next packet into { $code } too
saved-undone = It was taken back
saved-another = Sow something else
saved-see = See tray { $code }
label-title = The label

## The order of work at the bench

bench-order = The order of work
bench-order-damp = Wear gloves, air the room, and damp the compost and the bench before you stir up dust.
bench-order-fill = Fill with fine compost to the brim and strike it level: sieve lumps out of the top.
bench-order-firm = Firm it lightly with a board or another tray, so that it does not sink later.
bench-order-water = Water now, before you sow: from below, or with a fine rose that starts and ends beside the tray.
bench-order-sow = Sow thinly and evenly; large seed one by one.
bench-order-cover = Cover to the depth shown with sieved compost or vermiculite. After that only water from below or mist: a can washes seed together.
bench-order-label = Write the label before you open the next packet.
bench-order-stand = Stand it in its place, and wash your hands.
