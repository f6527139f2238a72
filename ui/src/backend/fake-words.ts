/** Messages of the canned views that the app has its own words for. */
export const fakeWords = `
fake-why-feel = Last felt { $day }; at { $temperature } it dries in about { $days ->
    [one] one day
   *[other] { $days } days
}.
fake-why-look = { $share } of the way: the first are due from { $day }.
fake-why-light = { $up ->
    [one] One is up
   *[other] { $up } are up
} and the { $place } is { $light }: seedlings stretch there within a day.
fake-why-cover = { $up } are up under a cover, where they damp off.
fake-why-late = Nine in ten should have been up by { $day }; { $up } of { $seeds } are.
fake-why-read = Last read { $days } days ago; forecasts lean on it.
fake-why-thin = { $up } stand in { $cells } cells.
fake-why-prick = First counted up { $days } days ago, { $up } of them: big enough to handle by a leaf.
fake-why-pot = In their cells for { $days } days.
fake-why-harden = Ready to go out by day: { $done } of 10 days done.
fake-why-plant = Hardened off for { $done } days, and past { $day }, the last frost.
fake-next = feel the compost in the { $place }
fake-forecast = The first is due by { $first }, half by { $half }, nine in ten by { $most }; { $low } to { $high } in the end.
fake-asks-more-than-sown = { $up } up is more than the { $seeds } sown. Clusters such as beet and chard do that, and packets are miscounted. Write it down?
fake-refused = A place cannot be { $temperature } warm. Look at the thermometer again.
fake-gone = This tray is not in the journal. Go back to all trays.
fake-place-none = None come up here: too cold below { $temperature }.
fake-done = Written down
fake-undone = Taken back
fake-withdrawn = A line was withdrawn
fake-line-counted = Counted in { $tray }: { $number } { $crop }{ $variety } up
fake-line-noted = “{ $text }”
fake-line-felt-and-watered = { $tray } felt { $feel }, watered { $water }
fake-line-sown = Sown in { $tray }: { $seeds } seeds of { $crop }{ $variety }
fake-line-unknown = Written by a newer version: { $kind }
fake-felt-and-watered = Felt { $feel } and watered { $water }, { $at }.
fake-outlook-span = Perhaps { $low } to { $high } in 10 come up: an even packet, kept well.
fake-outlook-own = Your own { $sowings } sowings: { $up } of { $of }
fake-why-cooler = Up: lettuce. At 24 °C in Kitchen sill seedlings grow soft and tall; once up they want 13 °C to 18 °C by day.
fake-why-leggy = Lettuce ‘Curled Butter’ is up in Kitchen sill (dim): by 3 days stems stretch for want of light. Are they long and thin, or short and stout?
fake-why-feed = Set into fresh compost four weeks ago: celery has used it up. Feed at half strength, on moist compost.
fake-why-empty = All cabbage that came up in K5 has gone; 3 seeds never came up. Empty it, or say later if you still wait for more.
fake-why-say-where = Nobody said where K9 (parsley) stands, so nothing can be reckoned for it. Say where it is, and it is in that place’s round.
fake-verdict = Nothing more is likely: the odds that any come are about { $any } in 10, and { $up } of { $wanted } wanted are up. Dig up two seeds to be sure.
fake-choice-dig-up = Dig up two
fake-choice-sow = Sow { $seeds } more beside it
fake-choice-sow-other = Sow another packet
fake-choice-sow-better = Sow 7 of aubergine ‘Early Moon’ 2026
fake-choice-move = Move to { $place }
fake-gives-dig-up = Both firm, the odds that any more come are about 7 in 10; both soft, less than 1 in 20.
fake-gives-sow = From the same packet: about 9 in 10 for the 5 wanted. Of use until { $last }.
fake-gives-move = About 2 in 10 for the 5 wanted, against about 1 in 10 where it stands.
fake-gives-wait = About 1 in 10 for the 5 wanted, and about 1 in the end.
fake-gives-give-up = It is written down that nothing came up; its 6 cells and the compost are free for something else.
fake-find-firm = Both firm
fake-find-one = One firm, one soft
fake-find-soft = Both soft
fake-find-gives = Then the odds that any more come are about { $any } in 10.
fake-learnt-pace = They took 12 % longer than is usual, and that is reckoned with.
fake-choice-wait = Wait until { $until }
fake-choice-give-up = Give it up
fake-reason-old = Likely old seed: that may have cost about { $seedlings } seedlings.
fake-fact-old = Of { $year }: perhaps 9 in 10 of it came up then, and 3 in 10 now.
fake-remedy-old = Buy or save new seed, or sow half of this and half of a new packet: a fair trial.
fake-reason-dry = Possibly dried out: that may have cost about { $seedlings ->
    [one] one seedling
   *[other] { $seedlings } seedlings
}.
fake-fact-dry = Felt dry { $felt } times before it came up.
fake-fact-gap = Once not felt for { $days } days.
fake-remedy-dry = Feel it every couple of days, and cover it until it is up.
fake-due-days = Up in { $first } to { $last } days.
fake-light-need-needed = Needs light to come up: press it in, do not cover it.
fake-caution-treated-seed = Treated seed: gloves on, away from children and animals, and as the packet says.
fake-caution-poisonous-leaves = The leaves are poisonous to eat: keep them from children and animals.
fake-problem-cells-twice = Some cells hold two things at once.
`;
