package worthsaving.diagnosis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import worthsaving.catalog.Applicability;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.DamageLink;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.FindingLink;
import worthsaving.catalog.Onset;
import worthsaving.quantity.Hours;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.Vehicle;

/** Builds catalogues of invented items with the probabilities a test asks for. */
final class SmallCatalogue {

    static final LocalDate TODAY = LocalDate.of(2026, 1, 1);

    /** A car whose powertrain is known, so that nothing is hidden. */
    static final Vehicle CAR = Vehicle.builder()
            .year(Fact.known(2016))
            .powertrain(new Powertrain(
                    Fact.known(Powertrain.Engine.PETROL_TURBO),
                    Fact.known(Powertrain.TimingDrive.CHAIN),
                    Fact.known(Powertrain.Gearbox.AUTOMATIC),
                    Fact.known(Powertrain.Drive.FRONT)))
            .build();

    private static final Source MADE_UP = Source.guess("invented for a test");

    private final List<FailureItem> items = new ArrayList<>();
    private final List<DamageLink> damage = new ArrayList<>();
    private final List<FindingKind> findings = new ArrayList<>();
    private final List<FindingLink> links = new ArrayList<>();

    /** An item whose prior is the same at every age. */
    SmallCatalogue item(String id, double prior) {
        return item(id, prior, "", Applicability.ALL);
    }

    SmallCatalogue item(String id, double prior, String group, Applicability applies) {
        return item(id, new Onset(1, Double.MAX_VALUE, 0, Probability.of(prior)), group, applies);
    }

    SmallCatalogue item(String id, Onset onset, String group, Applicability applies) {
        items.add(new FailureItem(
                id, "test", id, applies, onset, Range.exactly(1), group, Map.of(), Set.of(),
                HoursRange.of(1, 1, 1), MoneyRange.usd(0, 0, 0), List.of(), Set.of(), Set.of(), "",
                MADE_UP));
        return this;
    }

    SmallCatalogue damage(String cause, String effect, double chance) {
        Probability p = Probability.of(chance);
        damage.add(new DamageLink(cause, effect, Range.exactly(chance), Optional.empty(), p, p, MADE_UP));
        return this;
    }

    SmallCatalogue damage(
            String cause, String effect, Exposure.Hazard hazard, double stopped, double usual, double on) {
        damage.add(new DamageLink(
                cause, effect, Range.exactly(usual), Optional.of(hazard), Probability.of(stopped), Probability.of(on),
                MADE_UP));
        return this;
    }

    SmallCatalogue finding(String id, double falseRate) {
        findings.add(new FindingKind(
                id, FindingKind.Stage.DRIVEWAY, id, "", Range.exactly(falseRate), Money.usd(0), Hours.NONE,
                List.of(), FindingKind.Leave.YES, false, "", List.of(), MADE_UP));
        return this;
    }

    SmallCatalogue shows(String item, String finding, double chance) {
        links.add(new FindingLink(finding, item, Range.exactly(chance), MADE_UP));
        return this;
    }

    Catalogue build() {
        return new Catalogue(
                "test", items, damage, findings, links, List.of(), List.of(), List.of(), List.of());
    }

    FailureNetwork network() {
        return FailureNetwork.of(build(), CAR, Exposure.UNKNOWN, TODAY);
    }
}
