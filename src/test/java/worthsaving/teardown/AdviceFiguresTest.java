package worthsaving.teardown;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import worthsaving.HeldFigures;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.DealCase;
import worthsaving.diagnosis.PatternSettings;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Preparation;
import worthsaving.ranking.SampleLot;
import worthsaving.vehicle.Listing;

/**
 * All that is advised at five stages of invented teardowns, as it was before anything was changed. The figures are the
 * program's own and prove nothing about the outside; a change of the catalogue or of a formula moves them rightly: then
 * renew the file by {@code mvn -Dtest=AdviceFiguresTest -Dworthsaving.renew=true test} and commit it with that change.
 */
class AdviceFiguresTest {

    private static final Path FILE = Path.of("src", "test", "resources", "teardown", "advice_figures.csv");
    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final JudgeSettings SETTINGS = settings();
    private static final Judge JUDGE = new Judge(CATALOGUE, SampleLot.byAge(), SETTINGS);

    private static JudgeSettings settings() {
        JudgeSettings usual = JudgeSettings.usual(CATALOGUE, Seed.DEFAULT);
        return new JudgeSettings(usual.workshop(), usual.terms(), usual.rule(), usual.trust(),
                usual.checks().withDamaging(true), DealCase.Method.USUAL.withPoints(128),
                PatternSettings.USUAL.withPoints(128), 30);
    }

    /** By stage: the car of the sample lot, and what the journal holds. */
    private static Map<String, Journal> stages() {
        Journal cover = Journal.EMPTY.with(new Entry.Opened("cover", "FRONT_COVER_OFF", ""));
        Map<String, Journal> stages = new LinkedHashMap<>();
        stages.put("L01 complete", Journal.EMPTY);
        stages.put("L01 cover off, chain worn", cover.with(GoStopTest.item("TIM_CHAIN_WORN", true))
                .with(new Entry.Worked("cover", "taking it off", Hours.of(5), ""))
                .with(new Entry.Paid("cover", "gaskets", Money.usd(60), "")));
        stages.put("L01 pan off, metal", cover.with(new Entry.Opened("pan", "OIL_PAN_OFF", ""))
                .with(GoStopTest.item("FILTER_METAL", true)).with(GoStopTest.item("OIL_PICKUP", true)));
        stages.put("L02 complete", Journal.EMPTY);
        stages.put("L04 complete", Journal.EMPTY);
        return stages;
    }

    @Test
    void advice_comes_to_the_same_figures() throws IOException {
        List<String> now = new ArrayList<>();
        stages().forEach((stage, journal) -> write(stage, advise(stage.substring(0, 3), journal), now));
        HeldFigures.compare(FILE, now);
    }

    private static Advice advise(String id, Journal journal) {
        Listing car = SampleLot.read(CATALOGUE).stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
        return new GoStop(CATALOGUE, SETTINGS, TeardownTerms.USUAL)
                .advise(((Preparation.Ready) JUDGE.prepare(journal.addedTo(car))).listing(), journal);
    }

    private static void write(String stage, Advice a, List<String> out) {
        put(out, stage, "spent", a.spent().total().amount());
        put(out, stage, "exact", a.exact() ? 1 : 0);
        put(out, stage, "closing", a.closing().value());
        put(out, stage, "chance of a unit", a.chanceOfUnit());
        put(out, stage, "chance that stopping is better", a.chanceStopIsBetter());
        a.costToFinish().ifPresent(cost -> {
            put(out, stage, "cost to finish 20 %", cost.quantile(0.2));
            put(out, stage, "cost to finish 50 %", cost.quantile(0.5));
            put(out, stage, "cost to finish 90 %", cost.quantile(0.9));
        });
        put(out, stage, "next stage " + a.nextStage().map(c -> c.move().name()).orElse("none"), 0);
        move(out, stage + " best", a.best(), 2);
        for (Advice.Choice choice : a.options()) {
            put(out, stage, "change by " + choice.move().id(), choice.chanceOfChange());
            move(out, stage + " option", choice.move(), 0);
        }
        for (Advice.Rule rule : a.rules()) {
            String label = "rule " + rule.id() + " " + rule.name() + " " + rule.finding() + " " + rule.then();
            put(out, stage, label + " chance", rule.chance());
            put(out, stage, label + " go on", rule.goOn().amount());
            put(out, stage, label + " stop", rule.stop().amount());
        }
        for (Advice.Place place : a.order().places()) {
            put(out, stage, "look for " + place.item() + " " + place.name() + " chance", place.chance());
            put(out, stage, "look for " + place.item() + " hours", place.hours());
        }
        put(out, stage, "order hours", a.order().expectedHours());
        put(out, stage, "plain order hours", a.order().plainHours().orElse(-1));
        for (int i = 0; i < a.cautions().size(); i++) {
            put(out, stage, "caution " + a.cautions().get(i), i);
        }
    }

    private static void move(List<String> out, String where, Move move, int deep) {
        String label = where + " " + move.kind() + " " + move.id() + " " + move.name();
        put(out, label, "worth", move.worth().amount());
        put(out, label, "cost", move.cost().amount());
        for (Move.Result result : move.results()) {
            put(out, label, "if " + result.name(), result.chance());
            if (deep > 0) {
                move(out, where + " > " + result.name(), result.then(), deep - 1);
            }
        }
    }

    private static void put(List<String> out, String where, String what, double figure) {
        out.add((where + ": " + what).replace('\n', ' ') + "," + figure);
    }
}
