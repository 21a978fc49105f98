package worthsaving.deal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import worthsaving.catalog.MoneyLine;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * All money lines of a deal, each a low/mode/high. Immutable; {@code with} gives a changed copy.
 *
 * @param figures a figure for every term
 * @param sources where each figure comes from
 * @param valueIsAsk whether the value is an asking price, so that the haggle comes off
 */
public record DealTerms(
        Currency currency, Map<Term, Range> figures, Map<Term, Source> sources, boolean valueIsAsk) {

    private static final Source BUILT_IN = new Source(Source.Label.COMMON_PRACTICE, "built-in figure, no source");
    private static final Source GUESSED = Source.guess("expert guess, built in; edit it to your own record");
    private static final Set<Term> GUESSES = Set.of(Term.SPEED, Term.PARTS_PRICE, Term.OPEN_UP_HOURS,
            Term.OPENED_UP_SHARE, Term.SCRAP_TONS, Term.WORK_PER_DAY, Term.DAYS_WAITING);
    private static final Set<Term> ONLY_WHEN_ASKED_FOR = Set.of(
            Term.AUCTION_PREMIUM, Term.GATE_FEES, Term.INSPECTION_PAID, Term.INCOME_TAX, Term.WHOLESALE_DISCOUNT);

    public DealTerms {
        Objects.requireNonNull(currency, "currency");
        figures = Map.copyOf(figures);
        sources = Map.copyOf(sources);
        List<String> faults = new ArrayList<>();
        for (Term term : Term.values()) {
            Range range = figures.get(term);
            if (range == null || !sources.containsKey(term)) {
                faults.add(term.id() + " has no figure or no source");
            } else {
                term.fault(range).ifPresent(faults::add);
            }
        }
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", faults));
        }
    }

    /** The built-in figures. */
    public static DealTerms usual(Currency currency) {
        Map<Term, Range> figures = new EnumMap<>(Term.class);
        Map<Term, Source> sources = new EnumMap<>(Term.class);
        for (Term term : Term.values()) {
            figures.put(term, term.usual());
            sources.put(term, GUESSES.contains(term) ? GUESSED : BUILT_IN);
        }
        return new DealTerms(currency, figures, sources, false);
    }

    /**
     * The catalogue's figures, the built-in ones where it has none. Lines whose id is no {@link Term}
     * are left alone: they serve others. Lines of an auction ({@code auction_premium},
     * {@code gate_fees}), of a paid inspection, of income tax and of a sale to the trade stay at zero until asked
     * for, see {@link #atAuction}.
     *
     * @throws IllegalArgumentException naming every line whose unit or figure cannot be used
     */
    public static DealTerms from(Collection<MoneyLine> lines, Currency currency) {
        DealTerms terms = usual(currency);
        List<String> faults = new ArrayList<>();
        Map<Term, Range> figures = new EnumMap<>(terms.figures);
        Map<Term, Source> sources = new EnumMap<>(terms.sources);
        for (MoneyLine line : lines) {
            Optional<Term> known = Term.ofId(line.id());
            if (known.isEmpty() || ONLY_WHEN_ASKED_FOR.contains(known.get())) {
                continue;
            }
            Term term = known.get();
            if (line.unit() != term.unit()) {
                faults.add(line.id() + " must be given as " + term.unit() + ", not " + line.unit());
            } else if (term.fault(line.figure()).isPresent()) {
                faults.add(term.fault(line.figure()).get());
            } else {
                figures.put(term, line.figure());
                sources.put(term, line.source());
            }
        }
        if (!currency.equals(Money.USD)) {
            sources.forEach((term, source) -> {
                if (source.equals(BUILT_IN) && term.unit().isMoney() && term.usual().high() > 0) {
                    faults.add(term.id() + " has a built-in figure in USD only; give it a line in " + currency);
                }
            });
        }
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", new TreeSet<>(faults)));
        }
        return new DealTerms(currency, figures, sources, false);
    }

    public Range get(Term term) {
        return figures.get(term);
    }

    public double mean(Term term) {
        return figures.get(term).mean();
    }

    public DealTerms with(Term term, Range range, Source source) {
        Map<Term, Range> figures = new EnumMap<>(this.figures);
        Map<Term, Source> sources = new EnumMap<>(this.sources);
        figures.put(term, range);
        sources.put(term, source);
        return new DealTerms(currency, figures, sources, valueIsAsk);
    }

    /** A figure the user is sure of. */
    public DealTerms with(Term term, double exactly) {
        return with(term, Range.exactly(exactly), Source.user());
    }

    public DealTerms withValueIsAsk(boolean isAsk) {
        return new DealTerms(currency, figures, sources, isAsk);
    }

    /** The same terms with an auction's premium, in percent, and fees. */
    public DealTerms atAuction(Range premiumPercent, Range fees) {
        return with(Term.AUCTION_PREMIUM, premiumPercent, Source.user())
                .with(Term.GATE_FEES, fees, Source.user());
    }

    /** Premium, tax and fees at the mean. */
    public PriceTerms priceTerms() {
        return new PriceTerms(mean(Term.AUCTION_PREMIUM) / 100, mean(Term.SALES_TAX) / 100, money(Term.GATE_FEES));
    }

    /**
     * The ledger of repairing and selling, at the mean of every line, the yard and a rebuilt title left
     * out.
     *
     * @param days from purchase to sale
     * @param tiedUp money tied up meanwhile
     */
    public SaleLedger ledger(Money saleValue, double towMiles, double days, Money tiedUp) {
        double haggle = valueIsAsk ? mean(Term.HAGGLE) / 100 : 0;
        return SaleLedger.of(saleValue.times(1 - haggle))
                .less("selling", money(Term.DETAILING)
                        .plus(money(Term.LISTING_FEE))
                        .plus(money(Term.EMISSIONS_INSPECTION)))
                .less("tow", money(Term.TOW_HOOK_UP).plus(money(Term.TOW_PER_MILE).times(towMiles)))
                .less("title", money(Term.TITLE_TRANSFER).plus(money(Term.TITLE_HISTORY)))
                .less("inspection before buying", money(Term.INSPECTION_PAID))
                .less("holding", money(Term.HOLDING_PER_DAY_OWN).times(days))
                .less("capital", tiedUp.times(mean(Term.CAPITAL_RATE) / 100 * days / 365))
                .lessShare("comeback reserve", mean(Term.COMEBACK_RESERVE) / 100);
    }

    /** The mean of a line that is an amount of money, whatever it is counted by. */
    public Money money(Term term) {
        return new Money(mean(term), currency);
    }
}
