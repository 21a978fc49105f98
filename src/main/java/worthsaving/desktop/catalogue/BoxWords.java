package worthsaving.desktop.catalogue;

import java.util.Locale;
import java.util.ResourceBundle;

/** What each thing to fill in is called, and what it means, in a mechanic's words. */
final class BoxWords {

    static final ResourceBundle BUNDLE =
            ResourceBundle.getBundle("worthsaving.desktop.catalogue", Locale.ROOT);

    private BoxWords() {}

    static String name(String key) {
        return BUNDLE.getString(key);
    }

    static String meaning(String key) {
        return BUNDLE.getString(key + ".why");
    }

    /** A group of the list as it is read; one without a text of its own stands as it is. */
    static String group(String group) {
        String key = "group." + group;
        return BUNDLE.containsKey(key) ? BUNDLE.getString(key) : group;
    }
}
