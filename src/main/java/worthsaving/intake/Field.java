package worthsaving.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a column of a table of listings may hold, with the names it goes by. The first name is that of
 * our own format; the others are those of open price data and of plain English and German tables.
 */
enum Field {
    ID("id", "listing_id", "number", "no", "stock_no", "stock_number", "lot_no", "lot_number", "ref", "nr"),
    YEAR("year", "model_year", "reg_year", "registration_year", "baujahr", "first_registration", "yr", "bj", "my",
            "year_of_manufacture", "yom", "registered", "ez", "erstzulassung"),
    MAKE("make", "brand", "manufacturer", "marke", "hersteller", "car_make", "vehicle_make", "fabrikat", "marque"),
    MODEL("model", "modell", "car_model", "vehicle_model", "model_name"),
    TRIM("trim", "trim_level", "version", "variant", "grade", "ausstattung"),
    ENGINE("engine", "engine_kind"),
    FUEL("fuel", "fuel_type", "kraftstoff"),
    TIMING("timing", "timing_drive"),
    GEARBOX("gearbox"),
    TRANSMISSION("transmission", "getriebe"),
    DRIVE("drive", "driven_wheels"),
    AWD("awd", "is_4wd"),
    LITRES("engine_litres", "engine_l", "litres", "displacement_l"),
    CYLINDERS("cylinders"),
    ODOMETER("odometer", "mileage", "miles", "mi", "km", "kilometres", "kilometers", "kilometerstand", "odo",
            "km_stand", "kmstand", "laufleistung", "odometer_reading", "odo_reading", "milage", "kilometrage"),
    ODOMETER_UNIT("odometer_unit", "mileage_unit"),
    PRICE("price", "ask", "asking", "asking_price", "preis", "bid", "list_price", "sale_price", "kaufpreis", "current_bid",
            "price_asked", "angebotspreis", "prix"),
    CURRENCY("currency", "waehrung"),
    PRICE_KIND("price_kind", "asked_or_sold"),
    TITLE("title", "title_status", "title_brand"),
    BODY("body", "body_type", "karosserie"),
    CONDITION("condition", "zustand"),
    DAMAGE("unrepaired_damage"),
    VIN("vin", "vin_number", "chassis_number", "chassis_no", "fin", "fahrgestellnummer"),
    TOW_MILES("tow_miles", "tow_distance"),
    PRESENT("present"),
    ABSENT("absent"),
    UNSURE("unsure"),
    SELLER_SAYS("seller_says"),
    FOUND_FAILED("found_failed"),
    FOUND_SOUND("found_sound"),
    DROVE_ON("drove_on"),
    STOPPED_AT_ONCE("stopped_at_once"),
    CODES("codes", "trouble_codes", "dtc", "dtcs", "fault_codes", "fehlercodes"),
    QUOTE("quote", "repair_quote"),
    STORY("story", "description", "text", "beschreibung", "comments", "notes", "remarks", "bemerkungen", "advert"),
    SEEN("seen", "date", "date_posted", "posted", "month", "listed", "listing_date", "date_listed", "datum");

    /** Without these columns a table is not one of listings. */
    static final List<Field> NEEDED = List.of(YEAR, MAKE, MODEL, ODOMETER, PRICE);

    private static final Map<String, Field> BY_NAME = Arrays.stream(values())
            .flatMap(f -> f.names.stream().map(n -> Map.entry(n, f)))
            .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

    private final List<String> names;

    Field(String... names) {
        this.names = List.of(names);
    }

    /** The name in our own format. */
    String title() {
        return names.get(0);
    }

    /** The field that goes by a plain name, as {@link #plain} makes it. */
    static Optional<Field> named(String plainName) {
        return Optional.ofNullable(BY_NAME.get(plainName));
    }

    static Stream<String> allNames() {
        return BY_NAME.keySet().stream();
    }

    /** Lower case with single underscores for anything else, such as {@code odometer_km}. */
    static String plain(String header) {
        return header.toLowerCase(Locale.ROOT)
                .replace("ä", "ae").replace("ö", "oe").replace("ü", "ue")
                .replace("$", " usd ").replace("€", " eur ").replace("£", " gbp ")
                .replaceAll("[^a-z0-9]+", "_")
                .replaceAll("^_|_$", "");
    }
}
