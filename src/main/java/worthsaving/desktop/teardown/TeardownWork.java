package worthsaving.desktop.teardown;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import worthsaving.casebook.CaseFile;
import worthsaving.deal.Term;
import worthsaving.desktop.Ground;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Preparation;
import worthsaving.ranking.PreparedListing;
import worthsaving.ranking.Quoter;
import worthsaving.ranking.ShopQuote;
import worthsaving.teardown.Advice;
import worthsaving.teardown.GoStop;
import worthsaving.teardown.Journal;
import worthsaving.teardown.OwnerJob;
import worthsaving.teardown.TeardownTerms;

/** Reckons a teardown, in the background. */
final class TeardownWork {

    /** What {@link #of} tells of as done, one by one. */
    static final int STEPS = 3;

    /** A case to reckon, and on what. */
    record Ask(CaseFile file, Optional<Owner> owner, Ground ground) {

        boolean sameCar(Ask other) {
            return file.id().equals(other.file.id());
        }
    }

    private TeardownWork() {}

    /** @throws CancellationException when it is no longer wanted */
    static TeardownPicture of(Ask ask, BooleanSupplier cancelled, IntConsumer progress) {
        JudgeSettings settings = ask.ground().settings();
        Journal journal = ask.file().teardown();
        Preparation preparation = new Judge(ask.ground().catalogue(), ask.ground().values(), settings)
                .prepare(journal.addedTo(ask.file().listing()));
        if (preparation instanceof Preparation.Refused refused) {
            return new TeardownPicture(ask.file(), Optional.empty(), Optional.of(refused.why()));
        }
        done(1, cancelled, progress);
        PreparedListing car = ((Preparation.Ready) preparation).listing();
        Advice advice = new GoStop(ask.ground().catalogue(), settings, TeardownTerms.USUAL).advise(car, journal);
        done(2, cancelled, progress);
        Optional<OwnerJob> job = ask.owner().map(o -> OwnerJob.of(journal, rate(o, settings), o.agreed()));
        Optional<ShopQuote> quote = job.flatMap(j -> quote(ask, car, journal, j));
        done(STEPS, cancelled, progress);
        return new TeardownPicture(ask.file(), Optional.of(new TeardownPicture.Seen(advice, quote, job)),
                Optional.empty());
    }

    static Money rate(Owner owner, JudgeSettings settings) {
        return owner.rate().orElse(settings.terms().money(Term.SHOP_HOURLY));
    }

    private static Optional<ShopQuote> quote(Ask ask, PreparedListing car, Journal journal, OwnerJob job) {
        JudgeSettings settings = ask.ground().settings();
        Appraisal appraisal = car.appraise(settings.terms(), settings.rule(), ask.file().listing().ask().get());
        return new Quoter(ask.ground().catalogue(), settings, rate(ask.owner().orElseThrow(), settings), journal.opened())
                .write(appraisal, job.left());
    }

    private static void done(int steps, BooleanSupplier cancelled, IntConsumer progress) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
        progress.accept(steps);
    }
}
