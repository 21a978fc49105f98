package worthsaving.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import worthsaving.intake.PlainText;
import worthsaving.intake.advert.AdvertPile;
import worthsaving.intake.advert.AdvertReader;
import worthsaving.intake.advert.AdvertReading;
import worthsaving.intake.advert.SavedPage;
import worthsaving.report.TextTable;

/** Adverts out of files, folders and standard input; what cannot be read is told with its reason. */
final class SavedAdverts {

    private static final Set<String> ENDINGS = Set.of("txt", "text", "md", "html", "htm", "eml", "mht", "mhtml", "");

    /** One advert: what to call it, where it stands, what was read. */
    record Entry(String id, String origin, AdvertReading reading) {}

    private final AdvertReader reader;
    private final AdvertPile pile;
    private final LocalDate today;
    private final PrintWriter err;
    private final List<Entry> entries = new ArrayList<>();
    private int refused;

    SavedAdverts(AdvertReader reader, LocalDate today, PrintWriter err) {
        this.reader = reader;
        this.pile = new AdvertPile(reader);
        this.today = today;
        this.err = err;
    }

    List<Entry> entries() {
        return entries;
    }

    /** Files and texts in them that were left out. */
    int refused() {
        return refused;
    }

    void standardInput() throws IOException {
        PlainText text = PlainText.read(new ByteArrayInputStream(
                System.in.readNBytes(SavedPage.MOST_BYTES)), SavedPage.MOST_BYTES);
        text(text.text(), "the advert");
    }

    /** @throws UserError when there is no such file or folder */
    void add(Path path) throws IOException {
        if (Files.isDirectory(path)) {
            try (Stream<Path> inside = Files.list(path)) {
                for (Path file : inside.filter(Files::isRegularFile).sorted().toList()) {
                    if (ENDINGS.contains(ending(file))) {
                        file(file);
                    } else {
                        refuse(file.getFileName().toString(), "a file ending in ." + ending(file)
                                + " is no saved advert; save it as text, HTML or mail");
                    }
                }
            }
        } else if (Files.isRegularFile(path)) {
            file(path);
        } else {
            throw new UserError(ExitCode.FILE_UNUSABLE, "There is no file " + path);
        }
    }

    private static String ending(Path file) {
        String name = file.getFileName().toString();
        int point = name.lastIndexOf('.');
        return point < 0 ? "" : name.substring(point + 1).toLowerCase(Locale.ROOT);
    }

    private void file(Path file) throws IOException {
        String name = file.getFileName().toString();
        if (Files.size(file) > SavedPage.MOST_BYTES) {
            refuse(name, "it is larger than " + SavedPage.MOST_BYTES + " bytes; save the advert alone");
            return;
        }
        SavedPage page = SavedPage.of(name, Files.readAllBytes(file));
        if (page.problem().isPresent()) {
            refuse(name, page.problem().get());
        } else {
            text(page.text(), name);
        }
    }

    private void text(String text, String origin) {
        List<String> parts = pile.split(text, today);
        if (parts.isEmpty()) {
            refuse(origin, "there is no text in it");
        }
        for (int i = 0; i < parts.size(); i++) {
            String where = parts.size() == 1 ? origin : origin + ", advert " + (i + 1);
            AdvertReading reading = reader.read(parts.get(i), today);
            if (reading.car().make().isEmpty() && reading.car().model().isEmpty()) {
                refuse(where, "no make or model that the vocabulary knows; it begins '"
                        + parts.get(i).substring(0, Math.min(50, parts.get(i).length())).replace('\n', ' ') + "'");
            } else {
                entries.add(new Entry("advert" + (entries.size() + 1), where, reading));
            }
        }
    }

    private void refuse(String where, String why) {
        refused++;
        err.println(TextTable.plain(where + ": " + why));
    }
}
