package worthsaving.inspection;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Value of information for two actions whose difference in money is normal with a mean m and a standard
 * deviation s: expected value of perfect information = s G(|m|/s), with the unit normal linear loss
 * G(u) = phi(u) - u (1 - Phi(u)); with an observation that has an error, s becomes the standard deviation
 * of the posterior mean. Source: Raiffa and Schlaifer (1961), Applied Statistical Decision Theory.
 */
public final class NormalLoss {

    private static final NormalDistribution UNIT = NormalDistribution.of(0, 1);

    private NormalLoss() {}

    /** G(u), u of zero or more. */
    public static double unitLoss(double u) {
        return UNIT.density(u) - u * UNIT.survivalProbability(u);
    }

    public static double perfectInformation(double mean, double standardDeviation) {
        return standardDeviation * unitLoss(Math.abs(mean) / standardDeviation);
    }

    /** @param error standard deviation of the observation's error */
    public static double oneObservation(double mean, double standardDeviation, double error) {
        double variance = standardDeviation * standardDeviation;
        return perfectInformation(mean, variance / Math.sqrt(variance + error * error));
    }
}
