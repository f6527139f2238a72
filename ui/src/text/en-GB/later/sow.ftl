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
