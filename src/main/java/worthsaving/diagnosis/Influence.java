package worthsaving.diagnosis;

/**
 * How far one piece of evidence moved an item, all the other evidence being given.
 *
 * @param subject id of the finding, or of the item, that was looked at
 * @param logRatio natural logarithm of P(seen | failed, the rest) / P(seen | sound, the rest): above
 *     zero it speaks for failure; infinite when it settles the item
 */
public record Influence(String subject, Likelihood seen, double logRatio) {}
