package worthsaving.repair;

import java.util.Objects;
import java.util.Set;
import worthsaving.quantity.Money;

/** Who does the work, and what an hour of it costs. */
public sealed interface Worker {

    /** What an hour costs, or is worth to the one who works. */
    Money hourly();

    /**
     * Hours this worker needs for one book hour.
     *
     * @param id id of the job or access step
     */
    double factor(String id);

    /** Whether special tools come with the worker, so that none has to be bought. */
    boolean bringsTools();

    /**
     * The user's own hands.
     *
     * @param hourly what an own hour is worth to the user, zero or more
     * @param speed own hours per book hour, above 0; 1 is book speed, 1.5 half as long again
     * @param firstTime further factor on a job or step not done before, 1 or more
     * @param done ids of jobs and access steps done before
     */
    record OwnHands(Money hourly, double speed, double firstTime, Set<String> done) implements Worker {

        public OwnHands {
            requireRate(hourly);
            if (!(speed > 0) || Double.isInfinite(speed)) {
                throw new IllegalArgumentException("own speed must be above 0, not " + speed);
            }
            if (!(firstTime >= 1) || Double.isInfinite(firstTime)) {
                throw new IllegalArgumentException("the first-time factor must be 1 or more, not " + firstTime);
            }
            done = Set.copyOf(done);
        }

        /** Own hands at book speed. */
        public static OwnHands at(Money hourly) {
            return new OwnHands(hourly, 1, 1, Set.of());
        }

        @Override
        public double factor(String id) {
            return done.contains(id) ? speed : speed * firstTime;
        }

        @Override
        public boolean bringsTools() {
            return false;
        }
    }

    /** A shop that charges book hours at its rate and owns its tools. */
    record Shop(Kind kind, Money hourly) implements Worker {

        /** Independent shops and dealers differ in their rate and in nothing else here. */
        public enum Kind { INDEPENDENT, DEALER }

        public Shop {
            Objects.requireNonNull(kind, "kind");
            requireRate(hourly);
        }

        @Override
        public double factor(String id) {
            return 1;
        }

        @Override
        public boolean bringsTools() {
            return true;
        }
    }

    private static void requireRate(Money hourly) {
        if (hourly.amount() < 0) {
            throw new IllegalArgumentException("an hour must be worth zero or more, not " + hourly);
        }
    }
}
