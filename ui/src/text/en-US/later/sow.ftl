# American English: only what is said otherwise than in en-GB.

batch-how-bulbs = The pointed end up, and any that are soft or moldy left out.
bench-order-damp = Wear gloves, air the room, and damp the mix and the bench before you stir up dust.
bench-order-fill = Fill with fine potting mix to the brim and strike it level: sieve lumps out of the top.
bench-order-cover = Cover to the depth shown with sieved potting mix or vermiculite. After that only water from below or mist: a can washes seed together.
