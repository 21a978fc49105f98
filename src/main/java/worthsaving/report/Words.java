package worthsaving.report;

import java.util.Locale;
import worthsaving.catalog.FindingKind;
import worthsaving.deal.Verdict;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;

/** Figures and verdicts as people read them; the same in every locale. */
public final class Words {

    /** Stands under every result. */
    public static final String ESTIMATES = "Estimates; not appraisal, legal or safety advice.";

    private Words() {}

    public static String verdict(Verdict.Kind kind) {
        return switch (kind) {
            case BUY -> "buy";
            case BUY_BELOW -> "offer less";
            case CHECK_FIRST -> "check first";
            case WALK_AWAY -> "walk away";
            case HARD_STOP -> "STOP";
        };
    }

    /** How one meets a finding. */
    public static String stage(FindingKind.Stage stage) {
        return switch (stage) {
            case ADVERT, PHONE -> "ask the seller";
            case DRIVEWAY -> "driveway";
            case TOOLS -> "with tools";
            case INSPECTION -> "paid inspection";
            case OPENED_UP -> "opened up";
        };
    }

    /** Rounded to whole units, with thousands marked and no currency. */
    public static String whole(Money money) {
        return whole(money.amount());
    }

    public static String whole(double amount) {
        long rounded = Math.round(amount);
        return String.format(Locale.ROOT, "%,d", rounded);
    }

    public static String percent(double share) {
        return share > 0 && share < 0.01
                ? "<1 %"
                : String.format(Locale.ROOT, "%d %%", Math.round(100 * share));
    }

    public static String hours(double hours) {
        return String.format(Locale.ROOT, "%.1f", hours);
    }

    /** Low to high, or one figure when there is no doubt. */
    public static String range(Range range) {
        return range.width() == 0 ? whole(range.low()) : whole(range.low()) + " to " + whole(range.high());
    }
}
