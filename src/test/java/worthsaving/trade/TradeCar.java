package worthsaving.trade;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.Evidence;
import worthsaving.diagnosis.FailureNetwork;
import worthsaving.diagnosis.Likelihood;
import worthsaving.quantity.Distance;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Exposure.Hazard;
import worthsaving.vehicle.Exposure.Level;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.Powertrain.TimingDrive;
import worthsaving.vehicle.Vehicle;

/**
 * A car of the trade tables, in words such as {@code PETROL_TURBO CHAIN AUTOMATIC FRONT}; what is not
 * named stays unknown.
 */
record TradeCar(String words, double years, double miles) {

    static final Catalogue CATALOGUE = ShippedCatalogue.load();

    private static final Set<String> FINDINGS =
            CATALOGUE.findings().stream().map(FindingKind::id).collect(Collectors.toUnmodifiableSet());

    /** In the middle of a year, so that ages come out whole. */
    private static final LocalDate SEEN = LocalDate.of(2026, 7, 2);

    FailureNetwork network(Exposure exposure) {
        Vehicle vehicle = Vehicle.builder()
                .year(Fact.known(SEEN.getYear() - (int) years))
                .odometer(Fact.known(Distance.ofMiles(miles)))
                .powertrain(new Powertrain(
                        named(Engine.class), named(TimingDrive.class), named(Gearbox.class), named(Drive.class)))
                .build();
        return FailureNetwork.of(CATALOGUE, vehicle, exposure, SEEN);
    }

    Diagnosis diagnose(String evidence, String exposure) {
        return network(exposure(exposure)).diagnose(evidence(evidence));
    }

    private <E extends Enum<E>> Fact<E> named(Class<E> kind) {
        Set<String> said = Set.of(words.split(" "));
        return Arrays.stream(kind.getEnumConstants())
                .filter(k -> said.contains(k.name()))
                .findFirst()
                .map(Fact::known)
                .orElseGet(Fact::unknown);
    }

    /** Findings and items: {@code +} seen, {@code -} looked for and not there. */
    static Evidence evidence(String words) {
        Map<String, Likelihood> findings = new HashMap<>();
        Map<String, Likelihood> items = new HashMap<>();
        for (String word : words.isBlank() ? new String[0] : words.trim().split(" +")) {
            Likelihood seen = switch (word.charAt(0)) {
                case '+' -> Likelihood.TRUE;
                case '-' -> Likelihood.FALSE;
                default -> throw new IllegalArgumentException("write +" + word + " or -" + word);
            };
            String id = word.substring(1);
            (FINDINGS.contains(id) ? findings : items).put(id, seen);
        }
        return new Evidence(findings, items);
    }

    /** Such as {@code LOW_OIL_PRESSURE:DRIVEN_ON}; blank says nothing. */
    static Exposure exposure(String words) {
        Map<Hazard, Level> levels = new EnumMap<>(Hazard.class);
        for (String word : words.isBlank() ? new String[0] : words.trim().split(" +")) {
            String[] parts = word.split(":");
            levels.put(Hazard.valueOf(parts[0]), Level.valueOf(parts[1]));
        }
        return new Exposure(levels);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s, %.0f years, %,.0f miles", words, years, miles);
    }
}
