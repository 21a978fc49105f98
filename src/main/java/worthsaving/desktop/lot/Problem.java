package worthsaving.desktop.lot;

import worthsaving.desktop.CarNames;
import worthsaving.desktop.Texts;
import worthsaving.intake.IntakeFault;
import worthsaving.ranking.Judged;

/**
 * Something that kept a row, or a field of it, out of the lot.
 *
 * @param where file, row and column, or the car
 * @param cost what became of the row
 */
public record Problem(String where, String cost, String what, String mend) {

    static Problem of(IntakeFault fault) {
        return new Problem(fault.place(), Texts.of("problem", fault.effect()), fault.what(), fault.mend());
    }

    static Problem of(Judged.Refused refused) {
        return new Problem(
                refused.listing().id() + ", " + CarNames.title(refused.listing().vehicle()),
                Texts.of("problem.not_judged"), refused.reason(), refused.mend());
    }
}
