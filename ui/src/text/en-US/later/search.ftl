# American English: only what is said otherwise than in en-GB.

search-example-day = May 14
