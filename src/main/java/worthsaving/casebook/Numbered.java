package worthsaving.casebook;

/** A thing of the casebook with the number by which it is changed or taken out. */
public record Numbered<T>(long number, T value) {}
