# American English: only what is said otherwise than in en-GB.

photo-later-what = Take the photo while your hands are in the mix. It waits here and on the Trays screen until you say what it is of.
