package worthsaving.desktop.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.Numbered;
import worthsaving.catalog.Catalogue;
import worthsaving.intake.IntakeFault;
import worthsaving.intake.IntakeSettings;
import worthsaving.intake.ListingReader;
import worthsaving.intake.LotEntry;
import worthsaving.intake.LotSink;
import worthsaving.intake.RefusedRow;
import worthsaving.intake.Vocabulary;
import worthsaving.quantity.Money;
import worthsaving.teardown.Entry;
import worthsaving.teardown.JournalReader;
import worthsaving.vehicle.Listing;

/** Reads the invented sample: listings on offer, cars under work and finished ones, with all that was written of them. */
public final class SampleFiles {

    private static final CSVFormat CSV = CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader()
            .setSkipHeaderRecord(true).setIgnoreSurroundingSpaces(true).get();

    private final Path folder;
    private final Vocabulary vocabulary;
    private final LocalDate today;
    private final Catalogue catalogue;

    public SampleFiles(Path folder, Vocabulary vocabulary, Catalogue catalogue, LocalDate today) {
        this.folder = folder;
        this.vocabulary = vocabulary;
        this.catalogue = catalogue;
        this.today = today;
    }

    /** @throws UncheckedIOException when a file cannot be read */
    public Sample read() {
        List<Listing> listings = new ArrayList<>(listings("lot.csv"));
        listings.addAll(listings("cases.csv"));
        Map<String, List<CSVRecord>> journals = rows("journals.csv");
        Map<String, List<CSVRecord>> forecasts = rows("forecasts.csv");
        Map<String, List<CSVRecord>> actuals = rows("actuals.csv");
        Map<String, String> settings = new HashMap<>();
        List<CaseFile> cases = new ArrayList<>();
        for (Listing listing : listings) {
            String id = listing.id();
            List<Numbered<JournalEntry>> journal = new ArrayList<>();
            for (CSVRecord row : journals.getOrDefault(id, List.of())) {
                journal.add(new Numbered<>(0, SampleRows.entry(row)));
                SampleRows.bought(row).ifPresent(b -> settings.put(Bought.setting(id), b.text()));
            }
            for (Entry line : teardown(id)) {
                journal.add(new Numbered<>(0, JournalEntry.of(line, listing.seen(), ZoneId.systemDefault())));
            }
            cases.add(new CaseFile(listing, listing.seen().atStartOfDay().toInstant(ZoneOffset.UTC), journal, List.of(),
                    SampleRows.forecast(forecasts.getOrDefault(id, List.of())).stream().toList(),
                    actuals.getOrDefault(id, List.of()).stream().findFirst().map(SampleRows::actual)));
        }
        return new Sample(cases, settings);
    }

    /** What its own file says of its teardown, where there is one. */
    private List<Entry> teardown(String id) {
        Path file = folder.resolve("teardown_" + id + ".csv");
        if (!Files.exists(file)) {
            return List.of();
        }
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            JournalReader.Reading reading = JournalReader.read(file.getFileName().toString(), in, catalogue, Money.USD);
            if (!reading.faults().isEmpty()) {
                throw new IllegalStateException("the sample's journal cannot be used: " + reading.faults());
            }
            return reading.journal().entries();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Map<String, List<CSVRecord>> rows(String file) {
        try (Reader in = Files.newBufferedReader(folder.resolve(file), StandardCharsets.UTF_8);
                CSVParser parser = CSV.parse(in)) {
            return parser.stream().collect(Collectors.groupingBy(r -> r.get("id"), LinkedHashMap::new, Collectors.toList()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<Listing> listings(String file) {
        List<Listing> read = new ArrayList<>();
        try (InputStream in = Files.newInputStream(folder.resolve(file))) {
            new ListingReader(vocabulary, IntakeSettings.american(today)).read(in, file, new LotSink() {
                @Override
                public void good(LotEntry entry) {
                    read.add(marked(entry.listing()));
                }

                @Override
                public void refused(RefusedRow row) {
                    throw new IllegalStateException("the sample holds a row that cannot be used: " + row.faults());
                }

                @Override
                public void warning(IntakeFault fault) {
                    // as a user's own table may have some, so may the sample
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return read;
    }

    private static Listing marked(Listing of) {
        return new Listing(of.id(), of.vehicle(), of.ask(), of.seen(), of.towMiles(), of.exposure(), of.observations(),
                of.story(), CaseFile.INVENTED + of.origin());
    }
}
