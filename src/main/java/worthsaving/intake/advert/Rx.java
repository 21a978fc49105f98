package worthsaving.intake.advert;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** Whole-text matches with each expression compiled once; adverts are read by the thousand. */
final class Rx {

    private static final Map<String, Pattern> COMPILED = new ConcurrentHashMap<>();

    private Rx() {}

    /** @param regex a constant of the code, never a text from outside */
    static boolean is(CharSequence text, String regex) {
        return COMPILED.computeIfAbsent(regex, Pattern::compile).matcher(text).matches();
    }
}
