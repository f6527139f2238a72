# American English: only what is said otherwise than in en-GB.

reason-cause-spilt = spilled or knocked over
own-reason-how = What you saw counts beside what is reckoned. Where it had no fair chance (eaten, spilled, baked, frosted, dried out, washed out), it is not held against its packet.
reason-cause-wrong-compost = the wrong potting mix
remedy-wrong-compost = Next time use seed-starting mix, damped before you tip it; half and half is a fair trial.
remedy-damped-off = Sow thinner, in clean trays and fresh mix, with the dome off as soon as it is up.
