package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.PartSource;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.diagnosis.Evidence;
import worthsaving.diagnosis.FailureNetwork;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.diagnosis.Likelihood;
import worthsaving.diagnosis.Outcome;
import worthsaving.diagnosis.PatternSettings;
import worthsaving.quantity.Seed;
import worthsaving.repair.PatternPlanner;
import worthsaving.repair.RepairPlanner;
import worthsaving.repair.Workshop;
import worthsaving.vehicle.Listing;

class UsualFaultsTest {

    private final Catalogue catalogue = ShippedCatalogue.load();
    private final List<Listing> lot = SampleLot.read(catalogue);
    private final Workshop workshop = JudgeSettings.usual(catalogue, Seed.DEFAULT).workshop();
    private final RepairPlanner planner = new RepairPlanner(catalogue, workshop);

    private FailureNetwork network(int car) {
        Listing listing = lot.get(car);
        return FailureNetwork.of(catalogue, listing.vehicle(), listing.exposure(), listing.seen());
    }

    private double usual(FailureNetwork network, RepairPlanner by, long seed) {
        return new UsualFaults(catalogue, by, PatternSettings.USUAL.withSeed(new Seed(seed))).of(network).amount();
    }

    /** The mean over many plain draws, whose own error is about 6. */
    private double plain(FailureNetwork network, RepairPlanner by) {
        Evidence running = Evidence.NONE;
        for (FindingKind finding : catalogue.findings()) {
            if (finding.stage() == FindingKind.Stage.ADVERT) {
                running = running.withFinding(finding.id(), Likelihood.FALSE);
            }
        }
        FailurePatterns drawn = ((Outcome.Explained) network.attempt(running)).diagnosis()
                .patterns(new PatternSettings(0, 0.999, 16_384, new Seed(99)));
        PatternPlanner plans = by.over(drawn.items());
        return drawn.patterns().stream().map(plans::work).flatMap(work -> work.stream())
                .mapToDouble(work -> work.expectedCost()).average().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 6, 11, 22})
    void few_draws_come_to_what_many_plain_ones_do(int car) {
        FailureNetwork network = network(car);
        double many = plain(network, planner);

        for (long seed = 1; seed <= 8; seed++) {
            assertThat(usual(network, planner, seed)).isCloseTo(many, within(0.012 * many));
        }
    }

    /** Then nothing but the draws is known of those that can be mended. */
    @Test
    void what_cannot_be_mended_is_left_out() {
        RepairPlanner choosy = new RepairPlanner(catalogue, workshop.withOnly(Set.of(PartSource.AFTERMARKET)));
        FailureNetwork network = network(3);
        double many = plain(network, choosy);

        assertThat(network.items()).anyMatch(item -> choosy.find(Set.of(item)).found().isEmpty());
        assertThat(usual(network, choosy, 1)).isCloseTo(many, within(0.15 * many));
        assertThat(many).isNotCloseTo(plain(network, planner), within(0.05 * many));
    }
}
