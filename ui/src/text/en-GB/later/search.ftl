## Search, and what a list is narrowed to

search-title = Search
search-field = What are you looking for?
search-hint = Every word is meant; its first letters are enough.
search-examples = For example
search-example-plant = tomato
search-example-label = K12
search-example-place = windowsill
search-example-day = 14 May
search-example-month = May 2024
search-example-several = leek greenhouse
search-where = Plants and varieties, suppliers, labels, places, days, plans, things to buy, and the words of your notes, over all years.
search-found = Found: { $what }.
search-none = Nothing fits “{ $typed }”.
search-none-what = Try fewer words, or only the first letters of one.
search-group-trays = Trays
search-group-sowings = Sowings
search-group-packets = Packets
search-group-plans = Plans
search-group-items = To buy
search-group-notes = Notes
search-count-trays = { $number ->
    [one] one tray
   *[other] { $number } trays
}
search-count-sowings = { $number ->
    [one] one sowing
   *[other] { $number } sowings
}
search-count-packets = { $number ->
    [one] one packet
   *[other] { $number } packets
}
search-count-plans = { $number ->
    [one] one plan
   *[other] { $number } plans
}
search-count-items = { $number ->
    [one] one thing to buy
   *[other] { $number } things to buy
}
search-count-notes = { $number ->
    [one] one note
   *[other] { $number } notes
}
search-more-trays = more than { $number } trays
search-more-sowings = more than { $number } sowings
search-more-packets = more than { $number } packets
search-more-plans = more than { $number } plans
search-more-items = more than { $number } things to buy
search-more-notes = more than { $number } notes
search-show-all = Show all { $found }
search-there-are-more = These are the newest { $found }. A word more finds older ones.
search-sown = sown { $day } in { $code }
search-sown-past = sown { $day } in { $code }, done with
## A word by which plans for a sale are found.
search-plan-sale = sale
search-plan-past = { $plan }, done with
search-since = since { $from }
search-from-to = { $from } to { $to }
search-all = Search everything
error-search-too-long = That is too much to look for at once. Type a few words.

shown-of = { $shown } of { $of } shown
shown-only = Only { $what } shown
shown-all = Show all

tray-earlier = Earlier with this code

trays-which-place = Place
trays-which-crop = Plant
trays-every-place = All places
trays-every-crop = All plants
trays-which-due = Only what needs something
trays-none-such = No tray is like that.
trays-past-year = { $year } ({ $trays })
trays-past-older = These are the last { $trays }. The search finds older ones.
