package worthsaving.vehicle;

/** What moves the car: the choices that decide which failure items can apply at all. */
public record Powertrain(
        Fact<Engine> engine, Fact<TimingDrive> timing, Fact<Gearbox> gearbox, Fact<Drive> drive) {

    /** Kind of engine; a hybrid has a petrol engine without turbo beside its high-voltage parts. */
    public enum Engine { PETROL, PETROL_TURBO, DIESEL, HYBRID, ELECTRIC }

    /** What drives the camshafts. */
    public enum TimingDrive { CHAIN, BELT }

    /** Kind of gearbox; {@code ELECTRIC_DRIVE} is a power-split hybrid or a fixed reduction gear. */
    public enum Gearbox { MANUAL, AUTOMATIC, CVT, DUAL_CLUTCH, ELECTRIC_DRIVE }

    /** Driven wheels. */
    public enum Drive { FRONT, REAR, ALL }

    public static final Powertrain UNKNOWN =
            new Powertrain(Fact.unknown(), Fact.unknown(), Fact.unknown(), Fact.unknown());
}
