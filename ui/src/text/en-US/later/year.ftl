# American English: only what is said otherwise than in en-GB.

by-compost = potting mix
year-none-what = Once sowings are counted, this shows what each packet, place and potting mix gave, year by year.
