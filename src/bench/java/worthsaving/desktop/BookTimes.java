package worthsaving.desktop;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import worthsaving.casebook.Access;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Edit;
import worthsaving.casebook.Opening;
import worthsaving.desktop.book.Books;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

/**
 * How long the casebook takes for what the window asks of it: a table taken in as one edit, one car changed, all read
 * anew, the table taken back; the named alternative is the same table taken in by one edit for each car. Argument: rows.
 */
public final class BookTimes {

    private static final Observation SEEN = Observation.present("OVERHEATS");

    private BookTimes() {}

    public static void main(String[] arguments) throws Exception {
        int rows = Integer.parseInt(arguments[0]);
        for (int round = 0; round < 3; round++) {
            Path folder = Files.createTempDirectory("book");
            List<Edit> adding = new ArrayList<>();
            for (int i = 0; i < rows; i++) {
                adding.add(new Edit.AddCase(listing(i)));
            }
            try (Casebook book = open(folder.resolve("one.db"))) {
                say(rows + " cars as one edit", () -> book.save(new Edit.Several("table", adding)));
                say("one car changed", () -> book.save(new Edit.ChangeCase(
                        listing(rows / 2).withSeen(List.of(Observation.absent("KNOCKS"))))));
                say("all read", book::cases);
                say("change undone", book::undo);
                say("table undone", book::undo);
            }
            try (Casebook book = open(folder.resolve("each.db"))) {
                say(rows + " cars, each an edit", () -> adding.forEach(book::save));
            }
        }
    }

    private static Casebook open(Path file) {
        return ((Opening.Opened) Casebook.open(file, Access.WRITE)).casebook();
    }

    private static Listing listing(int i) {
        return Books.listing("N" + i, "table.csv, row " + i, SEEN);
    }

    private static void say(String what, Runnable work) {
        long start = System.nanoTime();
        work.run();
        System.out.printf("%-28s %8.1f ms%n", what, (System.nanoTime() - start) / 1e6);
    }
}
