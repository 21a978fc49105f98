package worthsaving.desktop.car;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Edit;
import worthsaving.casebook.Forecast;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.Bought;
import worthsaving.desktop.book.CarSettings;
import worthsaving.shell.ProgramVersion;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

/** Keeps the edits of the car screen in the casebook, and has the screen follow it. Used on the screen thread only. */
public final class CarBook implements Keeper {

    private static final String LEVERS = "levers";

    private final CarModel car;
    private final BookModel book;
    private final Function<String, Optional<String>> names;
    private final Runnable onGone;
    private final Supplier<Instant> clock;

    /**
     * @param names name of a finding or an item of the catalogue
     * @param onGone when the car shown is in the casebook no more
     * @param clock dates findings of the journal
     */
    public CarBook(CarModel car, BookModel book, Function<String, Optional<String>> names, Runnable onGone,
            Supplier<Instant> clock) {
        this.car = car;
        this.book = book;
        this.names = names;
        this.onGone = onGone;
        this.clock = clock;
        car.keepBy(this);
        book.revisionProperty().addListener(o -> follow());
    }

    /** A case as the car screen begins with it: its evidence and where its sliders were left. */
    public Scenario scenario(CaseFile of) {
        String levers = book.settings().getOrDefault(CarSettings.of(of.id()) + LEVERS, "");
        return new Scenario(of.asKnown(), LeverText.read(levers, names));
    }

    @Override
    public boolean keeps() {
        return !book.readOnly();
    }

    @Override
    public void keep(Scenario before, Scenario now) {
        if (!keeps() || before.equals(now)) {
            return;
        }
        String id = now.listing().id();
        List<Edit> edits = new ArrayList<>();
        if (!before.listing().equals(now.listing())) {
            Optional<CaseFile> kept = book.caseOf(id);
            Map<String, Observation> journal = kept.map(CarBook::journal).orElse(Map.of());
            Listing listing = withoutJournal(now.listing(), kept, journal);
            boolean there = kept.isPresent() || book.busyProperty().get();
            edits.add(there ? new Edit.ChangeCase(listing) : new Edit.AddCase(listing));
            journal.values().stream()
                    .filter(o -> now.sight(o.subject(), o.witness()) != before.sight(o.subject(), o.witness()))
                    .forEach(o -> edits.add(new Edit.Write(id, new JournalEntry(clock.get(), "", new What.Finding(
                            new Observation(o.subject(), now.sight(o.subject(), o.witness()), o.witness())), ""))));
        }
        if (!before.levers().equals(now.levers())) {
            String levers = LeverText.write(now.levers());
            edits.add(new Edit.Set(CarSettings.of(id) + LEVERS, Optional.of(levers).filter(t -> !t.isEmpty())));
        }
        book.save(new Edit.Several(Texts.of("edit.car", id, what(before, now)), edits));
    }

    /** That the car shown was bought, if it was. */
    Optional<Bought> bought() {
        return car.isOpen() ? book.bought(car.scenarioProperty().get().listing().id()) : Optional.empty();
    }

    /** Keeps that the car shown was bought, with what is forecast of it now at that price. Its exact picture must be there. */
    public void buy(Bought bought) {
        String id = car.scenarioProperty().get().listing().id();
        List<Edit> edits = new ArrayList<>();
        if (book.caseOf(id).isEmpty()) {
            edits.add(new Edit.AddCase(car.scenarioProperty().get().listing()));
        }
        Scenario paid = car.scenarioProperty().get().with(Lever.PRICE, bought.paid().amount());
        car.seen().ifPresent(seen -> edits.add(new Edit.Keep(id,
                Forecast.of(seen.nearby().appraise(paid), car.catalogueVersion(), ProgramVersion.text(), clock.get()))));
        edits.add(new Edit.Set(Bought.setting(id), Optional.of(bought.text())));
        edits.add(new Edit.Write(id, new JournalEntry(clock.get(), Texts.of("buy.stage"), new What.Decision(),
                Texts.of("buy.entry", Figures.money(bought.paid()), bought.day().toString()))));
        book.save(new Edit.Several(Texts.of("edit.buy", id), edits));
    }

    BookModel book() {
        return book;
    }

    @Override
    public void undo() {
        book.undo();
    }

    @Override
    public void redo() {
        book.redo();
    }

    @Override
    public boolean canUndo() {
        return book.canUndo();
    }

    @Override
    public boolean canRedo() {
        return book.canRedo();
    }

    /** Nothing is taken back when an edit could not be kept: it stays on the screen, and goes with the next one. */
    private void follow() {
        if (!car.isOpen()) {
            return;
        }
        if (!keeps() || !book.troubleProperty().get().isEmpty()) {
            car.offer();
            return;
        }
        Optional<CaseFile> kept = book.caseOf(car.scenarioProperty().get().listing().id());
        if (kept.isPresent()) {
            car.follow(scenario(kept.get()));
        } else {
            onGone.run();
        }
    }

    /** The latest finding of the journal on each subject. */
    private static Map<String, Observation> journal(CaseFile of) {
        Map<String, Observation> latest = new LinkedHashMap<>();
        of.journal().stream().map(e -> e.value().what()).filter(What.Finding.class::isInstance)
                .map(w -> ((What.Finding) w).seen()).forEach(o -> latest.put(o.witness() + o.subject(), o));
        return latest;
    }

    /** What the journal says stays there and is not written into the listing as well. */
    private static Listing withoutJournal(Listing now, Optional<CaseFile> kept, Map<String, Observation> journal) {
        if (journal.isEmpty()) {
            return now;
        }
        Set<Observation> own = new HashSet<>(kept.orElseThrow().listing().observations());
        List<Observation> seen = now.observations().stream()
                .filter(o -> own.contains(o) || !journal.containsKey(o.witness() + o.subject())).toList();
        return new Listing(now.id(), now.vehicle(), now.ask(), now.seen(), now.towMiles(), now.exposure(), seen,
                now.story(), now.origin());
    }

    private String what(Scenario before, Scenario now) {
        Set<Observation> changed = new HashSet<>(now.listing().observations());
        changed.removeAll(new HashSet<>(before.listing().observations()));
        Set<Observation> gone = new HashSet<>(before.listing().observations());
        gone.removeAll(new HashSet<>(now.listing().observations()));
        changed.addAll(gone);
        List<String> subjects = changed.stream().map(Observation::subject).distinct().toList();
        if (subjects.size() == 1) {
            return names.apply(subjects.get(0)).orElse(subjects.get(0));
        }
        return Texts.of(before.listing().equals(now.listing()) ? "edit.sliders" : "edit.facts");
    }
}
