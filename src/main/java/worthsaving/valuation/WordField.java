package worthsaving.valuation;

import java.util.List;
import java.util.function.Function;

/** The facts that are words from a short list. */
enum WordField {
    CONDITION(CarFacts::condition),
    FUEL(CarFacts::fuel),
    GEARBOX(CarFacts::gearbox),
    BODY(CarFacts::body),
    DRIVE(CarFacts::drive),
    TITLE(CarFacts::title);

    static final List<WordField> ALL = List.of(values());

    private final Function<CarFacts, String> word;

    WordField(Function<CarFacts, String> word) {
        this.word = word;
    }

    String of(CarFacts car) {
        return word.apply(car);
    }
}
