package worthsaving.ranking;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import worthsaving.vehicle.Listing;

/** Judges many listings and puts them in order. */
public final class LotRanking {

    private final Judge judge;

    public LotRanking(Judge judge) {
        this.judge = judge;
    }

    /**
     * Judges on all cores; the result does not depend on how many there are.
     *
     * @param judged told how many listings are done, from any thread
     * @param cancelled asked before each listing
     * @throws CancellationException when {@code cancelled} says so
     */
    public Ranked rank(List<Listing> listings, Ordering order, IntConsumer judged, BooleanSupplier cancelled) {
        AtomicInteger done = new AtomicInteger();
        List<Line> lines = IntStream.range(0, listings.size())
                .parallel()
                .mapToObj(i -> {
                    if (cancelled.getAsBoolean()) {
                        throw new CancellationException("ranking was cancelled");
                    }
                    Line line = Line.of(judge.judge(listings.get(i)));
                    judged.accept(done.incrementAndGet());
                    return line;
                })
                .toList();
        return Ranked.of(
                lines.stream().flatMap(line -> line.standing().stream()).toList(),
                lines.stream().flatMap(line -> line.refused().stream()).toList(),
                order);
    }

    /** Either a standing or a refusal; the appraisal's thousands of outcomes are let go at once. */
    private record Line(Optional<Standing> standing, Optional<Judged.Refused> refused) {

        static Line of(Judged judged) {
            if (judged instanceof Judged.Done done) {
                return new Line(Optional.of(Standing.of(done.appraisal())), Optional.empty());
            }
            return new Line(Optional.empty(), Optional.of((Judged.Refused) judged));
        }
    }
}
