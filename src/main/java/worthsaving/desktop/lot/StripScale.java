package worthsaving.desktop.lot;

import java.util.Arrays;
import java.util.List;

/** The money axis that all outcome strips share; always holds zero. The most extreme twentieth is cut off. */
public record StripScale(double low, double high) {

    private static final double CUT = 0.05;

    static StripScale of(List<LotRow> rows) {
        if (rows.isEmpty()) {
            return new StripScale(-1, 1);
        }
        double[] lows = rows.stream().mapToDouble(r -> r.standing().strip().get(0)).sorted().toArray();
        double[] highs = rows.stream().mapToDouble(r -> r.standing().strip().get(9)).map(x -> -x).sorted().toArray();
        int cut = (int) (CUT * rows.size());
        double low = Math.min(0, lows[cut]);
        double high = Math.max(0, -Arrays.stream(highs).skip(cut).findFirst().orElse(0));
        return high > low ? new StripScale(low, high) : new StripScale(-1, 1);
    }

    /** Position from 0 at the left end to 1 at the right. */
    double at(double money) {
        return Math.max(0, Math.min(1, (money - low) / (high - low)));
    }
}
