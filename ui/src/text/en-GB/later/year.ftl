## What the years gave

year-title = The years
year-results = What the years gave
year-by = Put together by
by-crop = crop
by-packet = packet
by-place = place
by-compost = compost
by-storage = storage
by-depth = depth
by-year = year
year-of = Year
year-all = all years
year-crop = Plant
year-all-crops = all plants
year-none = Nothing sown yet
year-none-what = Once sowings are counted, this shows what each packet, place and compost gave, year by year.
year-none-here = No sowing that was counted to its end is in this choice.
year-left-out = { $number ->
    [one] One sowing is left out:
   *[other] { $number } sowings are left out:
} sown by the pinch or in clusters, not counted, or still coming up.
year-share = { $up } of { $seeds } came up: { $share }
year-interval = between { $low } and { $high } with 95 in 100
year-sowings = { $number ->
    [one] one sowing
   *[other] { $number } sowings
}
year-small = Few seeds or one sowing: this says little yet.
year-half = half of them up after { $days } { $days ->
    [one] day
   *[other] days
}
year-spread = spread over about { $days } { $days ->
    [one] day
   *[other] days
}
year-lost = Lost later: { $causes }
year-lost-part = { $number } { $cause }
year-chart = Share that came up, each with its 95 % interval
year-table = The same as a table
year-column-share = came up
year-column-interval = 95 % interval
year-column-half = days to half
year-compare = Hold two against each other
year-compare-first = First
year-compare-second = Second
year-numbers = What became of the plants
year-growing = growing
year-ready = ready
year-planted-out = planted out
year-sold = sold
year-given = given away
year-no-numbers = No plants yet.

results-name = { $name }{ $variety }{ $year }
depth-advised = at the depth advised
depth-deep = deeper than advised
depth-shallow = shallower than advised
results-almost-surely = { $better }{ $better_variety }{ $better_year } over { $worse }{ $worse_variety }{ $worse_year }: { $share } against { $other }, almost surely better.{ $small ->
    [1] {" "}The numbers are small.
   *[0] {""}
}
results-very-likely = { $better }{ $better_variety }{ $better_year } over { $worse }{ $worse_variety }{ $worse_year }: { $share } against { $other }, very likely better.{ $small ->
    [1] {" "}The numbers are small.
   *[0] {""}
}
results-perhaps = { $better }{ $better_variety }{ $better_year } over { $worse }{ $worse_variety }{ $worse_year }: { $share } against { $other }, perhaps better; another year will tell.{ $small ->
    [1] {" "}The numbers are small.
   *[0] {""}
}
results-no-telling = { $better }{ $better_variety }{ $better_year } { $share }, { $worse }{ $worse_variety }{ $worse_year } { $other }: no telling which is better.{ $small ->
    [1] {" "}The numbers are small.
   *[0] {""}
}
