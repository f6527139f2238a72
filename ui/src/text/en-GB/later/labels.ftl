# Labels: printing them, and finding the tray of one.

label-name = { $crop }{ $variety }
error-too-many-labels = That is more than 500 labels. Choose fewer and print the rest after.
error-label-off-the-paper = No label of that size fits on the paper. Check the measures.
error-label-too-small = That label is too small for a code that can be read. It needs at least 25 by 10 mm.
error-label-not-read = No square code could be read in that photo. Hold the label flat, fill the picture with it, and try again; or type the code.

labels-title = Print labels
labels-what = The code, what was sown and when, large enough to read, and a square code that this app reads.
labels-none = No trays to print labels for
labels-none-what = A tray gets its code when something is sown into it.
labels-trays = Which trays
labels-all = All of them
labels-clear = None of them
labels-chosen = { $labels ->
    [one] 1 label
   *[other] { $labels } labels
}
labels-paper = Paper
labels-a4 = A4
labels-letter = Letter
labels-size = Size of a label
labels-size-of = { $width } by { $height }, { $count } a sheet
labels-own = Another size
labels-width = Width
labels-height = Height
labels-left = Margin left and right
labels-top = Margin top and bottom
labels-across = Gap across
labels-down = Gap down
labels-first = Begin at label
labels-first-hint = For a sheet that is partly used: counted from the top left, row by row.
labels-cut = Lines to cut along
labels-sheet = The first sheet: { $first } to { $last } of { $count } printed
labels-save = Save as PDF
labels-saving = Making the labels …
labels-saved = Saved. Print it at full size, not fitted to the page.
labels-not-saved = Not saved.

find-title = Find a tray by its label
find-code = Code on the label
find-code-hint = Capitals, accents, O for 0 and I for 1 make no difference.
find-go = Find
find-snap = Photograph the label
find-photo = Choose a photo of it
find-reading = Reading the label …
find-unknown = No tray here has the code { $code }.
find-unknown-photo = That label is of a tray that is not in this journal.
find-unknown-what = It may have been written on another device whose journal was not taken in yet. Or look for the tray by what you know of it, below.
find-several = { $trays } trays had that code
find-lost = Label lost, or not to be read
find-lost-what = Say what you know of the tray; those that fit best come first.
find-place = Where it stands
find-container = What it is
find-cells = Cells it has
find-sown = Sown about
find-any = Not known
find-candidates = { $trays ->
    [one] It may be this one
   *[other] It may be one of these { $trays }
}
find-no-candidates = No tray in use fits. Leave out what you are less sure of.
find-fits = Fits: { $what }
find-fits-place = place
find-fits-container = kind
find-fits-cells = cells
find-fits-sown = day
find-sown-on = Sown { $day }
find-print = Print a new label
trays-labels = Print labels
trays-find-label = Find by label
tray-print-label = Print its label
