package worthsaving.ranking;

import java.util.Collection;
import java.util.Comparator;

/** How a lot is put in order. */
public interface Ordering {

    /** Best first, among these and no others. */
    Comparator<Standing> among(Collection<Standing> lot);
}
