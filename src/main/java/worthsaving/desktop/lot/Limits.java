package worthsaving.desktop.lot;

import java.util.Optional;
import worthsaving.desktop.Texts;
import worthsaving.ranking.Budget;

/**
 * What may be taken at once, as it was typed; blank means no limit.
 *
 * @param aboveLimit whether cars count that ask more than the most to pay
 */
record Limits(String cash, String bays, String hours, boolean aboveLimit) {

    /** What is meant, or what cannot be read. */
    record Reading(Optional<Budget> budget, String trouble) {}

    Reading read() {
        double[] read = new double[3];
        String[] typed = {cash, bays, hours};
        for (int i = 0; i < read.length; i++) {
            String digits = typed[i].replace(",", "").strip();
            if (!digits.isEmpty() && !digits.matches("\\d{1,9}(\\.\\d{1,2})?")) {
                return new Reading(Optional.empty(), Texts.of("choose.not_a_number", typed[i]));
            }
            read[i] = digits.isEmpty() ? Double.POSITIVE_INFINITY : Double.parseDouble(digits);
        }
        return new Reading(Optional.of(new Budget(read[0], read[1], read[2])), "");
    }
}
