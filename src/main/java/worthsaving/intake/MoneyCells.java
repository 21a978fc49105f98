package worthsaving.intake;

import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Fact;

/**
 * Reads the money of a row. The currency is that of the sign beside the amount, else of the column
 * currency, else of the column's name, else the usual one; where two of them disagree the row is refused.
 */
final class MoneyCells {

    private static final double MOST = 10_000_000;
    private static final Pattern MARK_PART = Pattern.compile("[a-z]*\\$|[a-z]+|\\S", Pattern.CASE_INSENSITIVE);
    private static final Set<String> SALE_WORDS = Set.of("OBO", "FIRM", "VB", "ONO", "CASH", ".", ",", "!");
    private static final Set<String> DOLLARS = Set.of("USD", "CAD", "AUD", "NZD", "SGD", "HKD");
    private static final Map<String, String> SIGNS = Map.of(
            "US$", "USD", "CA$", "CAD", "C$", "CAD", "A$", "AUD", "AU$", "AUD",
            "€", "EUR", "EURO", "EUR", "£", "GBP");

    private final Cells cells;
    private final Currency usual;

    MoneyCells(Cells cells, Currency usual) {
        this.cells = cells;
        this.usual = usual;
    }

    Fact<Money> read(Field field) {
        String text = cells.text(field);
        if (text.isEmpty()) {
            return Fact.unknown();
        }
        String mend = "write a plain number such as 2300, or leave the cell blank";
        Optional<Amount> amount = Amount.parse(text).filter(a -> !a.masked());
        double value = amount.map(Amount::value).orElse(Double.NaN);
        if (amount.isEmpty()) {
            cells.refuse(field, Cells.shown(text) + " is no amount of money", mend);
        } else if (value < 0) {
            cells.refuse(field, Cells.shown(text) + " is below zero", mend);
        } else if (value == 0) {
            cells.refuse(field, "0 is no price", "leave the cell blank when none is stated; write 1 for a gift");
        } else if (value > MOST) {
            cells.refuse(field, Cells.shown(text) + " is above 10 million", "see whether digits ran together");
        } else {
            return currency(field, amount.get().mark()).map(c -> new Money(value, c)).map(Fact::known)
                    .orElse(Fact.unknown());
        }
        return Fact.unknown();
    }

    private Optional<Currency> currency(Field field, String mark) {
        String stated = cells.text(Field.CURRENCY);
        Optional<Currency> said = cells.columns().get(field).flatMap(Column::currency);
        if (!stated.isEmpty()) {
            said = sign(stated, usual);
            if (said.isEmpty()) {
                cells.refuse(Field.CURRENCY, Cells.shown(stated) + " is no currency",
                        "write a three-letter code such as USD");
                return said;
            }
        }
        if (mark.isEmpty()) {
            return said.or(() -> Optional.of(usual));
        }
        Matcher parts = MARK_PART.matcher(mark);
        while (parts.find()) {
            if (SALE_WORDS.contains(parts.group().toUpperCase(Locale.ROOT))) {
                continue;
            }
            Optional<Currency> written = sign(parts.group(), said.orElse(usual));
            if (written.isEmpty()) {
                cells.refuse(field, Cells.shown(parts.group()) + " beside the amount is no currency",
                        "write the amount alone, and its currency in the column currency");
                return written;
            }
            if (said.isPresent() && !said.equals(written)) {
                cells.refuse(field, "the amount is in " + written.get() + ", elsewhere it says " + said.get(),
                        "make the two agree");
                return Optional.empty();
            }
            said = written;
        }
        return said.or(() -> Optional.of(usual));
    }

    /** @param near what a bare dollar sign stands for, if it is some dollar */
    private static Optional<Currency> sign(String text, Currency near) {
        String sign = text.toUpperCase(Locale.ROOT);
        if ("$".equals(sign)) {
            return Optional.of(DOLLARS.contains(near.getCurrencyCode()) ? near : Money.USD);
        }
        try {
            return Optional.of(Currency.getInstance(SIGNS.getOrDefault(sign, sign)));
        } catch (IllegalArgumentException noSuchCode) {
            return Optional.empty();
        }
    }
}
