# American English: only what is said otherwise than in en-GB.

fix-feel = Potting mix
kind-felt = { $number ->
    [one] potting mix felt or watered once
   *[other] potting mix felt or watered { $number } times
}
