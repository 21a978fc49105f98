package worthsaving.intake.advert;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import worthsaving.intake.CodeTable;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Vin;

/**
 * Reads an advert as people paste it. The same text, day and vocabulary always give the same reading; nothing is asked
 * of the network. It never fails on a text: what it cannot read stays empty.
 */
public final class AdvertReader {

    /** Longer texts are read up to here; no advert is that long. */
    public static final int MOST_CHARACTERS = 20_000;

    private static final Pattern VIN = Pattern.compile("(?<![A-Za-z0-9])[A-HJ-NPR-Za-hj-npr-z0-9]{17}(?![A-Za-z0-9])");

    private final Vocabulary vocabulary;
    private final Currency usual;

    /** Takes sums of which nothing tells the currency for US dollars. */
    public AdvertReader(Vocabulary vocabulary) {
        this(vocabulary, Money.USD);
    }

    private AdvertReader(Vocabulary vocabulary, Currency usual) {
        this.vocabulary = Objects.requireNonNull(vocabulary, "vocabulary");
        this.usual = Objects.requireNonNull(usual, "usual");
    }

    /**
     * The same for another market.
     *
     * @param currency of sums of which nothing tells it
     */
    public AdvertReader takingFor(Currency currency) {
        return new AdvertReader(vocabulary, currency);
    }

    /** What trouble codes stand for, for tables read beside adverts. */
    public CodeTable codes() {
        return vocabulary.codes();
    }

    /**
     * @param text one advert
     * @param on the day it was read; decides which two-digit years are this century's
     */
    public AdvertReading read(String text, LocalDate on) {
        List<String> notes = new ArrayList<>();
        String cut = text.length() > MOST_CHARACTERS ? text.substring(0, MOST_CHARACTERS) : text;
        if (cut.length() < text.length()) {
            notes.add("only the first " + MOST_CHARACTERS + " of " + text.length() + " characters were read");
        }
        Optional<Found<Vin>> vin = vin(cut);
        String shielded = vin.map(v -> without(v.words().get(0), cut)).orElse(cut);
        String kept = ContactFilter.blank(shielded);
        Page page = new Page(kept, on, vocabulary);
        VehicleRule.Vehicle vehicle = new VehicleRule(page).find();
        Optional<Found<Integer>> year = YearRule.find(page, vehicle);
        Polarity polarity = new Polarity(page);
        EngineRule engineRule = new EngineRule(page, polarity, vehicle.entry(), year.map(Found::value));
        Optional<Found<String>> trim = TrimRule.find(page, vehicle, year);
        var engine = engineRule.engine();
        var gearbox = engineRule.gearbox();
        var litres = engineRule.litres();
        var cylinders = engineRule.cylinders();
        Optional<PlaceRule.Where> where = new PlaceRule(page).find();
        Optional<String> country = where.flatMap(PlaceRule.Where::country).or(() -> PlaceRule.countryOfPapers(page));
        MoneyRule money = new MoneyRule(page, usual);
        FigureRule.Figures figures = new FigureRule(page, money, country).read();
        CarReading car = new CarReading(year, vehicle.make(), vehicle.model(), trim, figures.mileage(), litres,
                cylinders,
                engine, gearbox, engineRule.drive(), engineRule.body(), vin);
        OfferReading offer = new OfferReading(figures.price(), money.negotiable(), figures.other(),
                TitleRule.find(page, polarity), where.map(PlaceRule.Where::shown));
        ConditionReading condition = new ConditionRule(
                page, polarity, gearbox.map(Found::value), engine.map(Found::value)).read();
        missing(car, offer, notes);
        vin.ifPresent(v -> vinNotes(v.value(), year, notes));
        return new AdvertReading(kept, on, car, offer, condition, vehicle.entry().flatMap(Model::pricedAs), notes);
    }

    private static void missing(CarReading car, OfferReading offer, List<String> notes) {
        if (car.year().isEmpty()) {
            notes.add("no model year found");
        }
        if (car.model().isEmpty()) {
            notes.add("no model found that the vocabulary knows; it can be added to models.csv");
        }
        if (offer.price().isEmpty()) {
            notes.add("no asking price found");
        }
        if (car.mileage().isEmpty()) {
            notes.add("no mileage found");
        }
    }

    /** What the number itself says against the advert; the number is not repeated. */
    private static void vinNotes(Vin vin, Optional<Found<Integer>> year, List<String> notes) {
        if (!vin.checkDigitHolds()) {
            notes.add("the check digit of the VIN does not hold"
                    + (vin.northAmerican() ? "; compare it with the car" : ", which proves nothing outside North America"));
        }
        if (vin.northAmerican() && vin.modelYear().isPresent()
                && year.filter(y -> y.value() != vin.modelYear().getAsInt()).isPresent()) {
            notes.add("the VIN says model year " + vin.modelYear().getAsInt() + ", the advert "
                    + year.get().value() + "; see which one is right");
        }
    }

    private static Optional<Found<Vin>> vin(String text) {
        Matcher m = VIN.matcher(text);
        while (m.find()) {
            String candidate = m.group();
            boolean letters = candidate.chars().anyMatch(Character::isLetter);
            boolean digits = candidate.chars().filter(Character::isDigit).count() >= 4;
            if (letters && digits) {
                return Optional.of(Found.stated(new Vin(candidate), List.of(new Span(m.start(), m.end()))));
            }
        }
        return Optional.empty();
    }

    /** The number itself is kept in its field only; in the text it gives way to stars. */
    private static String without(Span span, String text) {
        return text.substring(0, span.start()) + "*".repeat(span.end() - span.start()) + text.substring(span.end());
    }
}
