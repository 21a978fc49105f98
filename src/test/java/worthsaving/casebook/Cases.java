package worthsaving.casebook;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Seed;
import worthsaving.record.Ensemble;
import worthsaving.record.Quantity;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;
import worthsaving.vehicle.Vin;

/** Invented cases and edits. */
final class Cases {

    static final Instant NOON = Instant.parse("2026-03-01T12:00:00Z");
    static final Clock CLOCK = Clock.fixed(NOON, ZoneOffset.UTC);

    private Cases() {}

    static Casebook open(Path file) {
        return open(file, CLOCK);
    }

    static Casebook open(Path file, Clock clock) {
        Opening opening = Casebook.open(file, Access.WRITE, clock);
        if (opening instanceof Opening.Opened opened) {
            return opened.casebook();
        }
        throw new AssertionError("not opened for writing: " + opening);
    }

    /** @throws AssertionError when it was not kept */
    static Edited keep(Saving saving) {
        if (saving instanceof Saving.Done done) {
            return done.edited();
        }
        throw new AssertionError("not kept: " + saving);
    }

    static Listing listing(String id) {
        return listing(id, new SplittableRandom(id.hashCode()));
    }

    /** Every field known, assumed or unknown by chance. */
    static Listing listing(String id, SplittableRandom random) {
        Vehicle vehicle = Vehicle.builder()
                .year(fact(random, () -> random.nextInt(1990, 2026)))
                .make(fact(random, () -> "make \"" + random.nextInt(9)))
                .model(fact(random, () -> "modèle " + random.nextInt(9)))
                .trim(fact(random, () -> "GT\n'" + random.nextInt(9)))
                .odometer(fact(random, () -> new Distance(random.nextDouble() * 2e5, one(random, Distance.Unit.values()))))
                .powertrain(new Powertrain(
                        fact(random, () -> one(random, Powertrain.Engine.values())),
                        fact(random, () -> one(random, Powertrain.TimingDrive.values())),
                        fact(random, () -> one(random, Powertrain.Gearbox.values())),
                        fact(random, () -> one(random, Powertrain.Drive.values()))))
                .engineLitres(fact(random, () -> random.nextDouble() * 5))
                .cylinders(fact(random, () -> random.nextInt(2, 12)))
                .body(fact(random, () -> "saloon"))
                .condition(fact(random, () -> "fair"))
                .title(one(random, TitleBrand.values()))
                .vin(fact(random, () -> new Vin("1M8GDM9AXKP042788")))
                .build();
        List<Observation> seen = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            seen.add(new Observation("F" + random.nextInt(100), one(random, Observation.Sight.values()),
                    one(random, Observation.Witness.values())));
        }
        Map<Exposure.Hazard, Exposure.Level> levels = new EnumMap<>(Exposure.Hazard.class);
        if (random.nextBoolean()) {
            levels.put(one(random, Exposure.Hazard.values()), one(random, Exposure.Level.values()));
        }
        return new Listing(id, vehicle, fact(random, () -> Money.of(random.nextDouble() * 9_000, "EUR")),
                LocalDate.of(2025, 11, 14).plusDays(random.nextInt(100)), fact(random, () -> random.nextDouble() * 80),
                new Exposure(levels), seen, "An invented story; it said: 'no'\u2028\t\ud83d\ude97.", "invented, row "
                + random.nextInt(50));
    }

    static Forecast forecast(SplittableRandom random) {
        return new Forecast(NOON, "catalogue 1", "model 2", "program 3", new Seed(random.nextLong()), Money.USD,
                Map.of(Quantity.VALUE, Ensemble.of(random.doubles(5, 4_000, 8_000).toArray()),
                        Quantity.HOURS, Ensemble.of(random.doubles(5, 5, 30).toArray())),
                Map.of("HV_PACK", Probability.of(random.nextDouble()), "WATER_PUMP", Probability.of(0.1)));
    }

    static Actual actual(SplittableRandom random) {
        return new Actual(LocalDate.of(2026, 3, 1), LocalDate.of(2026, 4, 1 + random.nextInt(28)), Money.usd(2_000),
                Money.usd(6_100 * random.nextDouble()), Money.usd(3_150.55), Hours.of(22.5),
                random.nextBoolean() ? OptionalDouble.of(9) : OptionalDouble.empty(),
                Map.of("HV_PACK", true, "WATER_PUMP", random.nextBoolean()));
    }

    static JournalEntry entry(SplittableRandom random) {
        What what = switch (random.nextInt(8)) {
            case 0 -> new What.Note();
            case 1 -> new What.Decision();
            case 2 -> new What.Finding(new Observation("F" + random.nextInt(9), one(random, Observation.Sight.values()),
                    Observation.Witness.OWN_EYES));
            case 3 -> new What.Work(Hours.of(random.nextDouble() * 9),
                    random.nextBoolean() ? Optional.of(Hours.of(2)) : Optional.empty());
            case 4 -> new What.Opened("STEP" + random.nextInt(5));
            case 5 -> new What.Mended("ITEM" + random.nextInt(5));
            case 6 -> new What.PartBought("ITEM" + random.nextInt(5), Money.usd(random.nextDouble() * 900),
                    random.nextBoolean() ? Optional.of(Money.usd(100)) : Optional.empty());
            default -> new What.Receipt(Money.usd(random.nextDouble() * 900),
                    random.nextBoolean() ? Optional.of(Money.usd(100)) : Optional.empty());
        };
        return new JournalEntry(NOON.plusSeconds(random.nextInt(100_000)), one(random, "driveway", "opened up", ""), what,
                "entry " + random.nextInt());
    }

    static Photo photo(SplittableRandom random) {
        return new Photo(NOON, "opened up", "photos/" + random.nextInt(99) + ".jpg", "0123456789abcdef".repeat(4), "rust");
    }

    static Photo photo(SplittableRandom random, long entry) {
        return photo(random).of(entry);
    }

    /** Some edit that the casebook as it stands allows. */
    static Edit edit(Casebook book, SplittableRandom random) {
        List<CaseFile> cases = book.cases();
        if (cases.isEmpty() || random.nextInt(5) == 0) {
            return new Edit.AddCase(listing("N" + random.nextInt(1_000_000_000), random));
        }
        CaseFile some = cases.get(random.nextInt(cases.size()));
        List<Numbered<JournalEntry>> journal = some.journal();
        return switch (random.nextInt(12)) {
            case 0 -> new Edit.ChangeCase(listing(some.id(), random));
            case 1 -> cases.size() > 2 ? new Edit.DropCase(some.id()) : new Edit.Write(some.id(), entry(random));
            case 2 -> new Edit.Keep(some.id(), forecast(random));
            case 3 -> new Edit.Finish(some.id(),
                    random.nextInt(4) == 0 ? Optional.empty() : Optional.of(actual(random)));
            case 4 -> new Edit.Set("s" + random.nextInt(3),
                    random.nextInt(3) == 0 ? Optional.empty() : Optional.of("v" + random.nextInt()));
            case 5 -> new Edit.AddPhoto(some.id(), photo(random));
            case 6 -> some.photos().isEmpty() ? new Edit.AddPhoto(some.id(), photo(random))
                    : new Edit.DropPhoto(some.photos().get(0).number());
            case 7 -> journal.isEmpty() ? new Edit.Write(some.id(), entry(random))
                    : new Edit.Strike(journal.get(random.nextInt(journal.size())).number());
            case 8 -> journal.isEmpty() ? new Edit.Write(some.id(), entry(random))
                    : new Edit.Rewrite(journal.get(random.nextInt(journal.size())).number(), entry(random));
            case 9 -> new Edit.Several("two at once", List.of(
                    new Edit.Write(some.id(), entry(random)), new Edit.Keep(some.id(), forecast(random))));
            case 10 -> new Edit.AddPhoto(some.id(), journal.isEmpty() ? photo(random)
                    : photo(random, journal.get(random.nextInt(journal.size())).number()));
            default -> new Edit.Write(some.id(), entry(random));
        };
    }

    @SafeVarargs
    static <T> T one(SplittableRandom random, T... of) {
        return of[random.nextInt(of.length)];
    }

    private static <T> Fact<T> fact(SplittableRandom random, Supplier<T> value) {
        return switch (random.nextInt(3)) {
            case 0 -> Fact.unknown();
            case 1 -> Fact.assumed(value.get(), "a reason");
            default -> Fact.known(value.get());
        };
    }
}
