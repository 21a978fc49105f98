package worthsaving.desktop.book;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import worthsaving.casebook.Access;
import worthsaving.casebook.Actual;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.casebook.Numbered;
import worthsaving.casebook.Opening;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Vehicle;

/** Invented listings, casebooks in a folder and a small sample, for tests. */
public final class Books {

    private Books() {}

    public static Supplier<Opening> opening(Path file) {
        return () -> Casebook.open(file, Access.WRITE);
    }

    public static Listing listing(String id, String origin, Observation... seen) {
        Vehicle vehicle = Vehicle.builder().year(Fact.known(2012)).make(Fact.known("ford")).model(Fact.known("focus"))
                .odometer(Fact.known(Distance.ofMiles(98_000))).build();
        return new Listing(id, vehicle, Fact.known(Money.usd(1_200)), LocalDate.of(2025, 11, 20), Fact.unknown(),
                Exposure.UNKNOWN, List.of(seen), "", origin);
    }

    public static CaseFile invented(String id, JournalEntry... entries) {
        return invented(id, Optional.empty(), entries);
    }

    static CaseFile invented(String id, Optional<Actual> actual, JournalEntry... entries) {
        List<Numbered<JournalEntry>> journal = new ArrayList<>();
        for (JournalEntry entry : entries) {
            journal.add(new Numbered<>(0, entry));
        }
        return new CaseFile(listing(id, CaseFile.INVENTED + "lot.csv, row 2"), Instant.EPOCH, journal, List.of(),
                List.of(), actual);
    }

    public static JournalEntry note(String text) {
        return new JournalEntry(Instant.parse("2025-11-20T10:00:00Z"), "driveway", new What.Note(), text);
    }

    static Sample sample(CaseFile... cases) {
        return new Sample(List.of(cases), Map.of("car.S1.levers", "PRICE=900.0"));
    }
}
