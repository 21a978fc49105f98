package worthsaving.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static worthsaving.casebook.Cases.keep;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.record.Quantity;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

class CasebookTest {

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("casebook.db");
    }

    /** What the user sees. */
    private record View(List<CaseFile> cases, Map<String, String> settings) {
        static View of(Casebook book) {
            return new View(book.cases(), book.settings());
        }
    }

    @Test
    void listings_come_back_as_they_were_whatever_is_unknown_in_them() {
        SplittableRandom random = Seed.DEFAULT.derive("listings").generator();
        List<Listing> listings = new ArrayList<>();
        try (Casebook book = Cases.open(file())) {
            for (int i = 0; i < 200; i++) {
                listings.add(Cases.listing("L" + i, random));
            }
            keep(book.save(new Edit.Several("a lot",
                    listings.stream().<Edit>map(Edit.AddCase::new).toList())));
        }
        try (Casebook book = Cases.open(file())) {
            assertThat(book.cases()).extracting(CaseFile::listing).containsExactlyElementsOf(listings);
        }
    }

    /** Undo and redo, over reopening, against a stack of what was seen. */
    @Test
    void every_edit_can_be_undone_and_redone_even_after_reopening() {
        SplittableRandom random = Seed.DEFAULT.derive("edits").generator();
        List<View> past = new ArrayList<>();
        List<View> future = new ArrayList<>();
        Casebook book = Cases.open(file());
        try {
            for (int step = 0; step < 400; step++) {
                View now = View.of(book);
                int choice = random.nextInt(10);
                if (choice == 9) {
                    book.close();
                    book = Cases.open(file());
                } else if (choice >= 7 && !past.isEmpty()) {
                    keep(book.undo());
                    future.add(now);
                    now = past.remove(past.size() - 1);
                } else if (choice >= 5 && !future.isEmpty()) {
                    keep(book.redo());
                    past.add(now);
                    now = future.remove(future.size() - 1);
                } else {
                    keep(book.save(Cases.edit(book, random)));
                    past.add(now);
                    future.clear();
                    now = View.of(book);
                }
                assertThat(View.of(book)).as("step " + step).isEqualTo(now);
                assertThat(book.toUndo().isPresent()).isEqualTo(!past.isEmpty());
                assertThat(book.toRedo().isPresent()).isEqualTo(!future.isEmpty());
            }
            while (book.toUndo().isPresent()) {
                keep(book.undo());
            }
            assertThat(View.of(book)).isEqualTo(new View(List.of(), Map.of()));
            assertThat(book.history()).as("nothing leaves the log").hasSizeGreaterThan(400)
                    .isSortedAccordingTo(Comparator.comparingLong(Edited::number));
        } finally {
            book.close();
        }
    }

    @Test
    void an_edit_of_several_is_kept_whole_or_not_at_all() {
        try (Casebook book = Cases.open(file())) {
            Saving saving = book.save(new Edit.Several("half wrong", List.of(
                    new Edit.AddCase(Cases.listing("A")), new Edit.AddCase(Cases.listing("A")))));
            assertThat(saving).isInstanceOfSatisfying(Saving.Failed.class,
                    f -> assertThat(f.why().text()).isEqualTo(
                            "there is a case A already; give it another id, or change that case"));
            assertThat(book.cases()).isEmpty();
            assertThat(book.history()).isEmpty();
            keep(book.save(new Edit.AddCase(Cases.listing("A"))));
        }
    }

    @Test
    void what_makes_no_sense_is_refused_with_a_mend() {
        try (Casebook book = Cases.open(file())) {
            for (Edit edit : List.of(new Edit.DropCase("X"), new Edit.ChangeCase(Cases.listing("X")),
                    new Edit.Strike(7), new Edit.DropPhoto(7), new Edit.Finish("X", Optional.empty()),
                    new Edit.Write("X", Cases.entry(new SplittableRandom(1))))) {
                assertThat(book.save(edit)).isInstanceOfSatisfying(Saving.Failed.class,
                        f -> assertThat(f.why().text()).startsWith("there is no ").contains("see the "));
            }
            assertThat(book.undo()).isInstanceOf(Saving.Failed.class);
            assertThat(book.redo()).isInstanceOf(Saving.Failed.class);
        }
    }

    @Test
    void the_journal_adds_up_and_its_findings_are_evidence() {
        try (Casebook book = Cases.open(file())) {
            keep(book.save(new Edit.AddCase(Cases.listing("A"))));
            for (JournalEntry.What what : List.of(
                    new JournalEntry.What.Work(Hours.of(3), Optional.of(Hours.of(2))),
                    new JournalEntry.What.Work(Hours.of(1.5), Optional.empty()),
                    new JournalEntry.What.Receipt(Money.usd(180), Optional.of(Money.usd(150))),
                    new JournalEntry.What.Receipt(Money.usd(20), Optional.empty()),
                    new JournalEntry.What.Finding(Observation.present("KNOCKS")),
                    new JournalEntry.What.Finding(Observation.absent("KNOCKS")))) {
                keep(book.save(new Edit.Write("A", new JournalEntry(Cases.NOON, "opened up", what, ""))));
            }
            keep(book.save(new Edit.Keep("A", Cases.forecast(new SplittableRandom(1)))));
            keep(book.save(new Edit.Finish("A", Optional.of(Cases.actual(new SplittableRandom(1))))));
            CaseFile a = book.caseOf("A").orElseThrow();
            assertThat(a.hours()).isEqualTo(Hours.of(4.5));
            assertThat(a.receipts()).contains(Money.usd(200));
            assertThat(a.asKnown().observations()).contains(Observation.absent("KNOCKS"))
                    .doesNotContain(Observation.present("KNOCKS"));
            assertThat(book.finished()).singleElement().satisfies(f -> {
                assertThat(f.speed()).hasValue(1.5);
                assertThat(f.partPrice()).hasValue(1.2);
                assertThat(f.items()).hasSize(2);
                assertThat(f.actuals()).containsEntry(Quantity.COST, 3_150.55);
            });
        }
    }

    /** Whenever nothing is being written, the file alone is the whole casebook. */
    @Test
    void a_copy_of_the_open_file_alone_is_complete() throws Exception {
        SplittableRandom random = Seed.DEFAULT.derive("copies").generator();
        try (Casebook book = Cases.open(file())) {
            for (int i = 0; i < 20; i++) {
                keep(book.save(Cases.edit(book, random)));
                Path copy = folder.resolve("copy-" + i + ".db");
                Files.copy(file(), copy);
                try (Casebook other = Cases.open(copy)) {
                    assertThat(View.of(other)).isEqualTo(View.of(book));
                }
            }
        }
        assertThat(folder.resolve("casebook.db-wal")).as("closed, it is one file").doesNotExist();
    }
}
