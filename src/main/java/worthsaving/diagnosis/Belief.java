package worthsaving.diagnosis;

import worthsaving.quantity.Probability;

/** Probability that one item has failed, before and after the findings. */
public record Belief(String item, Probability prior, Probability posterior) {}
