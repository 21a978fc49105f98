package worthsaving.report.sheet;

import java.util.Locale;

/** The colours of a sheet. Good and bad also differ in lightness, so that a black and white print tells them apart. */
enum Ink {
    TEXT(0x1b1f24),
    SOFT(0x59626d),
    LINE(0xc9ced6),
    PANEL(0xf2f4f7),
    PAPER(0xffffff),
    GO(0x1f7a4d),
    CARE(0x8a5a00),
    STOP(0xa3201a),
    PLAIN(0x2f5d8a),
    GOOD_BAR(0xa9bfd6),
    BAD_BAR(0x8e3b36);

    private final int rgb;

    Ink(int rgb) {
        this.rgb = rgb;
    }

    static Ink of(Tone tone) {
        return switch (tone) {
            case GO -> GO;
            case CARE -> CARE;
            case STOP -> STOP;
            case PLAIN -> PLAIN;
        };
    }

    float red() {
        return (rgb >> 16 & 0xff) / 255f;
    }

    float green() {
        return (rgb >> 8 & 0xff) / 255f;
    }

    float blue() {
        return (rgb & 0xff) / 255f;
    }

    /** Such as {@code "#1b1f24"}. */
    String css() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }
}
