package worthsaving.teardown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.AccessStep;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.DealCase;
import worthsaving.deal.Term;
import worthsaving.diagnosis.PatternSettings;
import worthsaving.quantity.Seed;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Preparation;
import worthsaving.ranking.SampleLot;
import worthsaving.vehicle.Listing;

/** How far the invented car L01 is open. */
class OpeningsTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final JudgeSettings SETTINGS = settings();
    private static final Listing CAR = SampleLot.read(CATALOGUE).stream()
            .filter(l -> l.id().equals("L01")).findFirst().orElseThrow();

    private static JudgeSettings settings() {
        JudgeSettings usual = JudgeSettings.usual(CATALOGUE, Seed.DEFAULT);
        return new JudgeSettings(usual.workshop(), usual.terms(), usual.rule(), usual.trust(), usual.checks(),
                DealCase.Method.USUAL.withPoints(256), PatternSettings.USUAL.withPoints(256), 30);
    }

    private static List<Opening> openings(Journal journal) {
        Preparation prepared = new Judge(CATALOGUE, SampleLot.byAge(), SETTINGS).prepare(journal.addedTo(CAR));
        return Openings.of(CATALOGUE, new OpenCar(CATALOGUE, SETTINGS, TeardownTerms.USUAL,
                ((Preparation.Ready) prepared).listing(), journal));
    }

    private static Map<String, Opening> byId(List<Opening> openings) {
        return openings.stream().collect(Collectors.toMap(Opening::id, Function.identity()));
    }

    @Test
    void what_is_required_is_open_too_and_every_step_stands_once_behind_what_it_requires() {
        List<Opening> openings = openings(Journal.EMPTY.with(new Entry.Opened("", "FRONT_COVER_OFF", "")));
        Set<String> before = new HashSet<>();
        for (Opening opening : openings) {
            assertThat(before).containsAll(opening.requires());
            assertThat(before.add(opening.id())).isTrue();
        }
        assertThat(openings.stream().filter(Opening::open).map(Opening::id)).containsExactlyInAnyOrder("FRONT_COVER_OFF",
                "BELT_AND_MOUNT_OFF", "VALVE_COVER_OFF", "UNDERTRAY_OFF");
        assertThat(openings).allMatch(o -> !o.open() || o.cost().amount() == 0 && o.hours().value() == 0);
    }

    /** By hand: the catalogue's mean hours of the steps, half of them for opening, at the worth of the hour and own speed. */
    @Test
    void opening_costs_half_the_hours_of_all_that_is_closed_before_it() {
        Map<String, Opening> closed = byId(openings(Journal.EMPTY));
        double hour = SETTINGS.workshop().worker().hourly().amount() * SETTINGS.terms().mean(Term.SPEED) / 100;
        for (String id : List.of("UNDERTRAY_OFF", "FRONT_COVER_OFF")) {
            double hours = chain(id).stream().mapToDouble(s -> CATALOGUE.accessById().get(s).hours().mean().value()
                    * SETTINGS.workshop().worker().factor(s)).sum();
            assertThat(closed.get(id).cost().amount()).isCloseTo(hours / 2 * hour, within(1e-6));
        }
        assertThat(closed.get("UNDERTRAY_OFF").next()).isTrue();
        assertThat(closed.get("FRONT_COVER_OFF").next()).isFalse();
        assertThat(closed.get("FRONT_COVER_OFF").depth()).isEqualTo(2);
    }

    /** What was opened for one job is not paid again for another. */
    @Test
    void a_shared_opening_is_paid_once() {
        Map<String, Opening> before = byId(openings(Journal.EMPTY));
        Map<String, Opening> after = byId(openings(Journal.EMPTY.with(new Entry.Opened("", "UNDERTRAY_OFF", ""))));
        double saved = before.get("UNDERTRAY_OFF").cost().amount();
        for (String id : List.of("FRONT_COVER_OFF", "SUBFRAME_DOWN")) {
            assertThat(before.get(id).cost().amount() - after.get(id).cost().amount()).isCloseTo(saved, within(1e-6));
        }
        assertThat(after.get("BELT_AND_MOUNT_OFF").next()).isTrue();
    }

    @Test
    void a_suspect_is_shown_by_the_last_step_that_leads_to_it() {
        List<Opening> openings = openings(Journal.EMPTY);
        Map<String, List<String>> by = openings.stream().collect(Collectors.toMap(
                Opening::id, o -> o.shows().stream().map(Opening.Suspect::item).toList()));
        assertThat(by.get("FRONT_COVER_OFF")).contains("TIM_CHAIN_WORN");
        assertThat(by.get("UNDERTRAY_OFF")).doesNotContain("TIM_CHAIN_WORN");
        assertThat(openings).flatExtracting(Opening::shows).allMatch(s -> s.chance() >= 0.05 && s.chance() <= 1);
        assertThat(openings(Journal.EMPTY.with(new Entry.Mended("", "TIM_CHAIN_WORN", ""))))
                .flatExtracting(o -> o.shows().stream().map(Opening.Suspect::item).toList())
                .doesNotContain("TIM_CHAIN_WORN");
    }

    private static Set<String> chain(String id) {
        Set<String> all = new HashSet<>(Set.of(id));
        AccessStep step = CATALOGUE.accessById().get(id);
        step.requires().forEach(r -> all.addAll(chain(r)));
        return all;
    }
}
