# American English: only what is said otherwise than in en-GB.

windows-frost-record = The line shows the odds of frost, from your record: of a later frost in spring, of an earlier one in fall.
windows-frost-spring = The usual last frost is { $last }. The first frost of fall is not given.
