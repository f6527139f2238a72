# American English: only what is said otherwise than in en-GB.

garden-first-frost = First frost of fall
device-theme = Colors
