package worthsaving.desktop.market;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** What the user has written down about markets, by name. */
public interface MarketNotes {

    Optional<String> get(String name);

    /** @param text empty to forget */
    void put(String name, Optional<String> text);

    /** Whether what is put will be there to be got; otherwise it is refused. */
    default boolean keeps() {
        return true;
    }

    /** Forgotten at the end. */
    static MarketNotes inMemory() {
        Map<String, String> map = new ConcurrentHashMap<>();
        return new MarketNotes() {
            @Override
            public Optional<String> get(String name) {
                return Optional.ofNullable(map.get(name));
            }

            @Override
            public void put(String name, Optional<String> text) {
                text.ifPresentOrElse(t -> map.put(name, t), () -> map.remove(name));
            }
        };
    }
}
