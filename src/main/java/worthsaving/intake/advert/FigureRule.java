package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import worthsaving.quantity.Money;

/** Chooses odometer and price together, so that one number is never both. */
final class FigureRule {

    private static final double LEAST_PRICE = 0.9;
    private static final double LEAST_MILES = 1;
    private static final int MOST_CANDIDATES = 40;

    /** What the numbers were taken for. */
    record Figures(
            Optional<Found<Mileage>> mileage, Optional<Found<Money>> price, List<Found<OfferReading.Figure>> other) {}

    private final MileageRule mileageRule;
    private final MoneyRule moneyRule;
    private final Optional<String> country;

    FigureRule(Page page, MoneyRule moneyRule, Optional<String> country) {
        this.mileageRule = new MileageRule(page);
        this.moneyRule = moneyRule;
        this.country = country;
    }

    Figures read() {
        List<MileageRule.Candidate> miles = new ArrayList<>(mileageRule.candidates());
        miles.removeIf(c -> c.score() < LEAST_MILES);
        miles.sort(Comparator.comparingDouble((MileageRule.Candidate c) -> -c.score()).thenComparingInt(c -> c.num().from()));
        List<MoneyRule.Candidate> sums = new ArrayList<>(moneyRule.candidates());
        sums.sort(Comparator.comparingDouble((MoneyRule.Candidate c) -> -c.score()).thenComparingInt(c -> c.num().from()));
        MileageRule.Candidate bestMiles = null;
        MoneyRule.Candidate bestSum = null;
        double best = 0;
        for (int i = -1; i < Math.min(miles.size(), MOST_CANDIDATES); i++) {
            for (int j = -1; j < Math.min(sums.size(), MOST_CANDIDATES); j++) {
                MileageRule.Candidate m = i < 0 ? null : miles.get(i);
                MoneyRule.Candidate p = j < 0 ? null : sums.get(j);
                if (m != null && p != null && m.num() == p.num() || p != null && p.score() < LEAST_PRICE) {
                    continue;
                }
                double sum = (m == null ? 0 : m.score()) + (p == null ? 0 : p.score());
                if (sum > best) {
                    best = sum;
                    bestMiles = m;
                    bestSum = p;
                }
            }
        }
        return figures(miles, sums, bestMiles, bestSum);
    }

    private Figures figures(List<MileageRule.Candidate> miles, List<MoneyRule.Candidate> sums,
            MileageRule.Candidate bestMiles, MoneyRule.Candidate bestSum) {
        Optional<Found<Mileage>> mileage = Optional.ofNullable(bestMiles).map(m -> mileageRule.found(m, miles.stream()
                .filter(c -> c != m && (bestSum == null || c.num() != bestSum.num()))
                .map(MileageRule.Candidate::mileage).distinct().limit(3).toList()));
        if (mileage.isEmpty() || bestMiles.score() < 2) {
            mileage = mileageRule.unknown().or(() -> Optional.ofNullable(bestMiles).map(m -> mileageRule.found(m,
                    List.of())));
        }
        boolean kilometres = bestMiles != null && bestMiles.mileage().unit().endsWith("km");
        List<Found<OfferReading.Figure>> other = new ArrayList<>();
        List<Money> rest = new ArrayList<>();
        for (MoneyRule.Candidate c : sums) {
            boolean taken = c == bestSum || bestMiles != null && c.num() == bestMiles.num();
            if (taken || !c.marked() && c.score() < LEAST_PRICE) {
                continue;
            }
            Money money = Money.of(c.num().value(), moneyRule.currency(c, country, kilometres));
            if (c.marked()) {
                other.add(Found.guessed(new OfferReading.Figure(OfferReading.Role.valueOf(c.role().name()), money),
                        List.of(c.span()), "by the words around it"));
            }
            if (rest.size() < 3) {
                rest.add(money);
            }
        }
        Optional<Found<Money>> price = Optional.ofNullable(bestSum).map(c -> moneyRule.found(c,
                Money.of(c.num().value(), moneyRule.currency(c, country, kilometres)), rest));
        return new Figures(mileage, price, other);
    }
}
