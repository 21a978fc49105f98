package worthsaving.desktop.car;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Moved sliders as one line of text, such as {@code "PRICE=900.0;item HEAD_GASKET=35.0"}. */
final class LeverText {

    private static final String ITEM = "item ";

    private LeverText() {}

    /** In an order that does not change; blank when none is moved. */
    static String write(Map<Dial, Double> levers) {
        List<String> parts = new ArrayList<>();
        levers.forEach((dial, value) -> parts.add(
                (dial instanceof ItemDial item ? ITEM + item.item() : ((Lever) dial).name()) + "=" + value));
        parts.sort(null);
        return String.join(";", parts);
    }

    /**
     * What is not understood, such as an item that the catalogue no longer has, is left out.
     *
     * @param itemName name of an item of the catalogue
     */
    static Map<Dial, Double> read(String text, Function<String, Optional<String>> itemName) {
        Map<Dial, Double> levers = new HashMap<>();
        for (String part : text.split(";")) {
            int equals = part.indexOf('=');
            if (equals > 0) {
                dial(part.substring(0, equals), itemName).ifPresent(dial -> number(part.substring(equals + 1))
                        .ifPresent(value -> levers.put(dial, value)));
            }
        }
        return levers;
    }

    private static Optional<Dial> dial(String name, Function<String, Optional<String>> itemName) {
        if (name.startsWith(ITEM)) {
            String item = name.substring(ITEM.length());
            return itemName.apply(item).map(n -> new ItemDial(item, n));
        }
        for (Lever lever : Lever.values()) {
            if (lever.name().equals(name)) {
                return Optional.of(lever);
            }
        }
        return Optional.empty();
    }

    private static Optional<Double> number(String text) {
        try {
            double value = Double.parseDouble(text);
            return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
