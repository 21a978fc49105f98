package worthsaving.intake.advert;

import java.util.List;
import java.util.Optional;

/** A symptom word, the finding it stands for, the running state it implies and the symptoms it makes superfluous. */
record SymptomKind(String word, Optional<String> finding, Optional<String> state, List<String> hides) {}
