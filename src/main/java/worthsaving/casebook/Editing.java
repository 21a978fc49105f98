package worthsaving.casebook;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import worthsaving.record.Ensemble;
import worthsaving.record.Quantity;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

/** Carries one edit out row by row inside the caller's transaction, and collects what it changed. */
final class Editing {

    private final Database database;
    private final Instant now;
    private final List<Change> changes = new ArrayList<>();
    /** Place of the last case added; zero before the first, so that a long table is searched but once. */
    private long lastSeq;

    /** An edit that makes no sense for the casebook as it stands. */
    static final class Impossible extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Trouble trouble;

        Impossible(String reason, String mend) {
            super(reason);
            this.trouble = new Trouble(reason, mend);
        }

        Trouble trouble() {
            return trouble;
        }
    }

    Editing(Database database, Instant now) {
        this.database = database;
        this.now = now;
    }

    List<Change> changes() {
        return changes;
    }

    void carryOut(Edit edit) throws SQLException {
        if (edit instanceof Edit.AddCase add) {
            mustBeNew(add.listing().id());
            put(Table.CASES, caseRow(add.listing(), nextSeq(), now.toString()));
            evidence(add.listing());
        } else if (edit instanceof Edit.ChangeCase change) {
            Row before = mustBeThere(change.listing().id());
            put(Table.CASES, caseRow(change.listing(), before.whole("seq"), before.text("added")));
            evidence(change.listing());
        } else if (edit instanceof Edit.DropCase drop) {
            mustBeThere(drop.id());
            for (Table table : Table.OF_A_CASE) {
                removeOfCase(table, drop.id());
            }
            remove(Table.CASES, List.of(drop.id()));
        } else if (edit instanceof Edit.Several several) {
            for (Edit one : several.edits()) {
                carryOut(one);
            }
        } else {
            carryOutPart(edit);
        }
    }

    private void carryOutPart(Edit edit) throws SQLException {
        if (edit instanceof Edit.Write write) {
            mustBeThere(write.id());
            long number = next(Table.ENTRY);
            put(Table.ENTRY, EntryRows.row(number, write.id(), write.entry()));
            for (Photo photo : write.photos()) {
                put(Table.PHOTO, photoRow(write.id(), photo.of(number)));
            }
        } else if (edit instanceof Edit.Rewrite rewrite) {
            String of = existing(Table.ENTRY, rewrite.number()).text("case_id");
            put(Table.ENTRY, EntryRows.row(rewrite.number(), of, rewrite.entry()));
        } else if (edit instanceof Edit.Strike strike) {
            existing(Table.ENTRY, strike.number());
            freePhotos(strike.number());
            remove(Table.ENTRY, List.of(strike.number()));
        } else if (edit instanceof Edit.AddPhoto add) {
            mustBeThere(add.id());
            if (add.photo().entry().isPresent()) {
                mustBeOf(add.id(), existing(Table.ENTRY, add.photo().entry().get()));
            }
            put(Table.PHOTO, photoRow(add.id(), add.photo()));
        } else if (edit instanceof Edit.DropPhoto drop) {
            existing(Table.PHOTO, drop.number());
            remove(Table.PHOTO, List.of(drop.number()));
        } else if (edit instanceof Edit.Keep keep) {
            mustBeThere(keep.id());
            put(Table.FORECAST, forecastRow(keep));
        } else if (edit instanceof Edit.Finish finish) {
            mustBeThere(finish.id());
            putOrRemove(Table.ACTUAL, finish.id(), finish.actual().map(a -> actualRow(finish.id(), a)));
        } else if (edit instanceof Edit.Set set) {
            putOrRemove(Table.SETTING, set.name(),
                    set.value().map(v -> new Row().with("name", set.name()).with("value", v)));
        }
    }

    /** Photos outlive the entry that they belonged to. */
    private void freePhotos(long entry) throws SQLException {
        for (Row row : database.rows("SELECT * FROM photo WHERE entry = ?", entry)) {
            put(Table.PHOTO, row.with("entry", null));
        }
    }

    private static void mustBeOf(String id, Row entry) {
        if (!entry.text("case_id").equals(id)) {
            throw new Impossible("entry " + entry.whole("id") + " is none of " + id, "see the case for its number");
        }
    }

    private void evidence(Listing listing) throws SQLException {
        List<Observation> seen = listing.observations();
        for (int i = 0; i < seen.size(); i++) {
            Observation o = seen.get(i);
            put(Table.OBSERVATION, new Row().with("case_id", listing.id()).with("seq", i)
                    .with("subject", o.subject()).with("sight", o.sight().name()).with("witness", o.witness().name()));
        }
        for (Row row : database.rows(
                "SELECT * FROM observation WHERE case_id = ? AND seq >= ?", listing.id(), (long) seen.size())) {
            remove(Table.OBSERVATION, Table.OBSERVATION.keyOf(row));
        }
    }

    private static Row caseRow(Listing listing, long seq, String added) {
        return new Row().with("id", listing.id()).with("seq", seq).with("listing", ListingJson.write(listing))
                .with("added", added);
    }

    private Row photoRow(String id, Photo photo) throws SQLException {
        return new Row().with("id", next(Table.PHOTO)).with("case_id", id).with("at", photo.at().toString())
                .with("stage", photo.stage()).with("path", photo.path()).with("sha256", photo.sha256())
                .with("caption", photo.caption()).with("entry", photo.entry().orElse(null));
    }

    private Row forecastRow(Edit.Keep keep) throws SQLException {
        Forecast f = keep.forecast();
        Map<String, double[]> spreads = new LinkedHashMap<>();
        for (Quantity quantity : Quantity.values()) {
            Ensemble spread = f.spreads().get(quantity);
            if (spread != null) {
                spreads.put(quantity.name(), spread.values());
            }
        }
        Map<String, Double> items = new LinkedHashMap<>();
        f.items().keySet().stream().sorted().forEach(item -> items.put(item, f.items().get(item).value()));
        return new Row().with("id", next(Table.FORECAST)).with("case_id", keep.id()).with("made", f.made().toString())
                .with("catalogue", f.catalogueVersion()).with("model", f.modelVersion())
                .with("program", f.programVersion()).with("seed", f.seed().value())
                .with("currency", f.currency().getCurrencyCode())
                .with("spreads", Row.json(spreads)).with("items", Row.json(items));
    }

    private static Row actualRow(String id, Actual a) {
        return new Row().with("case_id", id).with("bought", a.bought().toString()).with("sold", a.sold().toString())
                .with("currency", a.paid().currency().getCurrencyCode()).with("paid", a.paid().amount())
                .with("sale", a.sale().amount()).with("cost", a.cost().amount()).with("hours", a.hours().value())
                .with("days_to_sell", a.daysToSell().isPresent() ? a.daysToSell().getAsDouble() : null)
                .with("items", Row.json(new TreeMap<>(a.items())));
    }

    private void mustBeNew(String id) throws SQLException {
        if (Change.find(database, Table.CASES, List.of(id)).isPresent()) {
            throw new Impossible("there is a case " + id + " already", "give it another id, or change that case");
        }
    }

    private Row mustBeThere(String id) throws SQLException {
        return Change.find(database, Table.CASES, List.of(id)).orElseThrow(
                () -> new Impossible("there is no case " + id, "see the list of cases for its id"));
    }

    private Row existing(Table table, long number) throws SQLException {
        return Change.find(database, table, List.of(number)).orElseThrow(
                () -> new Impossible("there is no " + table.id() + " " + number, "see the case for its number"));
    }

    private long nextSeq() throws SQLException {
        lastSeq = lastSeq == 0 ? database.number("SELECT coalesce(max(seq), 0) + 1 FROM cases") : lastSeq + 1;
        return lastSeq;
    }

    private long next(Table table) throws SQLException {
        return database.number("SELECT coalesce(max(id), 0) + 1 FROM " + table.id());
    }

    private void putOrRemove(Table table, String key, Optional<Row> row) throws SQLException {
        if (row.isPresent()) {
            put(table, row.get());
        } else {
            remove(table, List.of(key));
        }
    }

    private void put(Table table, Row row) throws SQLException {
        change(table, table.keyOf(row), Optional.of(row));
    }

    private void remove(Table table, List<Object> key) throws SQLException {
        change(table, key, Optional.empty());
    }

    private void removeOfCase(Table table, String id) throws SQLException {
        for (Row row : database.rows("SELECT * FROM " + table.id() + " WHERE case_id = ?", id)) {
            remove(table, table.keyOf(row));
        }
    }

    private void change(Table table, List<Object> key, Optional<Row> after) throws SQLException {
        Optional<Row> before = Change.find(database, table, key);
        boolean same = before.isPresent() == after.isPresent()
                && (after.isEmpty() || before.get().agreesWith(after.get()));
        if (!same) {
            Change change = new Change(table, key, before, after);
            change.apply(database);
            changes.add(change);
        }
    }
}
