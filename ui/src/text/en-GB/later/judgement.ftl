# What was seen of plants and thought of sowings; what trays and packets taught.

line-seeds-lost = { $number ->
        [one] One seed
       *[other] { $number } seeds
    } of { $crop }{ $variety } in { $tray } lost before coming up ({ $cause })
line-explained = { $crop }{ $variety } in { $tray } did badly, you say: { $causes }
line-explained-both = { $crop }{ $variety } in { $tray } did badly, you say: { $causes }. { $text }
line-explained-words = { $crop }{ $variety } in { $tray } did badly, you say: { $text }
line-explained-taken-back = What you said of { $crop }{ $variety } in { $tray } was taken back
line-noticed-leggy = { $crop }{ $variety } in { $tray } looks leggy
line-noticed-sturdy = { $crop }{ $variety } in { $tray } looks sturdy
line-noticed-pale-leaves = { $crop }{ $variety } in { $tray } has pale leaves
line-noticed-true-leaves = { $crop }{ $variety } in { $tray } has true leaves

reason-cause-spilt = spilt or knocked over
reason-cause-other = something else

stated-pace-usual = The days on the packet are those usual for { $crop }.
stated-pace-slower = By the days on the packet it takes { $share } longer than is usual for { $crop }, and that is reckoned with.
stated-pace-quicker = By the days on the packet it takes { $share } less time than is usual for { $crop }, and that is reckoned with.
stated-pace-none = By the crop book no { $crop } comes up at the temperature on the packet: the days on it are not reckoned with.
learnt-pace-usual = { $others ->
        [1] Other packets of { $crop }
       *[0] They
    } came up as fast as is usual.
learnt-pace-slower = { $others ->
        [1] Other packets of { $crop }
       *[0] They
    } took { $share } longer than is usual, and that is reckoned with.
learnt-pace-quicker = { $others ->
        [1] Other packets of { $crop }
       *[0] They
    } took { $share } less time than is usual, and that is reckoned with.

own-reason-title = What you say, { $day }
own-reason-say = Say why yourself
own-reason-change = Change what you say
own-reason-how = What you saw counts beside what is reckoned. Where it had no fair chance (eaten, spilt, baked, frosted, dried out, washed out), it is not held against its packet.
own-reason-causes = What was to blame
own-reason-words = In your words

dig-other = Or otherwise:

relative-again-of = Sown again or beside what was sown in { $code } on { $day }
relative-sown-again = Sown again or beside it in { $code } on { $day }{ $number ->
        [0] {""}
       *[other] : { $number }
    }

plants-seeds_lost = Seeds lost
plants-pale-leaves = Pale leaves
plants-leggy = Leggy
leave-seeds_lost = Seeds lost before coming up: { $what }
leave-seeds =
    { $seeds ->
        [one] One seed is not up yet.
       *[other] { $seeds } seeds are not up yet.
    }
