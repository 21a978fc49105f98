package worthsaving.desktop.car;

import java.util.Currency;
import worthsaving.desktop.Texts;
import worthsaving.sensitivity.Turning;

/** Where a slider turns the deal, in words. */
final class TurningWords {

    private TurningWords() {}

    static String of(Dial dial, Turning turning, Currency currency) {
        String about = dial == Lever.TARGET ? "turning.target." : dial == Lever.LOSS ? "turning.risk."
                : "turning.profit.";
        if (turning.at().isEmpty()) {
            return Texts.of(about + (turning.gainsBelow() ? "always" : "never"));
        }
        String at = dial.text(turning.at().getAsDouble(), currency);
        return Texts.of(about + (turning.gainsBelow() ? "above" : "below"), at);
    }
}
