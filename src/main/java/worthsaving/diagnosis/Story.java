package worthsaving.diagnosis;

import java.util.List;
import worthsaving.quantity.Probability;

/** One joint state of the items that matter: these have failed together while those are sound. */
public record Story(List<String> failed, List<String> sound, Probability probability) {

    public Story {
        failed = List.copyOf(failed);
        sound = List.copyOf(sound);
    }
}
