## All trays

trays-title = Trays
trays-empty-title = No trays yet
trays-free = { $cells ->
    [one] one cell free
   *[other] { $cells } cells free
}
trays-due = { $jobs ->
    [one] · one job due
   *[other] · { $jobs } jobs due
}
trays-aside = Set aside ({ $trays })
trays-aside-what = Nothing was said of these for 120 days. Any answer takes one back up.
trays-past = Past trays ({ $trays })
