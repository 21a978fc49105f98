package worthsaving.valuation;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a price model was made from and how far it can be trusted.
 *
 * @param rows rows fitted on, after cleaning
 * @param cleaning one line for each cleaning rule, with its count
 * @param candidates errors in cross-validation, the chosen blend last
 * @param bands coverage of the 80 % interval in cross-validation, by band of predicted price
 */
public record ModelCard(
        String name,
        String market,
        String currency,
        String priceKind,
        String source,
        String licence,
        LocalDate firstDay,
        LocalDate lastDay,
        long rows,
        int makes,
        int models,
        List<String> cleaning,
        List<Candidate> candidates,
        List<Band> bands,
        long seed,
        List<String> limits) {

    /**
     * Cross-validated error of one candidate.
     *
     * @param medianError median absolute error as a share of the price
     * @param meanError mean of the same
     * @param rSquared of ln price
     */
    public record Candidate(String name, double medianError, double meanError, double rSquared, double weight) {}

    /**
     * @param upTo upper end of the band in money, infinite for the last
     * @param coverage share of prices inside the 80 % interval
     * @param width median width of the interval as a share of the predicted median
     */
    public record Band(double upTo, long rows, double coverage, double width) {}

    /**
     * One line of {@link #cleaning}.
     *
     * @param count rows that the rule held for; empty for a line that is no rule
     * @param dropped whether such rows were left out; otherwise only the figure was
     */
    public record Cleaned(String rule, OptionalLong count, boolean dropped, String why) {

        private static final Pattern LINE = Pattern.compile("(.+?): ([\\d,]+) (dropped|blanked) \\((.*)\\)");

        static Cleaned of(String line) {
            Matcher parts = LINE.matcher(line);
            return parts.matches()
                    ? new Cleaned(parts.group(1), OptionalLong.of(Long.parseLong(parts.group(2).replace(",", ""))),
                            parts.group(3).equals("dropped"), parts.group(4))
                    : new Cleaned(line, OptionalLong.empty(), false, "");
        }
    }

    public ModelCard {
        cleaning = List.copyOf(cleaning);
        candidates = List.copyOf(candidates);
        bands = List.copyOf(bands);
        limits = List.copyOf(limits);
    }

    /** The lines of {@link #cleaning} taken apart, in their order. */
    public List<Cleaned> cleaned() {
        return cleaning.stream().map(Cleaned::of).toList();
    }

    /** Error of the chosen blend. */
    public Candidate chosen() {
        return candidates.get(candidates.size() - 1);
    }

    /** Share of prices inside the 80 % interval over all bands. */
    public double coverage() {
        return bands.stream().mapToDouble(b -> b.rows() * b.coverage()).sum() / bands.stream().mapToLong(Band::rows).sum();
    }

    /** The card for people. */
    public String toMarkdown() {
        StringBuilder out = new StringBuilder();
        out.append("# ").append(name).append("\n\n");
        line(out, "Market %s, %s, %s prices in %s, adverts of %s to %s.", market, source, priceKind.toLowerCase(Locale.ROOT),
                currency, firstDay, lastDay);
        line(out, "Source's stated licence: %s. No row of the data is in the model: only fitted parameters, counts and "
                + "summary figures.", licence);
        line(out, "%,d rows after cleaning; %d makes, %d models; seed %d.", rows, makes, models, seed);
        out.append("\n## Cleaning\n\n");
        cleaning.forEach(c -> out.append("- ").append(c).append('\n'));
        out.append("\n## Error in cross-validation (all adverts of one car in one fold)\n\n");
        out.append("| candidate | median abs. error | mean abs. error | R2 of ln price | weight |\n|---|---|---|---|---|\n");
        for (Candidate c : candidates) {
            line(out, "| %s | %.2f %% | %.2f %% | %.4f | %.2f |", c.name(), 100 * c.medianError(), 100 * c.meanError(),
                    c.rSquared(), c.weight());
        }
        out.append("\n## Coverage of the 80 % interval in cross-validation, by band of predicted price\n\n");
        out.append("| up to | rows | coverage | median width |\n|---|---|---|---|\n");
        for (Band b : bands) {
            line(out, "| %s | %,d | %.1f %% | %.0f %% |",
                    Double.isInfinite(b.upTo()) ? "above" : String.format(Locale.ROOT, "%,.0f", b.upTo()), b.rows(),
                    100 * b.coverage(), 100 * b.width());
        }
        out.append("\n## Limits\n\n");
        limits.forEach(l -> out.append("- ").append(l).append('\n'));
        return out.toString();
    }

    private static void line(StringBuilder out, String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
