# American English: only what is said otherwise than in en-GB.

tour-year = What each packet, place and potting mix gave, one year beside another.
