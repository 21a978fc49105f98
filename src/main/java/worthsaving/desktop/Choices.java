package worthsaving.desktop;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;

/** Lists to choose one thing from. */
public final class Choices {

    private Choices() {}

    /** @param prefix of the texts of the constants, and the id of the box */
    public static <E extends Enum<E>> ComboBox<E> of(String prefix, E[] values, E now, Consumer<? super E> onChoice) {
        return box(List.of(values), now, value -> Texts.of(prefix, value), onChoice);
    }

    /** As {@link #of}, with "not stated" as a further choice. */
    public static <E extends Enum<E>> ComboBox<Optional<E>> orNone(
            String prefix, E[] values, Optional<E> now, Consumer<? super Optional<E>> onChoice) {
        List<Optional<E>> all = Stream.concat(Stream.of(Optional.<E>empty()), Stream.of(values).map(Optional::of))
                .toList();
        return box(all, now, value -> value.map(v -> Texts.of(prefix, v)).orElse(Texts.of("choice.none")), onChoice);
    }

    public static <T> ComboBox<T> box(List<T> values, T now, Function<T, String> text, Consumer<? super T> onChoice) {
        ComboBox<T> box = new ComboBox<>();
        box.getItems().addAll(values);
        box.setValue(now);
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(T value) {
                return value == null ? "" : text.apply(value);
            }

            @Override
            public T fromString(String unused) {
                throw new UnsupportedOperationException("the list cannot be typed into");
            }
        });
        box.valueProperty().addListener((o, was, is) -> onChoice.accept(is));
        return box;
    }
}
