package worthsaving.desktop.car;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Units;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;

/** Corrects what a listing says of a car. What the user enters counts as stated; blank means not stated. */
final class Correction {

    /** Figures that can be typed, with the range that is believed. */
    enum Figure {
        ASK(0, 1_000_000),
        YEAR(1950, 2100),
        MILES(0, 1_000_000),
        TOW(0, 5_000),
        LITRES(0.1, 10);

        private final double low;
        private final double high;

        Figure(double low, double high) {
            this.low = low;
            this.high = high;
        }
    }

    /** Names that can be typed. */
    enum Word { MAKE, MODEL, TRIM }

    private static final int LONGEST = 60;

    /** A listing corrected, or why not. */
    record Result(Optional<Listing> listing, String trouble) {}

    private Correction() {}

    /** @param typed a name, or blank; make and model are kept in lower case, as the price data spell them */
    static Result of(Listing listing, Word word, String typed) {
        String name = typed.strip().replaceAll("\\s+", " ");
        if (name.length() > LONGEST) {
            return new Result(Optional.empty(), Texts.of("correct.too_long", Integer.toString(LONGEST)));
        }
        Vehicle.Builder car = listing.vehicle().toBuilder();
        Optional<String> stated = Optional.of(name).filter(n -> !n.isEmpty());
        Fact<String> lower = fact(stated.map(n -> n.toLowerCase(Locale.ROOT)));
        return corrected(with(listing, switch (word) {
            case MAKE -> car.make(lower).build();
            case MODEL -> car.model(lower).build();
            case TRIM -> car.trim(fact(stated)).build();
        }));
    }

    static Fact<String> fact(Listing listing, Word word) {
        Vehicle car = listing.vehicle();
        return switch (word) {
            case MAKE -> car.make();
            case MODEL -> car.model();
            case TRIM -> car.trim();
        };
    }

    /** @param typed a number, thousands commas allowed, or blank; distances in the units */
    static Result of(Listing listing, Figure figure, String typed, Currency currency, Units units) {
        String digits = typed.replace(",", "").strip();
        if (digits.isEmpty()) {
            return corrected(with(listing, figure, Optional.empty(), currency, units));
        }
        if (!digits.matches("\\d{1,9}(\\.\\d{1,2})?")) {
            return new Result(Optional.empty(), Texts.of("correct.not_a_number", typed));
        }
        double value = Double.parseDouble(digits);
        if (value < figure.low || value > figure.high) {
            return new Result(Optional.empty(), Texts.of("correct.out_of_range", typed,
                    plain(figure.low), plain(figure.high)));
        }
        return corrected(with(listing, figure, Optional.of(value), currency, units));
    }

    /** What is shown for editing; blank when not stated. */
    static String text(Listing listing, Figure figure, Units units) {
        Vehicle car = listing.vehicle();
        Optional<Double> value = switch (figure) {
            case ASK -> listing.ask().get().map(Money::amount);
            case YEAR -> car.year().get().map(Integer::doubleValue);
            case MILES -> car.odometer().get().map(units::of);
            case TOW -> listing.towMiles().get().map(m -> units.of(Distance.ofMiles(m)));
            case LITRES -> car.engineLitres().get();
        };
        return value.map(v -> figure == Figure.LITRES ? plain(v) : Long.toString(Math.round(v))).orElse("");
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    static Listing title(Listing listing, TitleBrand title) {
        return with(listing, listing.vehicle().toBuilder().title(title).build());
    }

    static Listing powertrain(Listing listing, Powertrain powertrain) {
        return with(listing, listing.vehicle().toBuilder().powertrain(powertrain).build());
    }

    static Listing exposure(Listing l, Exposure.Hazard hazard, Exposure.Level level) {
        Map<Exposure.Hazard, Exposure.Level> levels = new EnumMap<>(Exposure.Hazard.class);
        levels.putAll(l.exposure().levels());
        levels.put(hazard, level);
        levels.values().removeIf(v -> v == Exposure.Level.UNKNOWN);
        return new Listing(l.id(), l.vehicle(), l.ask(), l.seen(), l.towMiles(), new Exposure(levels), l.observations(),
                l.story(), l.origin());
    }

    private static Result corrected(Listing listing) {
        return new Result(Optional.of(listing), "");
    }

    private static Listing with(Listing l, Figure figure, Optional<Double> value, Currency currency,
            Units units) {
        Vehicle.Builder car = l.vehicle().toBuilder();
        return switch (figure) {
            case ASK -> new Listing(l.id(), l.vehicle(), fact(value.map(v -> new Money(v, currency))), l.seen(),
                    l.towMiles(), l.exposure(), l.observations(), l.story(), l.origin());
            case TOW -> new Listing(l.id(), l.vehicle(), l.ask(), l.seen(),
                    fact(value.map(v -> units.distance(v).miles())), l.exposure(), l.observations(),
                    l.story(), l.origin());
            case YEAR -> with(l, car.year(fact(value.map(Double::intValue))).build());
            case LITRES -> with(l, car.engineLitres(fact(value)).build());
            case MILES -> with(l, car.odometer(fact(value.map(units::distance))).build());
        };
    }

    private static Listing with(Listing l, Vehicle car) {
        return new Listing(l.id(), car, l.ask(), l.seen(), l.towMiles(), l.exposure(), l.observations(), l.story(),
                l.origin());
    }

    private static <T> Fact<T> fact(Optional<T> value) {
        return Fact.ofNullable(value.orElse(null));
    }
}
