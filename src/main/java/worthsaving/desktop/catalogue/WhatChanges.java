package worthsaving.desktop.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import worthsaving.catalog.Catalogue;
import worthsaving.desktop.Ground;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Judged;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Listing;

/** Judges the same cars with two catalogues. */
final class WhatChanges {

    private final Ground ground;

    WhatChanges(Ground ground) {
        this.ground = ground;
    }

    record Question(Catalogue before, Catalogue after, List<Listing> lot) {}

    /** A car that the two catalogues judge differently, in whole units of money or of per cent. */
    public record Difference(Standing before, Standing after) {

        boolean ofVerdict() {
            return before.verdict().kind() != after.verdict().kind();
        }

        private boolean ofFigures() {
            return ofVerdict()
                    || !before.mostToPay().wholeLimit().equals(after.mostToPay().wholeLimit())
                    || Math.rint(before.expectedProfit().amount()) != Math.rint(after.expectedProfit().amount())
                    || Math.rint(100 * before.chanceOfLoss()) != Math.rint(100 * after.chanceOfLoss());
        }
    }

    /** Cars that either refuses are left out; changed verdicts come first. */
    List<Difference> of(Question question, BooleanSupplier cancelled, IntConsumer progress) {
        Judge old = judge(question.before());
        Judge changed = judge(question.after());
        List<Difference> verdicts = new ArrayList<>();
        List<Difference> figures = new ArrayList<>();
        int done = 0;
        for (Listing listing : question.lot()) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("comparing was stopped");
            }
            if (old.judge(listing) instanceof Judged.Done before
                    && changed.judge(listing) instanceof Judged.Done after) {
                Difference difference =
                        new Difference(Standing.of(before.appraisal()), Standing.of(after.appraisal()));
                if (difference.ofFigures()) {
                    (difference.ofVerdict() ? verdicts : figures).add(difference);
                }
            }
            progress.accept(++done);
        }
        verdicts.addAll(figures);
        return verdicts;
    }

    /** The settings that the catalogue itself brings: its money lines and the tools at hand are part of what changes. */
    private Judge judge(Catalogue catalogue) {
        Ground changed = ground.with(catalogue);
        return new Judge(changed.catalogue(), changed.values(), changed.settings());
    }
}
