package worthsaving.report.sheet;

import java.time.LocalDate;
import java.util.Objects;
import worthsaving.report.VinGuard;

/**
 * What a sheet is told beside the judgement.
 *
 * @param prepared the day it is made
 * @param vin whether the vehicle identification number may stand on it
 */
public record SheetSettings(LocalDate prepared, VinGuard vin) {

    public SheetSettings {
        Objects.requireNonNull(prepared, "prepared");
        Objects.requireNonNull(vin, "vin");
    }
}
