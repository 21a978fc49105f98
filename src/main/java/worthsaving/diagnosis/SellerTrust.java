package worthsaving.diagnosis;

import worthsaving.quantity.Probability;
import worthsaving.quantity.Source;

/**
 * How far a seller's word counts, as virtual evidence. A seller who admits a symptom speaks against
 * himself; one who denies it does not. A named part is his guess at the cause.
 *
 * @param admitsFinding "it knocks"
 * @param deniesFinding "no knocks": {@code ifTrue} is the chance of saying so although it does
 * @param namesItem "needs a head gasket"
 * @param mentions chance that an advert tells of a complaint that the car has
 * @param mentionsFurther the same once another complaint is named: he stops at the one that keeps the car
 *     from running, and a car that does not run shows few others
 * @param mentionsPraising the same for an advert that calls the car good or better: it claims that it runs
 * @param deniesItem "the gearbox is fine"
 */
public record SellerTrust(
        Likelihood admitsFinding,
        Likelihood deniesFinding,
        Likelihood namesItem,
        Likelihood deniesItem,
        Probability mentions,
        Probability mentionsFurther,
        Probability mentionsPraising,
        Source source) {

    public static final SellerTrust USUAL = new SellerTrust(
            new Likelihood(0.90, 0.05),
            new Likelihood(0.30, 0.60),
            new Likelihood(0.50, 0.10),
            new Likelihood(0.35, 0.55),
            Probability.of(0.80),
            Probability.of(0.15),
            Probability.of(0.95),
            Source.guess("how often sellers admit and deny, from memory; not measured"));
}
