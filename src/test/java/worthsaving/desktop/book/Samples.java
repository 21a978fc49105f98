package worthsaving.desktop.book;

import java.nio.file.Path;
import worthsaving.desktop.Ground;
import worthsaving.intake.Vocabulary;

/** The shipped sample, for tests. */
public final class Samples {

    private Samples() {}

    public static Sample shipped(Ground ground) {
        return new SampleFiles(Path.of("shared", "samples"),
                Vocabulary.of(ground.catalogue(), ground.makes(), ground.adverts().codes()), ground.catalogue(),
                ground.today()).read();
    }
}
