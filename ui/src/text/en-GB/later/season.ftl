## Seasons, frost dates from a record, days away

season-sow-early = Sow { $crop } from { $from } to { $to }: { $days ->
        [one] { $days } day to go.
       *[other] { $days } days to go.
    }
season-sow-early-until = Sow { $crop } from { $from } to { $to }: { $days ->
        [one] { $days } day to go.
       *[other] { $days } days to go.
    } It is of use until { $last }.
season-sow-now = These are the days to sow { $crop }: { $from } to { $to }.
season-sow-now-until = These are the days to sow { $crop }: { $from } to { $to }. It is of use until { $last }.
season-sow-late = The days to sow { $crop } were { $from } to { $to }. The last useful day is { $last }.
season-set-out = It goes out from { $from } to { $to }.
season-set-out-odds = It goes out from { $from } to { $to }. Frost after { $from } has odds of { $chance }.
bench-growing-on = Once up, it grows on at { $day } by day and { $night } at night.
bench-growing-on-sown = Once up, it grows on at { $day } by day and { $night } at night; first gathered { $from } to { $to } days from sowing.
bench-growing-on-planted = Once up, it grows on at { $day } by day and { $night } at night; first gathered { $from } to { $to } days from planting out.

frost-kept = From a record of { $from } to { $to }: { $spring ->
        [0] no spring
        [one] { $spring } spring
       *[other] { $spring } springs
    } and { $autumn ->
        [0] no autumn
        [one] { $autumn } autumn
       *[other] { $autumn } autumns
    } with frost. Frost is spoken of as odds as long as the dates above are the record’s own.
frost-years-spring = Last frost of spring, from { $years } of { $full } full years:
frost-years-autumn = First frost of autumn, from { $years } of { $full } full years:
frost-too-few-spring = Last frost of spring: only { $years ->
        [one] { $years } year has
       *[other] { $years } years have
    } a frost and nine in ten of the days on record. It takes 5.
frost-too-few-autumn = First frost of autumn: only { $years ->
        [one] { $years } year has
       *[other] { $years } years have
    } a frost and nine in ten of the days on record. It takes 5.
frost-line-no-csv = The rest cannot be read as lines of columns.
frost-line-too-long = The line is too long: a quotation mark may not be closed.
frost-line-too-many-columns = The line has more columns than a record of minima.
frost-line-not-text = The line is not text (UTF-8).
frost-line-too-few-columns = The line has too few columns.
frost-line-no-day = No day: { $text }
frost-line-no-number = No number: { $text }
frost-line-beyond-belief = No thermometer shows that: { $text }
error-frost-csv-too-large = That file is too large for a record of minima: it may have 8 MB. Bring one with the day and the minimum only.
error-frost-csv-empty = There is no line in that file that can be read. Choose a text file with a day and a minimum on each line (CSV).
error-frost-csv-no-days = No column holds days. Choose which one does, or bring a file with days like 2026-03-09.
error-frost-csv-no-minima = No column holds minima. Choose which one does.
error-frost-threshold-out-of-range = A frost is a minimum near 0 °C: give a temperature that a thermometer shows.
