package worthsaving.intake;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.Powertrain.TimingDrive;
import worthsaving.vehicle.TitleBrand;

/**
 * The words that adverts and price data use for a car's powertrain and papers. A word that leaves
 * a choice open gives an assumption with its reason, or nothing.
 */
final class Words {

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s_-]+");
    private static final String PLAIN_PETROL = "the table says petrol and nothing of a turbo";
    private static final String PLAIN_AUTOMATIC =
            "the table says automatic, which may also stand for a CVT or a dual clutch";

    private static final Map<String, Fact<Engine>> ENGINES = Map.ofEntries(
            Map.entry("petrol", Fact.known(Engine.PETROL)),
            Map.entry("petrol turbo", Fact.known(Engine.PETROL_TURBO)),
            Map.entry("turbo petrol", Fact.known(Engine.PETROL_TURBO)),
            Map.entry("diesel", Fact.known(Engine.DIESEL)),
            Map.entry("hybrid", Fact.known(Engine.HYBRID)),
            Map.entry("electric", Fact.known(Engine.ELECTRIC)));

    /** Bodies as American price data call them, by what others call them. */
    private static final Map<String, String> BODIES = Map.of(
            "saloon", "sedan", "limousine", "sedan", "estate", "wagon", "kombi", "wagon", "kleinwagen", "hatchback",
            "bus", "minivan", "mini-van", "minivan", "cabrio", "convertible", "cabriolet", "convertible");

    private static final Map<String, Fact<Engine>> FUELS = Map.ofEntries(
            Map.entry("gas", Fact.assumed(Engine.PETROL, PLAIN_PETROL)),
            Map.entry("gasoline", Fact.assumed(Engine.PETROL, PLAIN_PETROL)),
            Map.entry("petrol", Fact.assumed(Engine.PETROL, PLAIN_PETROL)),
            Map.entry("benzin", Fact.assumed(Engine.PETROL, PLAIN_PETROL)),
            Map.entry("diesel", Fact.known(Engine.DIESEL)),
            Map.entry("hybrid", Fact.known(Engine.HYBRID)),
            Map.entry("electric", Fact.known(Engine.ELECTRIC)),
            Map.entry("elektro", Fact.known(Engine.ELECTRIC)),
            Map.entry("lpg", Fact.unknown()),
            Map.entry("cng", Fact.unknown()),
            Map.entry("other", Fact.unknown()),
            Map.entry("andere", Fact.unknown()));

    private static final Map<String, Fact<Gearbox>> GEARBOXES = Map.ofEntries(
            Map.entry("manual", Fact.known(Gearbox.MANUAL)),
            Map.entry("manuell", Fact.known(Gearbox.MANUAL)),
            Map.entry("automatic", Fact.known(Gearbox.AUTOMATIC)),
            Map.entry("automatik", Fact.assumed(Gearbox.AUTOMATIC, PLAIN_AUTOMATIC)),
            Map.entry("cvt", Fact.known(Gearbox.CVT)),
            Map.entry("dual clutch", Fact.known(Gearbox.DUAL_CLUTCH)),
            Map.entry("dct", Fact.known(Gearbox.DUAL_CLUTCH)),
            Map.entry("electric drive", Fact.known(Gearbox.ELECTRIC_DRIVE)));

    private static final Map<String, Fact<Gearbox>> TRANSMISSIONS = Map.ofEntries(
            Map.entry("manual", Fact.known(Gearbox.MANUAL)),
            Map.entry("automatic", Fact.assumed(Gearbox.AUTOMATIC, PLAIN_AUTOMATIC)),
            Map.entry("cvt", Fact.known(Gearbox.CVT)),
            Map.entry("semi auto", Fact.unknown()),
            Map.entry("other", Fact.unknown()));

    private static final Map<String, Fact<TimingDrive>> TIMINGS = Map.of(
            "chain", Fact.known(TimingDrive.CHAIN), "belt", Fact.known(TimingDrive.BELT));

    private static final Map<String, Fact<Drive>> DRIVES = Map.ofEntries(
            Map.entry("front", Fact.known(Drive.FRONT)),
            Map.entry("fwd", Fact.known(Drive.FRONT)),
            Map.entry("rear", Fact.known(Drive.REAR)),
            Map.entry("rwd", Fact.known(Drive.REAR)),
            Map.entry("all", Fact.known(Drive.ALL)),
            Map.entry("awd", Fact.known(Drive.ALL)),
            Map.entry("4wd", Fact.known(Drive.ALL)),
            Map.entry("4x4", Fact.known(Drive.ALL)));

    private static final Map<String, TitleBrand> TITLES = Map.ofEntries(
            Map.entry("clean", TitleBrand.CLEAN),
            Map.entry("clean claimed", TitleBrand.CLEAN_CLAIMED),
            Map.entry("in hand", TitleBrand.CLEAN_CLAIMED),
            Map.entry("title in hand", TitleBrand.CLEAN_CLAIMED),
            Map.entry("rebuilt", TitleBrand.REBUILT),
            Map.entry("reconstructed", TitleBrand.REBUILT),
            Map.entry("salvage", TitleBrand.SALVAGE),
            Map.entry("flood", TitleBrand.FLOOD),
            Map.entry("lien", TitleBrand.LIEN),
            Map.entry("lost", TitleBrand.LOST),
            Map.entry("missing", TitleBrand.LOST),
            Map.entry("parts only", TitleBrand.PARTS_ONLY),
            Map.entry("unknown", TitleBrand.UNKNOWN));

    private Words() {}

    static Optional<Fact<Engine>> engine(String word) {
        return look(ENGINES, word);
    }

    static Optional<Fact<Engine>> fuel(String word) {
        return look(FUELS, word);
    }

    static Optional<Fact<Gearbox>> gearbox(String word) {
        return look(GEARBOXES, word);
    }

    static Optional<Fact<Gearbox>> transmission(String word) {
        return look(TRANSMISSIONS, word);
    }

    static Optional<Fact<TimingDrive>> timing(String word) {
        return look(TIMINGS, word);
    }

    static Optional<Fact<Drive>> drive(String word) {
        return look(DRIVES, word);
    }

    static Optional<TitleBrand> title(String word) {
        return look(TITLES, word);
    }

    /** The words a field knows, for saying so. */
    static String known(Field field) {
        Map<String, ?> words = switch (field) {
            case ENGINE -> ENGINES;
            case FUEL -> FUELS;
            case GEARBOX -> GEARBOXES;
            case TRANSMISSION -> TRANSMISSIONS;
            case TIMING -> TIMINGS;
            case DRIVE -> DRIVES;
            case TITLE -> TITLES;
            default -> throw new IllegalArgumentException(field + " has no list of words");
        };
        return String.join(", ", words.keySet().stream().sorted().toList());
    }

    private static <T> Optional<T> look(Map<String, T> words, String word) {
        T asItStands = words.get(word);
        return asItStands != null ? Optional.of(asItStands) : Optional.ofNullable(words.get(
                BETWEEN_WORDS.matcher(word.toLowerCase(Locale.ROOT)).replaceAll(" ").strip()));
    }

    /** The body as price data call it; other words stay as they are. */
    static String body(String word) {
        return BODIES.getOrDefault(word, word);
    }
}
