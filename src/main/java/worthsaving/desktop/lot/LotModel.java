package worthsaving.desktop.lot;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import worthsaving.desktop.lot.LotWork.Content;
import worthsaving.desktop.lot.LotWork.Request;
import worthsaving.ranking.Order;
import worthsaving.vehicle.Listing;

/** The lot as the screen shows it; holds no control. To be used on the screen thread only. */
public final class LotModel {

    private volatile LotWork work;
    private final LatestWins<Request, Content> reckoner;
    private final ScreenThread screen;
    private final ReadOnlyObjectWrapper<Currency> currency = new ReadOnlyObjectWrapper<>();
    private Optional<Path> table = Optional.empty();
    private final Adverts adverts;
    private final ChoiceModel choice;
    private final CompareModel comparison;
    private final ObservableList<LotRow> rows = FXCollections.observableArrayList();
    private final ObservableList<Problem> problems = FXCollections.observableArrayList();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyIntegerWrapper done = new ReadOnlyIntegerWrapper();
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    /** Changes not yet judged, by listing id; none is lost when a newer request overtakes it. */
    private final Map<String, Listing> held = new LinkedHashMap<>();
    private Content content = Content.EMPTY;
    private Order order = Order.EXPECTED_PROFIT;
    private boolean opening;

    public LotModel(Ground ground, Executor background, ScreenThread screen) {
        this.work = new LotWork(ground);
        this.screen = screen;
        this.currency.set(ground.settings().terms().currency());
        this.adverts = new Adverts(ground, id -> listing(id).isPresent(), this::change, background, screen);
        this.choice = new ChoiceModel(ground.settings().method().seed(), background, screen);
        this.comparison = new CompareModel(() -> work.judge(), background, screen);
        this.reckoner = new LatestWins<>(
                (request, cancelled, progress) -> work.of(request, cancelled, progress), (running, newer) -> false,
                new Arrival(), background, screen);
    }

    /** Reads a table and judges its listings; the lot shown stays until that is done. */
    public void open(Path table) {
        opening = true;
        this.table = Optional.of(table);
        submit(new Request.Open(table));
    }

    /** Judges a listing that was changed, or adds it. */
    public void change(Listing listing) {
        held.put(listing.id(), listing);
        if (!opening) {
            submitHeld();
        }
    }

    /**
     * Judges every car anew on other ground. On a market with other money the table is read again, since a price
     * without a currency is then in that money; what was changed by hand stays.
     */
    public void use(Ground ground) {
        screen.require();
        boolean otherMoney = !ground.settings().terms().currency().equals(currency.get());
        work = new LotWork(ground);
        currency.set(ground.settings().terms().currency());
        adverts.use(ground);
        if (otherMoney && table.isPresent()) {
            content.editedListings().forEach(l -> held.putIfAbsent(l.id(), l));
            open(table.get());
        } else {
            submit(new Request.Again(content, order));
        }
    }

    /** Every car of the lot, judged or refused. */
    public List<Listing> listings() {
        return content.listings();
    }

    public void order(Order other) {
        order = other;
        if (!opening) {
            submit(new Request.Sort(content, other));
        }
    }

    /** Stops judging; what was shown before stays. */
    public void cancel() {
        reckoner.cancel();
        opening = false;
        busy.set(false);
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

    /** Name of the table. */
    public ReadOnlyStringProperty titleProperty() {
        return title.getReadOnlyProperty();
    }

    /** What went wrong last, in words; blank when nothing did. */
    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    public boolean hasRefusedRows() {
        return !content.refusedRows().isEmpty();
    }

    /** Writes the rows left out as they stood in the table, under its header, for mending and reading again. */
    public void saveRefusedRows(Path file) throws IOException {
        StringBuilder text = new StringBuilder(content.header()).append('\n');
        content.refusedRows().forEach(row -> text.append(row).append('\n'));
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    private void submitHeld() {
        submit(new Request.Change(content, List.copyOf(held.values()), order));
    }

    private void submit(Request request) {
        screen.require();
        busy.set(true);
        done.set(0);
        trouble.set("");
        reckoner.submit(request);
    }

    private final class Arrival implements LatestWins.Listener<Request, Content> {

        @Override
        public void done(Request request, Content output, boolean latest) {
            content = output;
            if (!(request instanceof Request.Sort)) {
                choice.clear();
            }
            rows.setAll(work.rows(output));
            problems.setAll(output.problems());
            title.set(output.title());
            busy.set(!latest);
            if (request instanceof Request.Open) {
                opening = false;
                if (order != output.order()) {
                    order(order);
                }
            } else if (request instanceof Request.Change change) {
                held.values().removeAll(change.changed());
            }
            if (!held.isEmpty() && !opening) {
                submitHeld();
            }
        }

        @Override
        public void failed(Request request, RuntimeException why) {
            busy.set(false);
            opening = false;
            held.clear();
            if (why instanceof LotWork.UnreadableTable unreadable) {
                problems.setAll(unreadable.problems());
                trouble.set(Texts.of("lot.unreadable", why.getMessage()));
            } else {
                trouble.set(Texts.of("failed", why.getMessage()));
            }
        }

        @Override
        public void progress(Request request, int count) {
            done.set(count);
        }
    }
}
