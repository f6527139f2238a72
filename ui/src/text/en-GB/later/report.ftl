# The season's report, to print.

report-title = Season
report-crops = By crop
report-sowings = Sowings
report-sown = Sown
report-crop = Crop
report-variety = Variety
report-tray = Tray
report-place = Place
report-number = Sowings
report-seeds = Seeds
report-up = Came up
report-planted = Planted out
report-gone = Sold or given away
report-pinch = a pinch
