## Seed: what was done

line-packets-described =
    { $packets ->
        [one] One packet noted
       *[other] { $packets } packets noted
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
