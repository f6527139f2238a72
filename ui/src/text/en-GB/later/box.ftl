## Seed: what was done

line-packets-described =
    { $packets ->
        [one] One packet noted
       *[other] { $packets } packets noted
    }
line-packet-described-days = Packet noted: { $crop }{ $variety }, by the packet up in { $spread ->
        [0] { $to }
       *[other] { $from } to { $to }
    } { $to ->
        [one] day
       *[other] days
    }
line-seeds-counted = { $crop }{ $variety }: { $left ->
        [one] one seed left
       *[other] { $left } seeds left
    }
line-stock-keep = Stocktake: { $crop }{ $variety } stays
line-stock-test = Stocktake: { $crop }{ $variety } to be tested
line-stock-used-up = { $crop }{ $variety } used up
line-stock-given-away = { $crop }{ $variety } given away
line-test-started = Germination test of { $crop }{ $variety } started: { $seeds ->
        [one] one seed
       *[other] { $seeds } seeds
    }
line-to-buy-wanted = To buy: { $crop }{ $variety }
line-to-buy-bought = Bought: { $crop }{ $variety }
line-to-buy-dropped = Off the list: { $crop }{ $variety }

## Seed: refused and asked

refused-test-unknown = That germination test is not in the journal. Go back and choose again.
refused-item-unknown = That is not on the list any more. Look at the list again.
refused-saved-from-f1 = Those plants are F1: what grows of their seed is not like them. Leave open what it was saved from, or choose other plants.
refused-test-closed = That test was closed. Undo its closing first.
refused-more-than-tested =
    { $seeds ->
        [one] There was only one seed in that test. Count again.
       *[other] There were only { $seeds } seeds in that test. Count again.
    }
refused-before-the-test = That test was started on { $day }. Give a later day.
asks-test-count-falls = Before, { $before } had sprouted; { $now } is fewer. Count those taken off too. Is it right all the same?

## Seed: germination tests

outlook-tested = Your germination test of { $day }: { $sprouted } of { $seeds } sprouted
test-not-counted = Not counted yet
test-so-far = { $sprouted } of { $seeds } sprouted by { $day }
test-closed-at = { $sprouted } of { $seeds } sprouted: of the whole packet between { $low } and { $high }, with odds of 19 in 20

## Seed: saved, sown now, stocktake, to buy

saved-from = Saved from { $crop }{ $variety } in { $tray }
saving-not-f1 = F1: save no seed of it. What grows of it is not like its parents.
now-until = Sow by { $last }
now-late = Late, but useful until { $last }
now-book-before = { $first } to { $last } weeks before the last frost
now-book-around = From { $first } weeks before the last frost to { $last } after
now-book-after = { $first } to { $last } weeks after the last frost
stock-empty = None should be left. Look into the packet.
stock-unknown = Not in the crop book: a germination test tells what it is worth.
stock-good = Good enough to keep.
stock-few = Doubtful, and too few to test: sow them all, thickly.
stock-test = Doubtful: a germination test of 20 seeds tells more than its age.
buy-out = None left; last sown { $day }
buy-doubtful = What is left may hardly come up
buy-short = { $left } left, { $sown } sown in the last year of it

## Seed: a table taken in

import-field-crop = Plant
import-field-variety = Variety
import-field-packed = Year packed
import-field-harvested = Year harvested by you
import-field-sow-by = Sow by
import-field-stated-germination = Germination stated
import-field-stated-days = Days to come up stated
import-field-stated-at-c = Temperature of those days, °C
import-field-seeds = Seeds in it
import-field-storage = Kept
import-field-treated = Treated
import-field-f1 = F1
import-field-source = From
import-field-price = Price
import-field-note = Note
import-field-in-use = In use
import-line-no-crop = No plant is named.
import-line-no-year = “{ $text }” is no year. Write it as 2025.
import-line-no-day = “{ $text }” is no day. Write it as 2027-12-31.
import-line-no-number = “{ $text }” is no number.
import-line-no-days = “{ $text }” is no number of days. Write it as 7 to 14.
import-line-no-range = “{ $text }” is no temperature in °C. Write it as 18 to 21.
import-line-no-storage = “{ $text }” is none of the ways seed is kept here. Write fridge_sealed, cool_cupboard, warm_room or damp_shed.
import-line-no-yes = “{ $text }” is neither yes nor no.
import-line-not-text = It holds bytes that are no text. Save the table as UTF-8.
import-line-too-long = A cell has more than 10,000 characters.
import-line-too-many-columns = It has more than 60 columns.
error-import-too-large = That file is larger than 5 MB. Leave out what is no list of packets, or split it.
error-import-too-many = That table has more than 5,000 lines. Split it in two.
error-import-not-text = That is no table of text. Save it as CSV in UTF-8 and choose it again.
error-import-empty = There is no packet in that file: it wants a line with the names of the columns, and below it a line for each packet.
