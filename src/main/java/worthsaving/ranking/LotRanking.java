package worthsaving.ranking;

import java.util.List;
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
     * Judges on all cores, or on those of the pool it is called from; the result does not depend on how many there are.
     *
     * @param judged told how many listings are done, from any thread
     * @param cancelled asked before each listing
     * @throws CancellationException when {@code cancelled} says so
     */
    public Ranked rank(List<Listing> listings, Ordering order, IntConsumer judged, BooleanSupplier cancelled) {
        List<Scored> scored = score(listings, judged, cancelled);
        return Ranked.of(
                scored.stream().flatMap(line -> line.standing().stream()).toList(),
                scored.stream().flatMap(line -> line.refused().stream()).toList(),
                order);
    }

    /** As {@link #rank}, each listing by itself and in the order given. */
    public List<Scored> score(List<Listing> listings, IntConsumer judged, BooleanSupplier cancelled) {
        AtomicInteger done = new AtomicInteger();
        return IntStream.range(0, listings.size())
                .parallel()
                .mapToObj(i -> {
                    if (cancelled.getAsBoolean()) {
                        throw new CancellationException("ranking was cancelled");
                    }
                    Scored scored = Scored.of(judge.judge(listings.get(i)));
                    judged.accept(done.incrementAndGet());
                    return scored;
                })
                .toList();
    }
}
