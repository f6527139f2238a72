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
