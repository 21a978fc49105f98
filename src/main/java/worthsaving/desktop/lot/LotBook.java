package worthsaving.desktop.lot;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Edit;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.CarSettings;
import worthsaving.desktop.book.Sample;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Vehicle;

/** The lot's part of the casebook: cars on offer, and how more of them come in or go. */
final class LotBook {

    private final BookModel book;

    LotBook(BookModel book) {
        this.book = book;
    }

    /** Cars neither bought nor finished, with all that is known of them. */
    List<Listing> onOffer() {
        return book.cases().stream().filter(c -> c.actual().isEmpty() && book.bought(c.id()).isEmpty())
                .map(CaseFile::asKnown).toList();
    }

    boolean open() {
        return book.openProperty().get();
    }

    /** Whether a car is of the invented sample. */
    boolean invented(Listing car) {
        return car.origin().startsWith(CaseFile.INVENTED);
    }

    boolean taken(String id) {
        return book.caseOf(id).isPresent();
    }

    /**
     * Takes the cars of a table into the casebook as one edit, and hides the invented ones. A car that is there already
     * stays as it is; one whose id another car has gets an id of its own.
     *
     * @return what is to be told of cars that were not taken as they are
     */
    List<Problem> add(String table, List<Listing> cars) {
        Map<String, CaseFile> there = book.inFile();
        List<Problem> told = new ArrayList<>();
        List<Edit> edits = new ArrayList<>();
        Set<String> given = new HashSet<>();
        for (Listing car : cars) {
            CaseFile same = there.get(car.id());
            if (same != null && !same.invented() && sameCar(same.listing(), car)) {
                told.add(new Problem(car.origin(), Texts.of("lot.there.cost"), Texts.of("lot.there", car.id()),
                        Texts.of("lot.there.mend")));
                continue;
            }
            String id = car.id();
            for (int i = 2; there.containsKey(id) || given.contains(id); i++) {
                id = Texts.of("lot.other_id", car.id(), Integer.toString(i));
            }
            if (!id.equals(car.id())) {
                told.add(new Problem(car.origin(), Texts.of("problem.warning"), Texts.of("lot.renamed", car.id(), id),
                        Texts.of("lot.renamed.mend")));
            }
            given.add(id);
            edits.add(new Edit.AddCase(withId(car, id)));
        }
        if (!edits.isEmpty()) {
            String label = Texts.of("edit.add", Figures.number(edits.size(), 0), table);
            edits.add(Sample.hide(true, book.settings(), label));
            book.save(new Edit.Several(label, edits));
        }
        return told;
    }

    /** Takes a pasted advert in. */
    void add(Listing car) {
        book.save(new Edit.Several(Texts.of("edit.advert", car.id()), List.of(new Edit.AddCase(car))));
    }

    void drop(List<String> ids) {
        List<Edit> edits = ids.stream().map(id -> CarSettings.drop(id, book.settings(), id)).toList();
        if (!edits.isEmpty()) {
            book.save(new Edit.Several(ids.size() == 1 ? Texts.of("edit.drop", ids.get(0))
                    : Texts.of("edit.drop.several", Integer.toString(ids.size())), edits));
        }
    }

    private static boolean sameCar(Listing one, Listing other) {
        Vehicle a = one.vehicle();
        Vehicle b = other.vehicle();
        return a.year().get().equals(b.year().get()) && a.make().get().equals(b.make().get())
                && a.model().get().equals(b.model().get());
    }

    private static Listing withId(Listing car, String id) {
        return id.equals(car.id()) ? car : new Listing(id, car.vehicle(), car.ask(), car.seen(), car.towMiles(),
                car.exposure(), car.observations(), car.story(), car.origin());
    }
}
