# American English: only what is said otherwise than in en-GB.

garden-first-frost = First frost of fall
frost-threshold-hint = 0 °C (32 °F) in a weather station’s shelter.
device-theme = Colors
