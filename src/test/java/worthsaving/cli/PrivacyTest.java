package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing calls out, and nothing that an imported file names is opened. */
class PrivacyTest {

    private static final List<String> OPTIONS = List.of(
            "-Djava.nio.channels.spi.SelectorProvider=" + ClosedChannels.class.getName());

    @TempDir
    Path folder;

    private Processes.Ended watched(List<String> arguments) throws Exception {
        Processes.Ended ended = Processes.java(folder, OPTIONS, Map.of(), Watched.class.getName(),
                arguments.toArray(String[]::new));
        assertThat(ended.code()).as(ended.err()).isZero();
        return ended;
    }

    private static List<String> lines(Processes.Ended ended, String kind) {
        return ended.out().lines().filter(l -> l.startsWith(kind + " ")).map(l -> l.substring(kind.length() + 1)).toList();
    }

    private static void add(List<String> all, String... command) {
        if (!all.isEmpty()) {
            all.add(Watched.NEXT);
        }
        all.addAll(List.of(command));
    }

    /** Each way that is tried must be seen, or the other tests show nothing. */
    @Test
    void the_watch_sees_the_network_and_files() throws Exception {
        Path canary = Files.writeString(folder.resolve("canary.txt"), "read me");
        Processes.Ended ended = watched(List.of(Watched.TRY_NETWORK, canary.toString()));

        assertThat(ended.out()).doesNotContain("missed");
        assertThat(lines(ended, "net")).hasSizeGreaterThanOrEqualTo(4)
                .contains("URL of http", "socket").anyMatch(l -> l.contains("channel"));
        assertThat(lines(ended, "file")).contains(canary.toString());
    }

    @Test
    void links_and_paths_in_what_is_imported_are_not_followed() throws Exception {
        Path secret = Files.createDirectory(folder.resolve("secret"));
        for (String name : List.of("canary.txt", "canary.png", "canary.css", "canary.dtd", "canary.html", "canary.csv")) {
            Files.writeString(secret.resolve(name), "id,year,make,model,price\nCANARY,2009,canary,canary,1\n");
        }
        List<String> commands = new ArrayList<>();
        Path adverts = adverts(secret);
        add(commands, "advert", "--today", "2026-01-15", adverts.toString());
        Path lot = lot(secret);
        String book = folder.resolve("casebook.db").toString();
        add(commands, "judge", lot.toString(), "--today", "2026-01-15");
        add(commands, "rank", lot.toString(), "--today", "2026-01-15");
        add(commands, "lot", "check", lot.toString());
        add(commands, "sheet", lot.toString(), "--today", "2026-01-15", "--to", folder.resolve("s.pdf").toString());
        add(commands, "sheet", lot.toString(), "--today", "2026-01-15", "--to", folder.resolve("s.html").toString());
        add(commands, "casebook", "add", lot.toString(), "--casebook", book);
        add(commands, "casebook", "forecast", "A1", "--casebook", book);
        add(commands, "casebook", "show", "A1", "--casebook", book);

        Processes.Ended ended = watched(commands);

        assertThat(lines(ended, "code")).hasSize(9)
                .allSatisfy(l -> assertThat(l).as(ended.err()).matches("[01] .* printed \\d+ characters"));
        assertThat(lines(ended, "net")).isEmpty();
        assertThat(lines(ended, "file")).as("the watch saw what was imported").contains(lot.toString())
                .noneMatch(f -> f.contains("canary"));
        assertThat(ended.out()).doesNotContain("CANARY");
        assertThat(Files.readString(folder.resolve("s.html"))).as("the sheet refers to nothing")
                .doesNotContainPattern("(?i)(src|href)\\s*=\\s*[\"']?(https?:|file:|//)").doesNotContain("@import");
    }

    /** A lot whose cells name files, among them the story that a sheet prints. */
    private Path lot(Path secret) throws IOException {
        String story = "see file://" + secret + "/canary.txt and http://localhost:9/canary or ../secret/canary.csv";
        return Files.writeString(folder.resolve("lot.csv"), "id,year,make,model,odometer,price,currency,title,present,story\n"
                + "A1,2014,honda,civic,98000,900,USD,clean,NO_CRANK,\"" + story + "\"\n"
                + "../secret/canary,2012,toyota,corolla,120000,1100,USD,clean,,"
                + "\"<img src='file://" + secret + "/canary.png'>\"\n");
    }

    private Path adverts(Path secret) throws IOException {
        Path adverts = Files.createDirectory(folder.resolve("adverts"));
        String file = secret.toUri().toString();
        Files.writeString(adverts.resolve("a.html"), """
                <?xml version="1.0"?>
                <!DOCTYPE html SYSTEM "FILEcanary.dtd" [<!ENTITY leak SYSTEM "FILEcanary.txt">
                <!ENTITY % more SYSTEM "http://localhost:9/canary.dtd"> %more;]>
                <html><head><base href="FILE"><link rel="stylesheet" href="canary.css">
                <meta http-equiv="refresh" content="0;url=http://localhost:9/canary">
                <script src="http://localhost:9/canary.js"></script>
                <style>@import url("FILEcanary.css");</style></head>
                <body background="FILEcanary.png"><iframe src="FILEcanary.html"></iframe>
                <p>2012 Toyota Corolla LE, 120k mi, $2,900 &leak; <img src="../secret/canary.png">
                <a href="file:///etc/hostname">papers</a> <object data="FILEcanary.html"></object></p></body></html>
                """.replace("FILE", file));
        Files.writeString(adverts.resolve("b.txt"), "2014 Honda Civic LX, 98k, no start, $2,600, pictures at "
                + file + "canary.png, http://localhost:9/canary and ../secret/canary.txt");
        Files.writeString(adverts.resolve("c.eml"), """
                From: someone@example.org
                Subject: car
                MIME-Version: 1.0
                Content-Type: multipart/mixed; boundary=b

                --b
                Content-Type: message/external-body; access-type=local-file; name="SECRET/canary.txt"

                Content-Type: text/plain

                --b
                Content-Type: text/plain

                2011 Ford Escape XLT 140k miles overheats, $1,500 obo
                --b--
                """.replace("SECRET", secret.toString()));
        return adverts;
    }
}
