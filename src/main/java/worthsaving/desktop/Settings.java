package worthsaving.desktop;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.prefs.Preferences;

/** Small things remembered from one start to the next: theme, text size, columns. Nothing of the user's work. */
public interface Settings {

    Optional<String> get(String key);

    void put(String key, String value);

    /** Kept by the system for this user. */
    static Settings ofUser() {
        Preferences node = Preferences.userRoot().node("worthsaving/desktop");
        return new Settings() {
            @Override
            public Optional<String> get(String key) {
                return Optional.ofNullable(node.get(key, null));
            }

            @Override
            public void put(String key, String value) {
                node.put(key, value);
            }
        };
    }

    /** Forgotten at the end. */
    static Settings inMemory() {
        Map<String, String> map = new ConcurrentHashMap<>();
        return new Settings() {
            @Override
            public Optional<String> get(String key) {
                return Optional.ofNullable(map.get(key));
            }

            @Override
            public void put(String key, String value) {
                map.put(key, value);
            }
        };
    }
}
