package worthsaving.desktop.market;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import worthsaving.desktop.Ground;
import worthsaving.intake.IntakeFault;
import worthsaving.intake.IntakeSettings;
import worthsaving.intake.ListingReader;
import worthsaving.intake.Lot;
import worthsaving.intake.LotEntry;
import worthsaving.intake.Vocabulary;
import worthsaving.market.Comparable;
import worthsaving.ranking.OwnComparables;

/**
 * The user's tables of priced cars, read.
 *
 * @param faults one for each row or field that could not be used, table by table
 */
record OwnCars(List<Row> rows, List<String> faults) {

    /**
     * A car that tells of the market's level.
     *
     * @param line of the table's text
     */
    record Row(OwnTable table, long line, Comparable comparable) {}

    OwnCars {
        rows = List.copyOf(rows);
        faults = List.copyOf(faults);
    }

    static OwnCars of(List<OwnTable> tables, Ground on) {
        List<Row> rows = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (OwnTable table : tables) {
            Lot lot = read(table, on);
            Set<Long> told = new HashSet<>();
            for (LotEntry entry : lot.entries()) {
                if (!table.leftOut().contains(entry.row())) {
                    OwnComparables one = OwnComparables.of(List.of(entry), on.home().market().currency());
                    one.good().forEach(c -> rows.add(new Row(table, entry.row(), c)));
                    if (!one.faults().isEmpty()) {
                        faults.addAll(one.faults());
                        told.add(entry.row());
                    }
                }
            }
            lot.faults().stream().filter(f -> !told.contains(f.row()) && !table.leftOut().contains(f.row()))
                    .map(IntakeFault::toString).forEach(faults::add);
        }
        return new OwnCars(rows, faults);
    }

    List<Comparable> comparables() {
        return rows.stream().map(Row::comparable).toList();
    }

    private static Lot read(OwnTable table, Ground on) {
        Vocabulary vocabulary = Vocabulary.of(on.catalogue(), on.makes(), on.adverts().codes());
        IntakeSettings usual = new IntakeSettings(
                table.day(), on.home().market().currency(), on.home().market().odometer());
        try {
            return new ListingReader(vocabulary, usual).read(new StringReader(table.text()), table.name());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
