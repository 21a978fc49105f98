package worthsaving.desktop.lot;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.quantity.Money;

/** What the lot shows of each listing: its text, and what it is sorted by. */
public enum LotColumn {
    RANK(3, r -> Integer.toString(r.rank()), LotRow::rank),
    VERDICT(9.2, r -> Texts.of("verdict", r.standing().verdict().kind()),
            r -> r.standing().verdict().kind().ordinal()),
    CAR(19.8, r -> CarNames.title(r.listing().vehicle()), Comparator.comparing(
            (LotRow r) -> CarNames.title(r.listing().vehicle()).toLowerCase(Locale.ROOT))),
    ASK(5, r -> money(r.ask()), r -> amount(r.ask())),
    MOST(5.6, r -> money(r.standing().mostToPay().wholeLimit()), r -> amount(r.standing().mostToPay().limit())),
    PROFIT(6.2, r -> Figures.amount(r.standing().expectedProfit().amount()),
            r -> r.standing().expectedProfit().amount()),
    LOSS(5.3, r -> Figures.percent(r.standing().chanceOfLoss()), r -> r.standing().chanceOfLoss()),
    OUTCOME(8.2, LotColumn::strip, r -> r.standing().worstTwentieth().amount()),
    HOURS(4.6, r -> Figures.hours(r.standing().ownHours().value()), r -> r.standing().ownHours().value()),
    DAYS(4.2, r -> Figures.days(r.standing().days()), r -> r.standing().days()),
    CHECK(12.5, r -> r.nextCheck().orElse(Texts.of("lot.no_check")),
            r -> -r.standing().nextCheck().map(c -> c.net().amount()).orElse(0.0)),
    LIKELY(12, r -> String.join("; ", r.likely()), Comparator.comparing((LotRow r) -> String.join("; ", r.likely())));

    private static final double WIDEST_NUMBER = 7;
    /** Letters of a name in a cell of usual width. */
    private static final int TWO_LINES = 30;

    private final double width;
    private final Function<LotRow, String> text;
    private final Comparator<LotRow> order;

    LotColumn(double width, Function<LotRow, String> text, Comparator<LotRow> order) {
        this.width = width;
        this.text = text;
        this.order = order;
    }

    LotColumn(double width, Function<LotRow, String> text, ToDoubleFunction<LotRow> key) {
        this(width, text, Comparator.comparingDouble(key));
    }

    /** Usual width in em. */
    double width() {
        return width;
    }

    /** Its share of width that the table has left. */
    double appetite() {
        return switch (this) {
            case LIKELY -> 1;
            case CHECK -> 0.6;
            case CAR, OUTCOME -> 0.4;
            default -> 0;
        };
    }

    /** Whether it is set flush right. */
    boolean isNumber() {
        return width < WIDEST_NUMBER;
    }

    public String title() {
        return Texts.of("lot.column", this);
    }

    String explanation() {
        return Texts.of("lot.explain", this);
    }

    public String text(LotRow row) {
        return text.apply(row);
    }

    /** What fits into two lines of a cell. */
    String brief(LotRow row) {
        return this == LIKELY && row.likely().size() > 1
                ? Texts.of("lot.and_more", cut(row.likely().get(0)), row.likely().size() - 1) : text(row);
    }

    /** To whole words that leave room for how many more there are. */
    private static String cut(String name) {
        int space = name.lastIndexOf(' ', TWO_LINES);
        return name.length() <= TWO_LINES || space < 1 ? name
                : name.substring(0, space).replaceAll("[ ,:/(]+$", "") + " \u2026";
    }

    public Comparator<LotRow> order() {
        return order;
    }

    private static String money(Optional<Money> money) {
        return money.map(m -> Figures.amount(m.amount())).orElse(Texts.of("none"));
    }

    /** What has no figure sorts before every figure. */
    private static double amount(Optional<Money> money) {
        return money.map(Money::amount).orElse(Double.NEGATIVE_INFINITY);
    }

    private static String strip(LotRow row) {
        List<Double> strip = row.standing().strip();
        return Texts.of("lot.strip", Figures.amount(strip.get(0)), Figures.amount(strip.get(strip.size() - 1)));
    }
}
