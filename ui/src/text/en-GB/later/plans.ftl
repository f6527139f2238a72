## Plans, sowing windows, plants kept for somebody

plan-packet = { $crop }{ $variety } { $year }
plan-by = { $wanted ->
    [one] One plant
   *[other] { $wanted } plants
} ready by { $day }
plan-sale = { $wanted ->
    [one] One plant
   *[other] { $wanted } plants
} for the sale on { $day }; { $raise } to raise, with some over
plan-every = { $wanted ->
    [one] One plant
   *[other] { $wanted } plants
} every { $weeks ->
    [one] week
   *[other] { $weeks } weeks
}, from { $from } to { $day }
plan-leaves = { $wanted ->
    [one] One plant
   *[other] { $wanted } plants
} each time the last sowing has true leaves, from { $from } to { $day }
plan-stands = { $sowings ->
    [one] Sown once
   *[other] Sown { $sowings } times
}: { $there } there, about { $coming } more expected, { $gone } gone out, of { $wanted }.
plan-stands-each = { $sowings ->
    [one] Sown once
   *[other] Sown { $sowings } times
}: { $there } there, { $gone } gone out.
plan-next-by = Sow from { $from } to { $last }: up to { $longest } days to ready, { $up } of them to come up. { $seeds ->
    [0] {""}
   *[other] { $seeds } seeds are enough for { $plants }, nine times in ten.
}
plan-next-by-now = Sow now, until { $last }: up to { $longest } days to ready, { $up } of them to come up. { $seeds ->
    [0] {""}
   *[other] { $seeds } seeds are enough for { $plants }, nine times in ten.
}
plan-next = Sow on { $from }. { $seeds ->
    [0] {""}
   *[other] { $seeds } seeds are enough for { $plants }, nine times in ten.
}
plan-next-now = Sow now. { $seeds ->
    [0] {""}
   *[other] { $seeds } seeds are enough for { $plants }, nine times in ten.
}
plan-over = { $day } has passed. End the plan, or give it another day.
plan-sown-in-place = This is sown where it is to grow, so the crop book has no weeks to raise it. Say yourself how many weeks it takes.
plan-crop-unknown = This is not in the crop book. Say yourself how many weeks it takes from sowing to ready.
plan-too-late = Too late for { $plants ->
    [one] one more plant
   *[other] { $plants } more plants
}: the last useful day to sow was { $last }. Choose a later day, or buy plants.
plan-no-packet = There is no packet with seed in it for this. Add one, or buy seed before { $from }.
plan-too-few-seeds = { $seeds } seeds are wanted and the best packet has { $left }. Get more before { $from }.

notice-sow = sow { $crops }
line-plan-by = Planned: { $wanted } { $crop }{ $variety } by { $day }
line-plan-sale = Planned: { $wanted } { $crop }{ $variety } for a sale on { $day }
line-plan-every = Planned: { $wanted } { $crop }{ $variety } every { $weeks ->
    [one] week
   *[other] { $weeks } weeks
} until { $day }
line-plan-true-leaves = Planned: { $wanted } { $crop }{ $variety } again and again until { $day }
line-plan-ended = Plan ended: { $crop }{ $variety }
line-reserved = Kept { $number } { $crop }{ $variety }{ $named ->
    [1] { " " }for { $note }
   *[other] {""}
}
line-released = No longer kept: { $number } { $crop }{ $variety }{ $named ->
    [1] { " " }for { $note }
   *[other] {""}
}

refused-plan-unknown = That plan is not in the journal. Look at the plans again.
refused-reservation-unknown = Those plants are kept for nobody any more. Look at the list again.
refused-plan-too-far-ahead = { $day } is more than two years off. Plan it later.
refused-plan-day-is-past = { $day } has passed. Choose a day that is to come.
asks-more-reserved-than-raised = { $reserved } would be kept, and { $raised } are there or may still come up. Keep them all the same?
asks-others-were-promised = { $reserved } of these are kept for somebody, and { $rest } would be left. Let them go all the same?
error-too-few-ready = Only { $ready } are called ready. Call more of them ready, or let fewer go.

windows-frost-record = The line shows the odds of frost, from your record: of a later frost in spring, of an earlier one in autumn.
windows-frost-usual = The usual last frost is { $last }, the usual first frost { $first }.
windows-frost-spring = The usual last frost is { $last }. The first frost of autumn is not given.

windows-title = When to sow
windows-no-frost = When to sow hangs on the last frost. Say when that usually is, or bring a record of daily minima.
windows-give-frost = Give the frost dates
windows-none = Add a packet, sow something or make a plan: its days to sow are shown here.
windows-chart = The days to sow as a chart
windows-days = { $from } to { $to }
windows-sow = sow
windows-out = set out
windows-last = last useful day to sow
windows-frost = frost, by the usual dates
windows-frost-odds = odds of frost
windows-today = today
windows-in-place = sown in place
windows-not-known = not known
windows-without = Not in the chart, for want of figures: { $crops }.

plans-title = Plans
plans-none = So many plants by a day, for a sale, or a sowing every few weeks: a plan says when to sow, and the round reminds you.
plan-add = Make a plan
plan-change = Change
plan-end = End
plan-enough = Enough is sown.
plan-new-title = A new plan
plan-change-title = Change the plan
plan-variety = Variety
plan-variety-hint = Empty: any variety.
plan-from-packet = From which packet
plan-best-packet = The best one at that time
plan-when = When
plan-as-by = By a day
plan-as-sale = For a sale
plan-as-every = Every few weeks
plan-as-true-leaves = At true leaves
plan-wanted = Plants wanted
plan-wanted-each = Plants wanted of each sowing
plan-day = Ready to set out by
plan-sale-day = Day of the sale
plan-over-label = Over, in a hundred
plan-raise = Weeks from sowing to ready
plan-raise-hint = Empty: as the crop book has it.
plan-weeks = Weeks from one sowing to the next
plan-from = From
plan-to = Until
plan-save = Save the plan
sow-for-plan = This answers your plan for { $wanted ->
    [one] one plant
   *[other] { $wanted } plants
}.
sow-not-for-plan = Not for the plan

goods-ready = ready
goods-reserved = kept
goods-free = free
goods-growing = growing
goods-planted-out = planted out
goods-sold = sold
goods-given-away = given away
goods-table = The plants as a table
goods-act = What to do
goods-sell = Sell
kept-title = Kept for somebody
kept-none = Nothing is kept for anybody.
kept-add = Keep plants for somebody
kept-line = { $number } { $what }{ $named ->
    [1] { " " }for { $note }
   *[other] {""}
}
kept-tray = tray { $tray }
kept-ready = { $ready ->
    [0] none ready yet
   *[other] { $ready } ready
}
kept-hand-over = Hand over
kept-release = No longer kept
kept-number = How many
kept-for = For whom
kept-for-hint = Initials or a word; it may stay empty.
kept-save = Keep them
keep-these = Keep for somebody
keep-these-title = Keep { $what }
hand-over-title = { $name } goes
hand-over-how = How
hand-over-number = How many go
hand-over-save = Write it down
