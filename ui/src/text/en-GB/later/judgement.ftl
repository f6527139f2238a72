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

## Why it did badly

reason = { $likely ->
        [1] Likely
       *[0] Possibly
    } { $cause }: that may have cost about { $seedlings ->
        [one] one seedling
       *[other] { $seedlings } seedlings
    }.
reason-cause-too-cold = too cold
reason-cause-too-hot = too hot
reason-cause-old-seed = old seed
reason-cause-too-deep = sown too deep
reason-cause-too-shallow = sown too shallow
reason-cause-buried-from-light = buried away from the light
reason-cause-dried-out = dried out
reason-cause-wet-and-cool = kept wet in the cool
reason-cause-wrong-compost = the wrong compost
reason-cause-washed-out = washed out by a can
reason-cause-eaten = eaten
reason-cause-damped-off = damped off
reason-cause-frosted = frosted
reason-cause-baked = baked
reason-cause-want-of-light = leggy for want of light
reason-cause-long-in-the-heat = kept too long in the heat
reason-fact-days = { $days ->
        [one] One day
       *[other] { $days } days
    } at { $temperature } on average; it wants { $from } to { $to }.
reason-fact-germination = Perhaps { $packed } in 10 of it came up when it was packed, and { $now ->
        [0] fewer than 1
       *[other] { $now }
    } in 10 now.
reason-fact-germination-year = Of { $year }: perhaps { $packed } in 10 of it came up then, and { $now ->
        [0] fewer than 1
       *[other] { $now }
    } in 10 now.
reason-fact-depth-most = Sown { $depth } deep, where { $right } is the most.
reason-fact-depth-least = Sown { $depth } deep, where { $right } is the least.
reason-fact-dry = Felt dry and not watered that day: { $felt ->
        [one] once
        [2] twice
       *[other] { $felt } times
    } before it came up.
reason-fact-gap = Once not felt for { $days } days.
reason-fact-wet = Felt wet { $felt ->
        [2] twice
       *[other] { $felt } times
    } at { $temperature } on average; it wants { $from } to { $to }.
reason-fact-sown-in = Sown in { $compost }.
reason-fact-can = Watered { $times ->
        [one] once
       *[other] { $times } times
    } by a can without a rose.
reason-fact-saw = You wrote down { $number } lost to it.
reason-fact-saw-it = You wrote it down.
reason-fact-light = It stood away from bright light after it came up.
reason-fact-heat = { $days } days over the heat after it came up.
remedy-too-cold = Next time stand it at { $from } to { $to } until it is up.
remedy-too-hot = Next time stand it at { $from } to { $to }: out of the sun and off the heat until it is up.
remedy-old-seed = Buy or save new seed, or sow half of this and half of a new packet: a fair trial.
remedy-too-deep = Next time sow it { $least } to { $most } deep; half and half is a fair trial.
remedy-too-shallow = Next time cover it { $least } to { $most } deep; half and half is a fair trial.
remedy-buried-from-light = Press it on and leave it bare, or cover it by { $most } at most; half and half is a fair trial.
remedy-dried-out = Feel it every couple of days, and cover it until it is up.
remedy-wet-and-cool = Water only when it feels dry, and stand it warmer.
remedy-wrong-compost = Next time use seed compost, damped before you tip it; half and half is a fair trial.
remedy-washed-out = Water small seed from below or by mist.
remedy-eaten = Next time stand it out of reach, under a lid or fine mesh.
remedy-damped-off = Sow thinner, in clean trays and fresh compost, with the cover off as soon as it is up.
remedy-frosted = Next time bring it in, or cover it, on a night that may freeze.
remedy-baked = Next time shade it and open the lid on sunny mornings.
remedy-want-of-light = Next time move it into bright light on the day it comes up.
remedy-long-in-the-heat = Next time take it off the heat on the day it comes up.
reasons-title = Why { $name } did badly
