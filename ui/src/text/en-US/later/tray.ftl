# American English: only what is said otherwise than in en-GB.

tray-cover-off = Dome off
tray-cover-on = Dome on
