package worthsaving.desktop.lot;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import worthsaving.deal.Verdict;

/**
 * Which rows are shown.
 *
 * @param words all of them must occur somewhere in the row, case aside
 * @param verdict empty for all
 */
public record LotFilter(String words, Optional<Verdict.Kind> verdict) implements Predicate<LotRow> {

    public static final LotFilter ALL = new LotFilter("", Optional.empty());

    public LotFilter {
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(verdict, "verdict");
    }

    public LotFilter withWords(String others) {
        return new LotFilter(others, verdict);
    }

    public LotFilter withVerdict(Optional<Verdict.Kind> other) {
        return new LotFilter(words, other);
    }

    @Override
    public boolean test(LotRow row) {
        return test(row, text(row));
    }

    /** @param text of the row, which a table may keep: to write it takes longer than to search it */
    boolean test(LotRow row, String text) {
        return verdict.map(v -> row.standing().verdict().kind() == v).orElse(true)
                && Arrays.stream(words.toLowerCase(Locale.ROOT).strip().split("\\s+")).allMatch(text::contains);
    }

    /** All that can be searched in a row, in small letters. */
    static String text(LotRow row) {
        StringBuilder all = new StringBuilder(row.listing().id());
        for (LotColumn column : LotColumn.values()) {
            all.append('\n').append(column.text(row));
        }
        return all.append('\n').append(row.listing().story()).toString().toLowerCase(Locale.ROOT);
    }
}
