"""Questions and their answers by other means. A module has ASKS: for each ask how many
to ask, how to make one up, how to answer it, and the tolerance, one or by field."""
