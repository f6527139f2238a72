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
seed-sow-it = Sow it
seed-sow-this = Sow it: { $name }
seed-parts = Parts of the seed box
seed-part-box = Packets
seed-part-now = Sow now
seed-part-buy = To buy
seed-part-stocktake = Stocktake
seed-part-import = From a table
seed-show = Show
seed-show-in-use = In use
seed-show-testing = To test or being tested
seed-show-saved = Saved by you
seed-show-retired = No longer used
seed-sort = Order
seed-sort-recent = Last used first
seed-sort-name = By name
seed-sort-worth = Doubtful first
seed-sort-age = Oldest first
seed-found = { $found } of { $of } packets
seed-first-cross = F1
seed-testing = Being tested
seed-to-test = To be tested
seed-retired = No longer used
seed-edit = Change

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
packet-stated-days = Days to come up stated
packet-days-from = At least
packet-days-to = At most
packet-days-unit = days
packet-days-low = At no less than
packet-days-high = At no more than
packet-days-said = { $spread ->
        [0] { $to }
       *[other] { $from } to { $to }
    } { $to ->
        [one] day
       *[other] days
    }
packet-days-said-at = { $days } at { $range }
packet-treated = Treated seed
packet-treated-caution = Treated seed: wear gloves, keep it from food, children and animals, and follow the packet and your local rules.
packet-source = From
packet-note = Note
packet-add = Add this packet
packet-saved = { $name } is in. The next?
packet-save = Save
packet-retire = No longer used
packet-bring-back = Use it again
packet-is-retired = No longer used. It stays here with all that came of it.
packet-all = All packets
packet-first-cross = F1
packet-first-cross-what = A first cross: what grows of seed saved from it is not like its parents.
packet-sow-by = Sow by
packet-price = Price
packet-price-hint = As on the packet, 2.95 for one.
packet-count = Count seeds left
packet-count-what = What is sown and tested from now on is taken off this number.
packet-left = Seeds left
packet-defer = The packet and your local rules come first.
packet-photos = Photos of the packet
packet-tests = Germination tests
packet-no-tests = Not tested yet.
packet-sowings = Sown from it
packet-no-sowings = Not sown from yet.
packet-sowing = { $day } in { $tray }
packet-gave = { $up } of { $seeds } came up
packet-gave-pinch = a pinch; { $up } came up
packet-still-growing = , still growing
packet-timeline = What was written
packet-perhaps = perhaps { $low } to { $high } in 10 come up
packet-perhaps-one = perhaps { $high } in 10 come up
packet-seeds-left = { $seeds ->
    [one] one seed left
   *[other] { $seeds } seeds left
}

## Germination tests, saved seed, stocktake, to buy

test-start = Start a germination test
test-how = Lay the seeds apart on damp kitchen paper, roll it up, put it into an open bag with a label and keep it where this crop likes to come up. Keep it damp, never wet. Treated seed: gloves, and no kitchen ware that is eaten from.
test-seeds = Seeds on the paper
test-do-start = Start it
test-of = Test of { $day }
test-counts = Counted:
test-count = { $day }: { $sprouted }
test-looks = First look { $first }, last { $last }.
test-sprouted = Sprouted in all, of { $seeds }
test-do-count = Count
test-do-close = Close the test

save-seed = Save seed of it
save-seed-what = Let it ripen and dry, then add it here as a packet of its own.
save-seed-from = Saved from
save-seed-some = Not noted

now-no-season = Without a last frost date the crop book can only speak of weeks.
now-set-season = Set your frost dates
now-none-title = Nothing to sow now
now-none-what = No packet in the box has its season today.

stocktake-what = Once a year, before seed is ordered: take each packet into your hand. Age alone is no reason to throw seed away; a test tells.
stocktake-done = { $done } of { $all } gone through
stocktake-progress = How far the stocktake is
stocktake-answers = What becomes of it
stocktake-keep = Keep
stocktake-test = Test it
stocktake-used-up = Used up
stocktake-given-away = Given away
stocktake-open = Look at this packet
stocktake-resume = You can leave off at any time: it goes on where it was.
stocktake-none-title = All packets gone through
stocktake-none-what = Every packet in use was in your hand since { $day }.

buy-title = Seed to buy
buy-empty-title = Nothing on the list
buy-empty-what = What runs out is suggested below; put on by hand what you like.
buy-bought = bought
buy-drop = Take off
buy-drop-this = Take off the list: { $name }
buy-share = Share the list
buy-copied = The list is on the clipboard: paste it where you like.
buy-not-shared = The list could not be shared. Try again, or write it down by hand.
buy-suggested = May be wanted
buy-suggested-what = Sown in the last two years, and now out, short or doubtful.
buy-add = Put on
buy-add-this = Put on the list: { $name }
buy-by-hand = Put on by hand
buy-note = How much, where from
buy-put-on = Put it on the list

import-what = A list of packets kept elsewhere comes in as a CSV table: a line with the names of the columns, and a line for each packet. Nothing is added before you have looked at it.
import-choose = Choose a table
import-reading = Reading …
import-taking = Adding the packets …
import-done = The packets are in the box. One undo takes them all back.
import-counts = { $packets ->
    [0] No packet to add
    [one] One packet to add
   *[other] { $packets } packets to add
}{ $bad ->
    [0] .
    [one] ; one line cannot be read.
   *[other] ; { $bad } lines cannot be read.
}
import-columns = What the columns are
import-columns-what = What was guessed is chosen; change what is wrong. Under each stands the first thing in it.
import-column = Column { $number }
import-leave-out = Leave it out
import-bad = Lines that cannot be read
import-bad-line = Line { $line }:
import-bad-more = and { $lines } more. Mend the table and choose it again.
import-duplicates = { $packets ->
    [one] One packet is here already and is left out.
   *[other] { $packets } packets are here already and are left out.
}
import-take-duplicates = Add them once more all the same
import-first = The first of them
import-duplicate = Here already
import-seeds = { $seeds ->
    [one] one seed
   *[other] { $seeds } seeds
}
import-take = { $packets ->
    [0] Add
    [one] Add one packet
   *[other] Add { $packets } packets
}
import-undo = All of it is one step: one undo takes it back.
