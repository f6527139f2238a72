# The demo journal's places and notes

demo-propagator = Propagator
demo-sill = Kitchen sill
demo-shed = Shed
demo-greenhouse = Greenhouse
demo-frame = Cold frame
demo-card = Cut a slip of card between the three so as not to mix them up.
demo-room = No room left on the sill, so these went to the shed.
demo-let-it-be = Somebody topped it up again. Please let it be.
demo-roots = Two have roots to the edge of the pot.
