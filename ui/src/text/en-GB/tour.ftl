# The short tour of the main work: a strip above the bar that never stands in the way.

tour-title = A short tour
tour-of = { $screen }, { $number } of { $all }
tour-at-round = The round
tour-at-sow = At the bench
tour-at-tray = A tray’s page
tour-at-seed = The seed box
tour-at-year = The years
tour-round = Once a day, place by place: what each tray needs now, and why. One tap answers, and every answer can be taken back.
tour-sow = Choose a packet and say how many plants you would like. You are told how many seeds that takes, how deep they go, and where they come up soonest.
tour-tray = Which cell holds what, when seedlings should show, what to do when they do not, and every line written about it.
tour-seed = What each packet is still good for, what to sow these days, and what to buy before it runs out.
tour-year = What each packet, place and compost gave, one year beside another.
tour-next = Next: { $screen }
tour-end = That is all
tour-not-now = Not now
tour-never = No tour
tour-again = Show the short tour again
