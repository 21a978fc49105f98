package worthsaving.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import worthsaving.catalog.Applicability;
import worthsaving.diagnosis.inference.Table;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.Powertrain.TimingDrive;

/**
 * What an advert leaves open about timing drive, gearbox and driven wheels as hidden yes/no variables,
 * given the kind of engine, so that a chain and a belt never fail together however little is known.
 */
final class PowertrainBits {

    /** When an item exists: {@code open} by joint state of the bits. */
    record Gate(int[] bits, boolean[] open) {

        static final Gate NEVER = new Gate(new int[0], new boolean[] {false});

        boolean always() {
            return bits.length == 0 && open[0];
        }
    }

    /**
     * One property of the powertrain.
     *
     * @param code value by state of its bits; a power of two of them, the last repeated to fill up
     * @param share by state, summing to 1
     * @param firstBit its lowest bit among all hidden bits
     */
    private record Field<T>(List<T> code, double[] share, int firstBit) {

        static <T extends Enum<T>> Field<T> of(Fact<T> fact, Map<T, Double> shares, int firstBit) {
            if (fact.get().isPresent()) {
                return new Field<>(List.of(fact.get().get()), new double[] {1}, firstBit);
            }
            List<T> code = new ArrayList<>(
                    shares.keySet().stream().filter(v -> shares.get(v) > 0).sorted().toList());
            int values = code.size();
            while (Integer.bitCount(code.size()) != 1) {
                code.add(code.get(values - 1));
            }
            double[] share = new double[code.size()];
            for (int s = 0; s < values; s++) {
                share[s] = shares.get(code.get(s));
            }
            return new Field<>(code, share, firstBit);
        }

        int bits() {
            return Integer.numberOfTrailingZeros(code.size());
        }

        int nextBit() {
            return firstBit + bits();
        }

        T value(int state) {
            return code.get(state >> firstBit & (code.size() - 1));
        }

        void addTo(List<Table> tables, int first) {
            if (bits() > 0) {
                int from = first + firstBit;
                tables.add(new Table(IntStream.range(from, from + bits()).toArray(), share));
            }
        }
    }

    private final Engine engine;
    private final Field<TimingDrive> timing;
    private final Field<Gearbox> gearbox;
    private final Field<Drive> drive;

    /** @param engine the engine, known or supposed; that of {@code car} is not looked at */
    PowertrainBits(Engine engine, Powertrain car, PowertrainShares shares) {
        this.engine = engine;
        timing = Field.of(car.timing(), shares.timings(), 0);
        gearbox = Field.of(car.gearbox(), shares.gearboxes().get(engine), timing.nextBit());
        drive = Field.of(car.drive(), shares.drives(), gearbox.nextBit());
    }

    int count() {
        return drive.nextBit();
    }

    /**
     * Prior of the hidden bits.
     *
     * @param first variable that stands for bit 0
     */
    List<Table> tables(int first) {
        List<Table> tables = new ArrayList<>();
        timing.addTo(tables, first);
        gearbox.addTo(tables, first);
        drive.addTo(tables, first);
        return tables;
    }

    /** When an item exists, resting on as few bits as possible. */
    Gate gate(Applicability applies, int first) {
        boolean[] open = new boolean[1 << count()];
        boolean ever = false;
        for (int s = 0; s < open.length; s++) {
            open[s] = applies.engines().contains(engine)
                    && applies.timings().contains(timing.value(s))
                    && applies.gearboxes().contains(gearbox.value(s))
                    && applies.drives().contains(drive.value(s));
            ever |= open[s];
        }
        if (!ever) {
            return Gate.NEVER;
        }
        int[] needed = IntStream.range(0, count()).filter(b -> matters(open, b)).toArray();
        boolean[] narrow = new boolean[1 << needed.length];
        for (int s = 0; s < narrow.length; s++) {
            int wide = 0;
            for (int k = 0; k < needed.length; k++) {
                wide |= (s >> k & 1) << needed[k];
            }
            narrow[s] = open[wide];
        }
        return new Gate(IntStream.of(needed).map(b -> first + b).toArray(), narrow);
    }

    private static boolean matters(boolean[] open, int bit) {
        return IntStream.range(0, open.length).anyMatch(s -> open[s] != open[s ^ 1 << bit]);
    }
}
