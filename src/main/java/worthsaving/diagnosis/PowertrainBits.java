package worthsaving.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
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
 * The unknown parts of a powertrain as hidden yes/no variables, so that a chain and a belt never fail
 * together however little an advert says. Each kind is coded such that common distinctions (electric
 * or not, automatic or not) rest on one bit.
 */
final class PowertrainBits {

    private static final List<Engine> ENGINE_CODE = List.of(
            Engine.PETROL, Engine.PETROL_TURBO, Engine.DIESEL, Engine.HYBRID,
            Engine.ELECTRIC, Engine.ELECTRIC, Engine.ELECTRIC, Engine.ELECTRIC);
    private static final List<Gearbox> GEARBOX_CODE = List.of(
            Gearbox.AUTOMATIC, Gearbox.CVT, Gearbox.DUAL_CLUTCH, Gearbox.DUAL_CLUTCH,
            Gearbox.MANUAL, Gearbox.MANUAL, Gearbox.ELECTRIC_DRIVE, Gearbox.ELECTRIC_DRIVE);
    private static final List<TimingDrive> TIMING_CODE = List.of(TimingDrive.CHAIN, TimingDrive.BELT);
    private static final List<Drive> DRIVE_CODE = List.of(Drive.FRONT, Drive.REAR, Drive.ALL, Drive.ALL);

    /** When an item exists: {@code open} by joint state of the bits. */
    record Gate(int[] bits, boolean[] open) {

        static final Gate NEVER = new Gate(new int[0], new boolean[] {false});

        boolean always() {
            return bits.length == 0 && open[0];
        }
    }

    private record Field<T>(Fact<T> fact, List<T> code, int firstBit) {

        static <T> Field<T> of(Fact<T> fact, List<T> code, int firstBit) {
            return new Field<>(fact, code, firstBit);
        }

        boolean isKnown() {
            return bits() == 0;
        }

        int bits() {
            return fact.get().isPresent() ? 0 : Integer.numberOfTrailingZeros(code.size());
        }

        /** Value under a joint state of the unknown bits, counted from the first of them all. */
        T value(int state) {
            return fact.get().orElseGet(() -> code.get(state >> firstBit & (code.size() - 1)));
        }

        /** True when the state uses the first code of its value. */
        boolean canonical(int state) {
            return isKnown() || code.indexOf(value(state)) == (state >> firstBit & (code.size() - 1));
        }
    }

    private final PowertrainShares shares;
    private final Field<Engine> engine;
    private final Field<TimingDrive> timing;
    private final Field<Gearbox> gearbox;
    private final Field<Drive> drive;
    private final int count;

    PowertrainBits(Powertrain car, PowertrainShares shares) {
        this.shares = shares;
        engine = Field.of(car.engine(), ENGINE_CODE, 0);
        gearbox = Field.of(car.gearbox(), GEARBOX_CODE, engine.bits());
        timing = Field.of(car.timing(), TIMING_CODE, engine.bits() + gearbox.bits());
        drive = Field.of(car.drive(), DRIVE_CODE, engine.bits() + gearbox.bits() + timing.bits());
        count = engine.bits() + gearbox.bits() + timing.bits() + drive.bits();
    }

    int count() {
        return count;
    }

    /** Prior of the hidden bits. @param first variable that stands for bit 0 */
    List<Table> tables(int first) {
        List<Table> tables = new ArrayList<>();
        addTable(tables, first, 0, engine.bits() + gearbox.bits(), this::engineAndGearbox);
        addTable(tables, first, timing.firstBit(), timing.bits(), this::timingShare);
        addTable(tables, first, drive.firstBit(), drive.bits(), this::driveShare);
        return tables;
    }

    /** A stated timing drive rules an electric car out. */
    private double engineAndGearbox(int state) {
        Engine kind = engine.value(state);
        if (!engine.canonical(state) || !gearbox.canonical(state) || (kind == Engine.ELECTRIC && timing.isKnown())) {
            return 0;
        }
        double share = engine.isKnown() ? 1 : shares.engines().getOrDefault(kind, 0.0);
        return share * shares.gearboxes().get(kind).getOrDefault(gearbox.value(state), 0.0);
    }

    private double timingShare(int state) {
        return shares.timings().getOrDefault(timing.value(state), 0.0);
    }

    private double driveShare(int state) {
        return drive.canonical(state) ? shares.drives().getOrDefault(drive.value(state), 0.0) : 0;
    }

    private static void addTable(List<Table> tables, int first, int from, int bits, IntToDoubleFunction share) {
        double[] values = new double[1 << bits];
        double sum = 0;
        for (int s = 0; s < values.length; s++) {
            values[s] = share.applyAsDouble(s << from);
            sum += values[s];
        }
        for (int s = 0; s < values.length; s++) {
            values[s] /= sum;
        }
        if (bits > 0) {
            tables.add(new Table(IntStream.range(first + from, first + from + bits).toArray(), values));
        }
    }

    /** When an item exists, resting on as few bits as possible. */
    Gate gate(Applicability applies, int first) {
        boolean[] open = new boolean[1 << count];
        boolean ever = false;
        for (int s = 0; s < open.length; s++) {
            open[s] = applies.engines().contains(engine.value(s))
                    && applies.timings().contains(timing.value(s))
                    && applies.gearboxes().contains(gearbox.value(s))
                    && applies.drives().contains(drive.value(s));
            ever |= open[s] && timingShare(s) * driveShare(s) * engineAndGearbox(s) > 0;
        }
        if (!ever) {
            return Gate.NEVER;
        }
        List<Integer> needed = new ArrayList<>();
        for (int b = 0; b < count; b++) {
            for (int s = 0; s < open.length; s++) {
                if (open[s] != open[s ^ 1 << b]) {
                    needed.add(b);
                    break;
                }
            }
        }
        boolean[] narrow = new boolean[1 << needed.size()];
        for (int s = 0; s < narrow.length; s++) {
            int wide = 0;
            for (int k = 0; k < needed.size(); k++) {
                wide |= (s >> k & 1) << needed.get(k);
            }
            narrow[s] = open[wide];
        }
        return new Gate(needed.stream().mapToInt(b -> first + b).toArray(), narrow);
    }

    /** The fields that had to be guessed, in words. */
    List<String> unknown() {
        List<String> names = new ArrayList<>();
        if (!engine.isKnown()) {
            names.add("engine");
        }
        if (!timing.isKnown() && engine.value(0) != Engine.ELECTRIC) {
            names.add("timing drive");
        }
        if (!gearbox.isKnown()) {
            names.add("gearbox");
        }
        if (!drive.isKnown()) {
            names.add("driven wheels");
        }
        return names;
    }
}
