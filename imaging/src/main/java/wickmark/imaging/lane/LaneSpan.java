package wickmark.imaging.lane;

/** Steps across the strip whose evidence is of one lane: the first, and the first after them. */
record LaneSpan(int from, int to) {}
