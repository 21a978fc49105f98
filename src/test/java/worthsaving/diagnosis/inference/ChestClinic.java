package worthsaving.diagnosis.inference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The chest clinic network, often called Asia. Source: Lauritzen and Spiegelhalter (1988), Journal of
 * the Royal Statistical Society B 50:157, tables as given at https://rdrr.io/cran/gRain/man/example_chest.html.
 */
final class ChestClinic {

    /** Visit to Asia, tuberculosis, smoking, lung cancer, bronchitis, either, x-ray, dyspnoea. */
    static final List<String> NAMES = List.of("A", "T", "S", "L", "B", "E", "X", "D");

    private ChestClinic() {}

    static List<Table> tables(Map<String, Integer> evidence) {
        List<Table> tables = new ArrayList<>(List.of(
                Table.of(0, 0.01, 0.99),
                Table.conditional(1, new int[] {0}, 0.01, 0.05),
                Table.of(2, 0.5, 0.5),
                Table.conditional(3, new int[] {2}, 0.01, 0.1),
                Table.conditional(4, new int[] {2}, 0.3, 0.6),
                Table.conditional(5, new int[] {1, 3}, 0, 1, 1, 1),
                Table.conditional(6, new int[] {5}, 0.05, 0.98),
                Table.conditional(7, new int[] {4, 5}, 0.1, 0.8, 0.7, 0.9)));
        evidence.forEach((name, state) -> tables.add(Table.of(NAMES.indexOf(name), state, 1 - state)));
        return tables;
    }
}
