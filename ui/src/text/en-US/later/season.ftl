# American English: only what is said otherwise than in en-GB.

frost-kept = From a record of { $from } to { $to }: { $spring ->
        [0] no spring
        [one] { $spring } spring
       *[other] { $spring } springs
    } and { $autumn ->
        [0] no fall
        [one] { $autumn } fall
       *[other] { $autumn } falls
    } with frost. Frost is spoken of as odds as long as the dates above are the record’s own.
frost-years-autumn = First frost of fall, from { $years } of { $full } full years:
frost-too-few-autumn = First frost of fall: only { $years ->
        [one] { $years } year has
       *[other] { $years } years have
    } a frost and nine in ten of the days on record. It takes 5.
