package worthsaving.desktop.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import worthsaving.casebook.Actual;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Edit;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Typed;
import worthsaving.desktop.book.Bought;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.vehicle.Observation;

/** What is asked of a finished car, and what of it cannot be used yet; holds no control. On the screen thread only. */
public final class FinishModel {

    /** Items less likely than this are not asked about, unless the journal speaks of them. */
    private static final double WORTH_ASKING = 0.1;
    private static final int MOST_ITEMS = 8;

    /** What is typed. */
    public enum Field { BOUGHT, SOLD, PAID, SALE, COST, HOURS, DAYS_TO_SELL }

    private final RecordModel record;
    private final ReadOnlyObjectWrapper<CaseFile> of = new ReadOnlyObjectWrapper<>();
    private final Map<Field, StringProperty> texts = new EnumMap<>(Field.class);
    /** By item id; empty when it was not looked at. */
    private final Map<String, Optional<Boolean>> items = new LinkedHashMap<>();

    public FinishModel(RecordModel record) {
        this.record = record;
        for (Field field : Field.values()) {
            texts.put(field, new SimpleStringProperty(""));
        }
    }

    /** Begins with a case: what its journal and its forecast say is filled in. */
    public void begin(CaseFile file) {
        of.set(null);
        texts.values().forEach(t -> t.set(""));
        items.clear();
        items.putAll(asked(file));
        Optional<Bought> bought = record.book().bought(file.id());
        set(Field.BOUGHT, bought.map(b -> b.day().toString()));
        set(Field.SOLD, Optional.of(record.ground().today().toString()));
        set(Field.PAID, bought.map(b -> Figures.amount(b.paid().amount())));
        Optional<Money> receipts = receipts(file);
        set(Field.COST, bought.map(b -> Figures.amount(b.paid().amount() + receipts.map(Money::amount).orElse(0.0))));
        set(Field.HOURS, file.hours().value() > 0 ? Optional.of(Figures.number(file.hours().value(), 1)) : Optional.empty());
        of.set(file);
    }

    /** The case being finished; null before the first. */
    public ReadOnlyObjectProperty<CaseFile> caseProperty() {
        return of.getReadOnlyProperty();
    }

    public StringProperty text(Field field) {
        return texts.get(field);
    }

    /** What is wrong with a field and what mends it; blank when nothing is. */
    public String fault(Field field, String text) {
        return switch (field) {
            case BOUGHT -> day(text).fault();
            case SOLD -> sold(text).fault();
            case PAID, SALE, COST, HOURS -> Typed.amount(text, true).fault();
            case DAYS_TO_SELL -> Typed.amount(text, false).fault();
        };
    }

    /** Items to be asked about, most likely first, with what is known of each. */
    public Map<String, Optional<Boolean>> items() {
        return items;
    }

    /** @param failed empty when it was not looked at */
    public void found(String item, Optional<Boolean> failed) {
        items.put(item, failed);
    }

    /**
     * Keeps what came.
     *
     * @return whether everything typed could be used
     */
    public boolean finish() {
        for (Field field : Field.values()) {
            if (!fault(field, text(field).get()).isEmpty()) {
                return false;
            }
        }
        Map<String, Boolean> looked = new HashMap<>();
        items.forEach((item, failed) -> failed.ifPresent(f -> looked.put(item, f)));
        String id = of.get().id();
        Optional<Double> days = Typed.amount(text(Field.DAYS_TO_SELL).get(), false).value();
        Actual actual = new Actual(day(text(Field.BOUGHT).get()).value().orElseThrow(),
                sold(text(Field.SOLD).get()).value().orElseThrow(), money(Field.PAID), money(Field.SALE), money(Field.COST),
                Hours.of(amount(Field.HOURS)), days.map(OptionalDouble::of).orElse(OptionalDouble.empty()), looked);
        record.book().save(new Edit.Several(Texts.of("edit.finish", id), List.of(new Edit.Finish(id, Optional.of(actual)))));
        of.set(null);
        return true;
    }

    public String currency() {
        return record.ground().settings().terms().currency().getCurrencyCode();
    }

    private Typed<LocalDate> day(String text) {
        return Typed.day(text, true, record.ground().today());
    }

    private Typed<LocalDate> sold(String text) {
        Typed<LocalDate> sold = day(text);
        Optional<LocalDate> bought = day(text(Field.BOUGHT).get()).value();
        boolean before = sold.value().isPresent() && bought.isPresent() && sold.value().get().isBefore(bought.get());
        return before ? sold.but(Texts.of("finish.before", bought.get().toString())) : sold;
    }

    private double amount(Field field) {
        return Typed.amount(text(field).get(), true).value().orElseThrow();
    }

    private Money money(Field field) {
        return new Money(amount(field), record.ground().settings().terms().currency());
    }

    private void set(Field field, Optional<String> text) {
        text.ifPresent(texts.get(field)::set);
    }

    /** Empty also when they are in several currencies, which cannot be added up. */
    private static Optional<Money> receipts(CaseFile file) {
        try {
            return file.receipts();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Map<String, Optional<Boolean>> asked(CaseFile file) {
        Map<String, Optional<Boolean>> asked = new LinkedHashMap<>();
        for (Observation seen : file.asKnown().observations()) {
            boolean item = record.ground().catalogue().itemsById().containsKey(seen.subject());
            boolean sure = seen.sight() == Observation.Sight.PRESENT || seen.sight() == Observation.Sight.ABSENT;
            if (item && sure && seen.witness() == Observation.Witness.OWN_EYES) {
                asked.put(seen.subject(), Optional.of(seen.sight() == Observation.Sight.PRESENT));
            }
        }
        List<Map.Entry<String, Probability>> likely = new ArrayList<>();
        file.forecasts().stream().reduce((first, last) -> last).ifPresent(f -> likely.addAll(f.items().entrySet()));
        likely.sort(Map.Entry.<String, Probability>comparingByValue(
                (a, b) -> Double.compare(b.value(), a.value())).thenComparing(Map.Entry.comparingByKey()));
        likely.stream().filter(e -> e.getValue().value() >= WORTH_ASKING).limit(MOST_ITEMS)
                .forEach(e -> asked.putIfAbsent(e.getKey(), Optional.empty()));
        return asked;
    }
}
