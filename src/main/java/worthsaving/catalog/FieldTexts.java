package worthsaving.catalog;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import worthsaving.quantity.Hours;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/** The figures of a catalogue line as short texts, nested ones under a dotted name. */
final class FieldTexts {

    private final Map<String, String> texts = new LinkedHashMap<>();

    private FieldTexts() {}

    /** Texts by field, in the order of the record's components. */
    static Map<String, String> of(Record line) {
        FieldTexts fields = new FieldTexts();
        fields.addComponents("", line);
        return fields.texts;
    }

    private void addComponents(String prefix, Record line) {
        for (RecordComponent component : line.getClass().getRecordComponents()) {
            add(prefix + component.getName(), value(component, line));
        }
    }

    private void add(String name, Object value) {
        if (value instanceof Map<?, ?> map) {
            new TreeMap<>(map).forEach((key, entry) -> add(name + "." + key, entry));
        } else if (value instanceof Applicability || value instanceof Onset) {
            addComponents(name + ".", (Record) value);
        } else {
            texts.put(name, text(value));
        }
    }

    private static String text(Object value) {
        if (value instanceof Range range) {
            return range.low() + " / " + range.mode() + " / " + range.high();
        }
        if (value instanceof MoneyRange money) {
            return money.currency() + " " + text(money.amount());
        }
        if (value instanceof HoursRange hours) {
            return text(hours.hours()) + " h";
        }
        if (value instanceof Hours hours) {
            return hours.value() + " h";
        }
        if (value instanceof Money || value instanceof Enum<?> || value instanceof Number || value instanceof Boolean) {
            return value.toString();
        }
        if (value instanceof Probability probability) {
            return Double.toString(probability.value());
        }
        if (value instanceof Source source) {
            return source.label() + ", " + source.text();
        }
        if (value instanceof Collection<?> many) {
            return many.stream().map(FieldTexts::text).sorted().collect(Collectors.joining(" "));
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(FieldTexts::text).orElse("");
        }
        return String.valueOf(value);
    }

    private static Object value(RecordComponent component, Record line) {
        try {
            return component.getAccessor().invoke(line);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("a record's own accessor is public", e);
        }
    }
}
