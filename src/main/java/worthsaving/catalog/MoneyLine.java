package worthsaving.catalog;

import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * A line of the deal's money: fee, tax, tow, storage, days. The unit is part of the figure.
 *
 * @param id stable name such as {@code tow_hook_up}
 */
public record MoneyLine(String id, String stage, String name, Range figure, Unit unit, String note, Source source) {

    /** What the figure counts. Percentages are kept as written: 6 means 6 %. */
    public enum Unit { MONEY, PERCENT, MONEY_PER_DAY, MONEY_PER_MILE, MONEY_PER_HOUR, PERCENT_PER_YEAR, DAYS,
        MONEY_PER_TON, HOURS, TONS;

        /** Whether it counts money, not shares, days or the like. */
        public boolean isMoney() {
            return switch (this) {
                case MONEY, MONEY_PER_DAY, MONEY_PER_MILE, MONEY_PER_HOUR, MONEY_PER_TON -> true;
                case PERCENT, PERCENT_PER_YEAR, DAYS, HOURS, TONS -> false;
            };
        }
    }

    /** The line with its money multiplied; shares, days and hours stay. */
    MoneyLine times(double rate) {
        return unit.isMoney() ? new MoneyLine(id, stage, name, figure.times(rate), unit, note, source) : this;
    }
}
