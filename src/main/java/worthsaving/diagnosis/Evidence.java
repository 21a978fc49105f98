package worthsaving.diagnosis;

import java.util.Map;
import java.util.TreeMap;

/**
 * What has been seen so far.
 *
 * @param findings by finding id; absent ids were not looked at
 * @param items by item id: items looked at directly, or claimed by the seller
 */
public record Evidence(Map<String, Likelihood> findings, Map<String, Likelihood> items) {

    public static final Evidence NONE = new Evidence(Map.of(), Map.of());

    public Evidence {
        findings = Map.copyOf(findings);
        items = Map.copyOf(items);
    }

    public Evidence withFinding(String id, Likelihood likelihood) {
        Map<String, Likelihood> more = new TreeMap<>(findings);
        more.put(id, likelihood);
        return new Evidence(more, items);
    }

    public Evidence withItem(String id, Likelihood likelihood) {
        Map<String, Likelihood> more = new TreeMap<>(items);
        more.put(id, likelihood);
        return new Evidence(findings, more);
    }

    public Evidence withoutFinding(String id) {
        Map<String, Likelihood> fewer = new TreeMap<>(findings);
        fewer.remove(id);
        return new Evidence(fewer, items);
    }

    public Evidence withoutItem(String id) {
        Map<String, Likelihood> fewer = new TreeMap<>(items);
        fewer.remove(id);
        return new Evidence(findings, fewer);
    }
}
