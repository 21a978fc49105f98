package worthsaving.desktop.car;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Money;
import worthsaving.sensitivity.DealTornado;
import worthsaving.sensitivity.DealTornado.Figure;
import worthsaving.sensitivity.DealTornado.Kind;
import worthsaving.sensitivity.Tornado;
import worthsaving.sensitivity.TwoWayMap;

/**
 * What the expected profit hangs on.
 *
 * @param way the way out whose profit it is
 * @param base expected profit as shown
 * @param bars widest swing first
 * @param figures what the map can be drawn over
 */
public record Matters(WayOut way, Money price, double base, List<Bar> bars, List<Figure> figures, Optional<Drawn> map,
        MatterWords words) {

    /** Values on each side of the map. */
    static final int STEPS = 13;
    private static final int MOST_BARS = 10;

    /**
     * One figure moved alone.
     *
     * @param atLow profit with the figure at its low end
     */
    public record Bar(Figure figure, double atLow, double atHigh) {

        double least() {
            return Math.min(atLow, atHigh);
        }

        double greatest() {
            return Math.max(atLow, atHigh);
        }
    }

    /** The map over two figures. */
    public record Drawn(Figure across, Figure up, TwoWayMap map) {}

    /**
     * What is wanted.
     *
     * @param across id of a figure, or its kind, see {@link #key}; the usual one when it is not there
     */
    record Request(CarPicture picture, String across, String up) {}

    public Matters {
        bars = List.copyOf(bars);
        figures = List.copyOf(figures);
    }

    /** Tells figures apart from one car to the next. */
    static String key(Figure figure) {
        return figure.kind() + figure.id();
    }

    static Matters of(Request request, BooleanSupplier cancelled, IntConsumer progress) {
        CarPicture.Seen seen = request.picture().seen().orElseThrow();
        Map<String, String> items = new LinkedHashMap<>();
        seen.main().keySet().forEach(dial -> items.put(dial.item(), dial.name()));
        var deal = seen.nearby().deal(request.picture().scenario());
        var terms = seen.nearby().terms(request.picture().scenario());
        Money price = seen.appraisal().assessment().price();
        DealTornado tornado = new DealTornado(deal, terms, seen.shown(), price, items);
        List<Figure> figures = tornado.figures();
        Tornado swings = tornado.tornado();
        List<Bar> bars = new ArrayList<>();
        swings.bars().stream().limit(MOST_BARS).forEach(b -> figures.stream()
                .filter(f -> f.input().equals(b.input())).findFirst()
                .ifPresent(f -> bars.add(new Bar(f, b.atLow(), b.atHigh()))));
        int[] done = {0};
        Figure across = chosen(figures, request.across(), Kind.SALE_VALUE);
        Figure up = chosen(figures, request.up(), Kind.REPAIR_COST);
        Optional<Drawn> map = across.equals(up) ? Optional.empty()
                : Optional.of(new Drawn(across, up, tornado.map(across, up, STEPS, () -> {
                    if (cancelled.getAsBoolean()) {
                        throw new CancellationException("the map is no longer wanted");
                    }
                    progress.accept(++done[0]);
                })));
        double cost = deal.repairCost(terms).map(c -> c.mean()).orElse(0.0);
        return new Matters(seen.shown(), price, swings.base(), bars, figures, map,
                new MatterWords(seen.appraisal().value().mean().amount(), cost, price.currency()));
    }

    private static Figure chosen(List<Figure> figures, String key, Kind otherwise) {
        return figures.stream().filter(f -> key(f).equals(key)).findFirst()
                .or(() -> figures.stream().filter(f -> f.kind() == otherwise).findFirst())
                .orElse(figures.get(0));
    }
}
