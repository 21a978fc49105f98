package worthsaving.desktop.lot;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import worthsaving.desktop.Ground;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.lot.LotWork.Content;
import worthsaving.desktop.lot.LotWork.Request;
import worthsaving.ranking.Order;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Listing;

/** The lot as the screen shows it; holds no control. To be used on the screen thread only. */
public final class LotModel {

    private volatile LotWork work;
    private Ground ground;
    private final LotBook book;
    private final Tables tables;
    private final LatestWins<Request, Content> reckoner;
    private final ScreenThread screen;
    private final ReadOnlyObjectWrapper<Currency> currency = new ReadOnlyObjectWrapper<>();
    private final Adverts adverts;
    private final ChoiceModel choice;
    private final CompareModel comparison;
    private final ObservableList<LotRow> rows = FXCollections.observableArrayList();
    private final ObservableList<Problem> problems = FXCollections.observableArrayList();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyIntegerWrapper done = new ReadOnlyIntegerWrapper();
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper invented = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper judging = new ReadOnlyBooleanWrapper();
    private Content content = Content.EMPTY;
    /** What is to be shown, judged or not yet. */
    private List<Listing> wanted = List.of();
    private Order order = Order.EXPECTED_PROFIT;
    /** Whether the casebook was open; until then the lot is said to be read. */
    private final ReadOnlyBooleanWrapper followed = new ReadOnlyBooleanWrapper();

    public LotModel(Ground ground, BookModel cases, Executor background, ScreenThread screen) {
        this.ground = ground;
        this.book = new LotBook(cases);
        this.work = new LotWork(ground);
        this.screen = screen;
        this.currency.set(ground.settings().terms().currency());
        this.adverts = new Adverts(ground, id -> cases.caseOf(id).isPresent(), book::add, background, screen);
        this.choice = new ChoiceModel(ground.settings().method().seed(), background, screen);
        this.comparison = new CompareModel(() -> work.judge(), background, screen);
        this.tables = new Tables(() -> this.ground, book, trouble, this::showProblems, background, screen);
        this.reckoner = new LatestWins<>(
                (request, cancelled, progress) -> request.by().of(request, cancelled, progress),
                (running, newer) -> running.by() == newer.by(), new Arrival(), background, screen);
        busy.bind(followed.not().or(tables.busyProperty()).or(judging));
    }

    /** Reads a table; its listings become cases of the casebook, and so of the lot. */
    public void open(Path file) {
        screen.require();
        tables.open(file);
    }

    /** Shows the cars on offer as the casebook has them now; judges those that changed. */
    public void follow() {
        screen.require();
        followed.set(followed.get() || book.open());
        wanted = book.onOffer();
        long made = wanted.stream().filter(book::invented).count();
        invented.set(made > 0);
        title.set(Texts.of(made == 0 ? "lot.of.own" : made == wanted.size() ? "lot.of.sample" : "lot.of.both"));
        if (judging.get() || !wanted.equals(shown())) {
            judge();
        }
    }

    /** Takes cars out of the lot and the casebook. */
    public void drop(List<String> ids) {
        screen.require();
        book.drop(ids);
    }

    /** Judges every car anew on other ground. */
    public void use(Ground ground) {
        screen.require();
        this.ground = ground;
        work = new LotWork(ground);
        currency.set(ground.settings().terms().currency());
        adverts.use(ground);
        if (!wanted.isEmpty()) {
            judge();
        }
    }

    /** Every car of the lot, judged or refused. */
    public List<Listing> listings() {
        return content.listings();
    }

    public void order(Order other) {
        order = other;
        if (!wanted.isEmpty()) {
            judge();
        }
    }

    /** Stops reading and judging; what was shown before stays. */
    public void cancel() {
        tables.cancel();
        reckoner.cancel();
        judging.set(false);
    }

    /** Chooses what to buy together of all cars judged, shown or not. */
    void choose(Limits limits) {
        choice.choose(rows.stream().map(LotRow::standing).toList(), limits);
    }

    public ChoiceModel choice() {
        return choice;
    }

    public CompareModel comparison() {
        return comparison;
    }

    /** How many listings the lot being judged has; zero while it is not known. */
    public int total() {
        return work.total();
    }

    /** Currency of all amounts: that of the market. */
    public Currency currency() {
        return currency.get();
    }

    public ReadOnlyObjectProperty<Currency> currencyProperty() {
        return currency.getReadOnlyProperty();
    }

    /** Name of a failure item. */
    String itemName(String id) {
        return work.itemName(id);
    }

    public Adverts adverts() {
        return adverts;
    }

    /** In order, best first. */
    public ObservableList<LotRow> rows() {
        return rows;
    }

    public ObservableList<Problem> problems() {
        return problems;
    }

    public Optional<LotRow> row(String id) {
        return rows.stream().filter(r -> r.listing().id().equals(id)).findFirst();
    }

    public Optional<Listing> listing(String id) {
        return LotWork.find(content, id);
    }

    public Order order() {
        return order;
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** How many listings of the lot being judged are done. */
    public ReadOnlyIntegerProperty doneProperty() {
        return done.getReadOnlyProperty();
    }

    /** Whose cars they are, in words. */
    public ReadOnlyStringProperty titleProperty() {
        return title.getReadOnlyProperty();
    }

    /** Whether cars of the invented sample are among those of the lot. */
    public ReadOnlyBooleanProperty inventedProperty() {
        return invented.getReadOnlyProperty();
    }

    /** What went wrong last, in words; blank when nothing did. */
    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    public boolean hasRefusedRows() {
        return tables.hasRefusedRows();
    }

    /** Writes the rows left out as they stood in the table, under its header, for mending and reading again. */
    public void saveRefusedRows(Path file) throws IOException {
        tables.saveRefusedRows(file);
    }

    /** In the order of the casebook, as far as they are judged. */
    private List<Listing> shown() {
        Map<String, Listing> judged = new HashMap<>();
        content.listings().forEach(l -> judged.put(l.id(), l));
        List<Listing> shown = new ArrayList<>();
        for (Listing car : wanted) {
            Optional.ofNullable(judged.remove(car.id())).ifPresent(shown::add);
        }
        shown.addAll(judged.values());
        return shown;
    }

    private void judge() {
        judging.set(true);
        done.set(0);
        reckoner.submit(new Request(work, wanted, order));
    }

    private void showProblems() {
        List<Problem> all = new ArrayList<>(tables.problems());
        all.addAll(content.problems());
        if (!all.equals(problems)) {
            problems.setAll(all);
        }
    }

    private final class Arrival implements LatestWins.Listener<Request, Content> {

        @Override
        public void done(Request request, Content output, boolean latest) {
            if (!standings(output).equals(standings(content))) {
                choice.clear();
            }
            content = output;
            rows.setAll(request.by().rows(output));
            showProblems();
            if (latest && !output.whole()) {
                reckoner.submit(request);
            } else {
                judging.set(!latest);
            }
        }

        /** By identity: a car that was not judged anew keeps its standing, and comparing a thousand by value takes long. */
        private Set<Standing> standings(Content of) {
            Set<Standing> standings = Collections.newSetFromMap(new IdentityHashMap<>());
            of.ranked().places().forEach(p -> standings.add(p.standing()));
            return standings;
        }

        @Override
        public void failed(Request request, RuntimeException why) {
            judging.set(false);
            trouble.set(Texts.of("failed", why.getMessage()));
        }

        @Override
        public void progress(Request request, int count) {
            done.set(count);
        }
    }
}
