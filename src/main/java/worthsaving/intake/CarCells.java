package worthsaving.intake;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;
import worthsaving.vehicle.Vin;

/** Reads the car of a row. A descriptive word that nobody knows is a warning; its field stays unknown. */
final class CarCells {

    private static final Set<String> NO_NAME = Set.of("other", "andere", "sonstige", "sonstige_autos");
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Set<String> YES = Set.of("1", "true", "yes");
    private static final double MOST_LITRES = 10;
    private static final int MOST_CYLINDERS = 16;

    private final Cells cells;
    private final FigureCells figures;
    private final Vocabulary vocabulary;

    CarCells(Cells cells, FigureCells figures, Vocabulary vocabulary) {
        this.cells = cells;
        this.figures = figures;
        this.vocabulary = vocabulary;
    }

    Vehicle vehicle(LocalDate seen) {
        Fact<String> make = name(Field.MAKE).map(this::spelled);
        Fact<String> model = name(Field.MODEL);
        if (make.get().isEmpty() && model.get().isEmpty()) {
            cells.refuse(Field.MAKE, "neither make nor model is given", "name the car");
        }
        make.get().ifPresent(this::checkMake);
        Fact<Integer> year = figures.year(seen);
        return Vehicle.builder()
                .year(year)
                .make(make)
                .model(model)
                .trim(Fact.ofNullable(blankToNull(cells.text(Field.TRIM))))
                .odometer(figures.odometer())
                .powertrain(powertrain())
                .engineLitres(number(Field.LITRES, 0.1, MOST_LITRES, "litres"))
                .cylinders(number(Field.CYLINDERS, 1, MOST_CYLINDERS, "cylinders").map(Double::intValue))
                .body(lower(Field.BODY).map(Words::body))
                .condition(condition())
                .title(title())
                .vin(vin(year))
                .build();
    }

    private Fact<String> name(Field field) {
        Fact<String> name = lower(field);
        return name.get().filter(NO_NAME::contains).isPresent() ? Fact.unknown() : name;
    }

    private Fact<String> lower(Field field) {
        String text = cells.text(field);
        if (text.isEmpty()) {
            return Fact.unknown();
        }
        boolean plain = text.chars().allMatch(Character::isLetterOrDigit);
        return Fact.known((plain ? text : BLANKS.matcher(text).replaceAll(" ")).toLowerCase(Locale.ROOT));
    }

    private static String blankToNull(String text) {
        return text.isEmpty() ? null : text;
    }

    /** The make as the price data spell it, where only signs and blanks differ: mercedes_benz is mercedes-benz. */
    private String spelled(String make) {
        return vocabulary.makes().contains(make)
                ? make
                : vocabulary.makes().stream().filter(m -> letters(m).equals(letters(make))).findFirst().orElse(make);
    }

    private static String letters(String name) {
        return SIGNS.matcher(name).replaceAll("");
    }

    private void checkMake(String make) {
        if (!vocabulary.makes().isEmpty() && !vocabulary.makes().contains(make)) {
            cells.warn(Field.MAKE,
                    "the price data hold no make " + Cells.shown(make) + ", so its value is less certain",
                    Nearest.hint(make, vocabulary.makes(), "see the spelling; the row is kept"));
        }
    }

    private Powertrain powertrain() {
        Fact<Engine> engine = word(Field.ENGINE, Words::engine);
        if (engine.get().isEmpty()) {
            engine = word(Field.FUEL, Words::fuel);
        }
        Fact<Gearbox> gearbox = word(Field.GEARBOX, Words::gearbox);
        if (gearbox.get().isEmpty()) {
            gearbox = word(Field.TRANSMISSION, Words::transmission);
        }
        boolean electric = engine.get().filter(e -> e == Engine.HYBRID || e == Engine.ELECTRIC).isPresent();
        if (electric && !gearbox.isKnown() && gearbox.get().isPresent()) {
            gearbox = Fact.assumed(Gearbox.ELECTRIC_DRIVE, "the usual gearbox of a hybrid or electric car");
        }
        Fact<Drive> drive = word(Field.DRIVE, Words::drive);
        if (drive.get().isEmpty() && YES.contains(cells.text(Field.AWD).toLowerCase(Locale.ROOT))) {
            drive = Fact.known(Drive.ALL);
        }
        return new Powertrain(engine, word(Field.TIMING, Words::timing), gearbox, drive);
    }

    private <T> Fact<T> word(Field field, Function<String, Optional<Fact<T>>> words) {
        String text = cells.text(field);
        if (text.isEmpty()) {
            return Fact.unknown();
        }
        return words.apply(text).orElseGet(() -> {
            unknownWord(field, text);
            return Fact.unknown();
        });
    }

    private void unknownWord(Field field, String text) {
        cells.warn(field, Cells.shown(text) + " is not known here and counts as not stated",
                "use one of: " + Words.known(field));
    }

    private TitleBrand title() {
        String text = cells.text(Field.TITLE);
        if (text.isEmpty()) {
            return TitleBrand.UNKNOWN;
        }
        return Words.title(text).orElseGet(() -> {
            unknownWord(Field.TITLE, text);
            return TitleBrand.UNKNOWN;
        });
    }

    private Fact<String> condition() {
        Fact<String> condition = lower(Field.CONDITION);
        boolean damaged = "1".equals(cells.text(Field.DAMAGE));
        return condition.get().isEmpty() && damaged ? Fact.known("unrepaired damage") : condition;
    }

    private Fact<Double> number(Field field, double least, double most, String unit) {
        String text = cells.text(field);
        if (text.isEmpty()) {
            return Fact.unknown();
        }
        Optional<Amount> amount = Amount.parse(text);
        if (amount.filter(a -> a.value() == 0).isPresent()) {
            return Fact.unknown();
        }
        boolean fits = amount.filter(a -> a.value() >= least && a.value() <= most && a.mark().isEmpty()).isPresent();
        if (!fits) {
            cells.warn(field, Cells.shown(text) + " is no count of " + unit + " and counts as not stated",
                    "write a plain number up to " + (int) most);
            return Fact.unknown();
        }
        return Fact.known(amount.get().value());
    }

    private Fact<Vin> vin(Fact<Integer> year) {
        String text = cells.text(Field.VIN);
        if (text.isEmpty()) {
            return Fact.unknown();
        }
        try {
            Vin vin = new Vin(text);
            if (!vin.checkDigitHolds()) {
                cells.warn(Field.VIN, "the check digit does not hold"
                        + (vin.northAmerican() ? "" : ", which proves nothing outside North America"),
                        "compare it with the car");
            }
            boolean conflict = vin.northAmerican() && vin.modelYear().isPresent()
                    && year.get().filter(y -> y != vin.modelYear().getAsInt()).isPresent();
            if (conflict) {
                cells.warn(Field.VIN, "the VIN says model year " + vin.modelYear().getAsInt() + ", the table "
                        + year.get().get(), "see which one is right; the table's is used");
            }
            return Fact.known(vin);
        } catch (IllegalArgumentException notAVin) {
            cells.warn(Field.VIN, notAVin.getMessage(), "the row is kept without it");
            return Fact.unknown();
        }
    }
}
