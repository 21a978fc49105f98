package worthsaving.intake.advert;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;

/** Displacement, cylinders, kind of engine, gearbox, driven wheels and body. */
final class EngineRule {

    private static final Pattern LITRES = Pattern.compile("([0-9]\\.[0-9])(l|t|i|r|x|xt|gt|rs|tdi|si|is|d|s)?");
    private static final Pattern CYLINDERS = Pattern.compile("[vi]-?([34568]|10|12)|([34568]|10|12)cyl\\w*");
    private static final double SMALLEST = 0.6;
    private static final double LARGEST = 8.4;

    private final Page page;
    private final Polarity polarity;
    private final Optional<Model> model;
    private final Optional<Integer> year;

    EngineRule(Page page, Polarity polarity, Optional<Model> model, Optional<Integer> year) {
        this.page = page;
        this.polarity = polarity;
        this.model = model;
        this.year = year;
    }

    Optional<Found<Double>> litres() {
        for (int i = 0; i < page.tokens().size(); i++) {
            Matcher m = LITRES.matcher(page.at(i));
            if (!m.matches() || signed(i) || page.near("cue:price", i, i, 1, 1) || page.token(i).gap().equals("/")
                    || gapAfter(i).equals("/") || Rx.is(page.at(i + 1), "k|grand|out|mi|miles|gpa|star|stars")) {
                continue;
            }
            double litres = Double.parseDouble(m.group(1));
            if (litres >= SMALLEST && litres <= LARGEST) {
                page.use(i, i);
                List<Span> words = List.of(page.span(i, i));
                boolean unit = m.group(2) != null || Rx.is(page.at(i + 1), "l|liter|litre|liters");
                return Optional.of(unit || page.sameClause(i, 0)
                        ? Found.stated(litres, words)
                        : Found.guessed(litres, words, "a number like a displacement"));
            }
        }
        return Optional.empty();
    }

    private boolean signed(int i) {
        return i > 0 && page.token(i - 1).kind() == Token.Kind.SIGN && page.token(i).glued()
                || i + 1 < page.tokens().size() && page.token(i + 1).kind() == Token.Kind.SIGN
                        && page.token(i + 1).glued();
    }

    private String gapAfter(int i) {
        return i + 1 < page.tokens().size() ? page.token(i + 1).gap() : "";
    }

    Optional<Found<Integer>> cylinders() {
        for (int i = 0; i < page.tokens().size(); i++) {
            Matcher m = CYLINDERS.matcher(page.at(i));
            if (m.matches()) {
                String n = m.group(1) == null ? m.group(2) : m.group(1);
                page.use(i, i);
                return Optional.of(Found.stated(Integer.parseInt(n), List.of(page.span(i, i))));
            }
            boolean number = Rx.is(page.at(i), "[34568]|10|12");
            if (number && Rx.is(page.at(i + 1), "cyl|cylinder|cylinders") && !Rx.is(page.at(i - 1),
                    "on|runs|running")) {
                page.use(i, i + 1);
                return Optional.of(Found.stated(Integer.parseInt(page.at(i)), List.of(page.span(i, i + 1))));
            }
        }
        return Optional.empty();
    }

    Optional<Found<Engine>> engine() {
        Optional<Found<Engine>> stated = first("engine", Engine.class, List.of(
                Engine.DIESEL, Engine.HYBRID, Engine.ELECTRIC, Engine.PETROL_TURBO, Engine.PETROL));
        if (stated.isPresent()) {
            return stated;
        }
        for (Engine engine : List.of(Engine.DIESEL, Engine.HYBRID, Engine.ELECTRIC)) {
            if (usually(engine.name())) {
                return Optional.of(Found.guessed(engine, List.of(), "usual for this model, from memory"));
            }
        }
        for (int i = 0; i < page.tokens().size(); i++) {
            if (Rx.is(page.at(i), "[0-9]\\.[0-9](?:t|xt|gt)")) {
                return Optional.of(Found.guessed(Engine.PETROL_TURBO, List.of(page.span(i, i)),
                        "a T after the litres"));
            }
        }
        return Optional.empty();
    }

    Optional<Found<Gearbox>> gearbox() {
        Optional<Found<Gearbox>> stated = first("gearbox", Gearbox.class,
                List.of(Gearbox.CVT, Gearbox.DUAL_CLUTCH, Gearbox.MANUAL, Gearbox.AUTOMATIC));
        boolean merelyAutomatic = stated.filter(f -> f.value() == Gearbox.AUTOMATIC).isPresent();
        if (stated.isPresent() && !merelyAutomatic) {
            return stated;
        }
        for (Gearbox kind : List.of(Gearbox.CVT, Gearbox.DUAL_CLUTCH)) {
            if (usually(kind.name())) {
                return Optional.of(Found.guessed(kind, List.of(), "usual for this model and year, from memory"));
            }
        }
        if (usually("HYBRID") || usually("ELECTRIC")) {
            return Optional.of(Found.guessed(Gearbox.ELECTRIC_DRIVE, List.of(), "usual for this model, from memory"));
        }
        return stated;
    }

    Optional<Found<Drive>> drive() {
        return first("drive", Drive.class, List.of(Drive.ALL, Drive.FRONT, Drive.REAR));
    }

    Optional<Found<String>> body() {
        return page.hits("body").stream().findFirst().map(hit -> Found.stated(hit.means(), page.spans(hit)));
    }

    private boolean usually(String what) {
        return model.isPresent() && model.get().usually(what, year);
    }

    private <E extends Enum<E>> Optional<Found<E>> first(String kind, Class<E> type, List<E> order) {
        for (E value : order) {
            for (Hit hit : page.hits(kind)) {
                if (Enum.valueOf(type, hit.means().toUpperCase(Locale.ROOT)) == value && !polarity.denied(hit)) {
                    return Optional.of(Found.stated(value, page.spans(hit)));
                }
            }
        }
        return Optional.empty();
    }
}
