package worthsaving.desktop;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** Every word the window shows that does not come from the core. */
public final class Texts {

    static final ResourceBundle BUNDLE = ResourceBundle.getBundle("worthsaving.desktop.texts", Locale.ROOT);

    private Texts() {}

    /**
     * @param values put into {0}, {1}, ... as they are; numbers are formatted beforehand by {@link Figures}
     * @throws java.util.MissingResourceException for an unknown key
     */
    public static String of(String key, Object... values) {
        return new MessageFormat(BUNDLE.getString(key), Locale.ROOT).format(values);
    }

    /** The text of an enum constant, under the key prefix.name in lower case. */
    public static String of(String prefix, Enum<?> constant) {
        return of(key(prefix, constant));
    }

    static String key(String prefix, Enum<?> constant) {
        return prefix + "." + constant.name().toLowerCase(Locale.ROOT);
    }
}
