package worthsaving.valuation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import worthsaving.market.Comparable;
import worthsaving.market.MarketSettings;
import worthsaving.market.PriceKind;
import worthsaving.market.PriceRow;
import worthsaving.market.PriceTable;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.vehicle.TitleBrand;

/** Looks for the priced cars most like one car. */
final class AlikeCars {

    /** Rows less alike than this say next to nothing. */
    private static final double LEAST = 0.05;
    private static final double MUCH_YEARS = 0.75;
    private static final double MUCH_MILES = 2_500;

    private record Near(double likeness, CarFacts facts, Comparable own, PriceTable table, PriceRow row) {}

    private final PriceModel model;
    private final MarketSettings settings;
    private final Distance.Unit odometer;
    private final CarFacts car;
    private final double title;
    private final LocalDate on;
    private final double dataDay;

    /** @param title factor of the car's own title */
    AlikeCars(
            PriceModel model, MarketSettings settings, Distance.Unit odometer, CarFacts car, double title, LocalDate on) {
        this.model = model;
        this.settings = settings;
        this.odometer = odometer;
        this.car = car;
        this.title = title;
        this.on = on;
        this.dataDay = CarFacts.decimalYear(model.dataDay());
    }

    List<AlikeCar> nearest(List<PriceTable> tables, int most) {
        List<Near> near = new ArrayList<>();
        for (Comparable own : settings.comparables()) {
            CarFacts facts = Valuer.asRepaired(CarFacts.of(own.car(), own.seen(), dataDay), model);
            add(near, new Near(MarketLevel.likeness(car, facts), facts, own, null, null));
        }
        for (PriceTable table : tables) {
            for (PriceRow row : table.rows()) {
                CarFacts facts = CarFacts.of(row);
                add(near, new Near(MarketLevel.likeness(car, facts), facts, null, table, row));
            }
        }
        near.sort(Comparator.comparingDouble(Near::likeness).reversed());
        return near.stream().limit(most).map(this::told).toList();
    }

    private static void add(List<Near> near, Near candidate) {
        if (candidate.likeness() >= LEAST) {
            near.add(candidate);
        }
    }

    private AlikeCar told(Near near) {
        if (near.own() != null) {
            Comparable own = near.own();
            return new AlikeCar(own.car().label(), own.seen(), own.price(), own.kind(), own.origin(), near.likeness(),
                    differences(near.facts()), adjusted(own.price().amount(), own.kind(), near.facts(), own.seen(),
                            settings.title(own.car().title()).value()));
        }
        PriceRow row = near.row();
        PriceKind kind = near.table().shape().priceKind();
        CarFacts facts = model.usual.fill(near.facts());
        return new AlikeCar(
                String.format(Locale.ROOT, "%s%s %s", Double.isNaN(row.year()) ? "" : Math.round(row.year()) + " ",
                        row.make(), row.model()).strip(),
                row.date(), new Money(row.price(), near.table().shape().currency()), kind,
                near.table().shape().name() + ", line " + row.line(), near.likeness(), differences(facts),
                adjusted(row.price(), kind, row.date().isAfter(model.dataDay()) ? facts.on(dataDay) : facts, row.date(),
                        title(row)));
    }

    private Money adjusted(double price, PriceKind kind, CarFacts other, LocalDate seen, double otherTitle) {
        double ratio = Math.exp(model.predict(car).median() - model.predict(other).median());
        double toSale = kind == PriceKind.ASKING ? 1 - settings.factor(MarketSettings.HAIRCUT).value() : 1;
        double level = settings.index().factor(seen, on) * title / otherTitle;
        return new Money(price * toSale * ratio * level, model.currency());
    }

    private double title(PriceRow row) {
        for (TitleBrand brand : TitleBrand.values()) {
            if (brand.name().equalsIgnoreCase(row.title().replace(' ', '_'))) {
                return settings.title(brand).value();
            }
        }
        return 1;
    }

    private List<String> differences(CarFacts other) {
        List<String> list = new ArrayList<>();
        if (!other.make().equals(car.make())) {
            list.add("another make");
        } else if (!other.model().equals(car.model())) {
            list.add(other.model().isEmpty() ? "model not stated" : "another model");
        }
        double years = other.age() - car.age();
        if (Math.abs(years) >= MUCH_YEARS) {
            long whole = Math.round(Math.abs(years));
            list.add(whole + (whole == 1 ? " year " : " years ") + (years > 0 ? "older" : "newer"));
        }
        double miles = other.miles() - car.miles();
        if (Math.abs(miles) >= MUCH_MILES) {
            list.add(Explanation.distance(Math.abs(miles), odometer) + (miles > 0 ? " more" : " fewer"));
        }
        differing(list, car.fuel(), other.fuel());
        differing(list, car.gearbox(), other.gearbox());
        differing(list, car.body(), other.body());
        return list;
    }

    private static void differing(List<String> list, String own, String other) {
        if (!own.isEmpty() && !other.isEmpty() && !own.equals(other)) {
            list.add(other);
        }
    }
}
