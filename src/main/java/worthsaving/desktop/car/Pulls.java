package worthsaving.desktop.car;

import worthsaving.desktop.Figures;

/** How strongly a finding speaks for or against an item, in words; the limits are a choice of wording. */
final class Pulls {

    private static final double STRONG = Math.log(10);
    private static final double CLEAR = Math.log(3);

    private Pulls() {}

    static String key(double logRatio) {
        String side = logRatio > 0 ? "for" : "against";
        double size = Math.abs(logRatio);
        return "pull." + side + (size >= STRONG ? ".strong" : size >= CLEAR ? ".clear" : ".weak");
    }

    static String arrow(double logRatio) {
        int count = Math.abs(logRatio) >= STRONG ? 3 : Math.abs(logRatio) >= CLEAR ? 2 : 1;
        return (logRatio > 0 ? "\u25b2" : "\u25bd").repeat(count);
    }

    /** The ratio itself, always one or more. */
    static String times(double logRatio) {
        double ratio = Math.exp(Math.abs(logRatio));
        return ratio > 1_000 ? "> 1,000" : Figures.number(ratio, ratio < 10 ? 1 : 0);
    }
}
