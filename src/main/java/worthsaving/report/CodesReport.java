package worthsaving.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import worthsaving.intake.CodeTable;
import worthsaving.intake.ReadCode;
import worthsaving.intake.ScanReport;
import worthsaving.intake.TroubleCode;
import worthsaving.intake.Vocabulary;

/** Trouble codes as read: who defines each, how the car holds it, what it stands for, or that it is not used. */
public final class CodesReport implements Report {

    private static final String FORMAT = "worthsaving/codes";
    private static final int VERSION = 1;

    private final ScanReport scan;
    private final Vocabulary vocabulary;

    /**
     * One code.
     *
     * @param findings ids of the catalogue; empty when the code is not used
     * @param use what it counts as, or why it is not used
     */
    public record Line(String code, String definedBy, String status, List<String> findings, String meaning, String use) {}

    public CodesReport(ScanReport scan, Vocabulary vocabulary) {
        this.scan = scan;
        this.vocabulary = vocabulary;
    }

    public List<Line> lines() {
        return scan.codes().stream().map(this::line).toList();
    }

    private Line line(ReadCode read) {
        TroubleCode code = read.code();
        List<String> findings = vocabulary.findings(code);
        String meaning = vocabulary.codes().row(code).map(CodeTable.Row::meaning).orElse("");
        boolean makers = code.definedBy() == TroubleCode.DefinedBy.MAKER;
        String use;
        if (read.status() == ReadCode.Status.PASSED) {
            use = "not used: the test passed";
        } else if (!findings.isEmpty()) {
            use = read.status().sight().name().toLowerCase(Locale.ROOT) + ": " + String.join(" ", findings);
        } else {
            use = makers ? "not used: the maker's own code" : "not used: the catalogue asks nothing like it";
        }
        return new Line(code.text(), code.definedBy().name().toLowerCase(Locale.ROOT),
                read.status().name().toLowerCase(Locale.ROOT), findings, meaning, use);
    }

    @Override
    public void text(Appendable out) throws IOException {
        TextTable table = new TextTable().left("code").left("defined by").left("status").left("use")
                .left("about", 60);
        for (Line line : lines()) {
            table.row(line.code(), line.definedBy(), line.status(), line.use(), line.meaning());
        }
        table.write(out);
        long used = lines().stream().filter(l -> !l.use().startsWith("not used")).count();
        out.append(lines().size() + " code(s) read, " + used + " used").append('\n');
        for (String note : scan.notes()) {
            out.append(TextTable.plain(note)).append('\n');
        }
    }

    @Override
    public void csv(Appendable out) throws IOException {
        CsvWriter csv = new CsvWriter(out, "code", "defined_by", "status", "findings", "meaning", "use");
        for (Line line : lines()) {
            csv.row(line.code(), line.definedBy(), line.status(),
                    line.findings().stream().collect(Collectors.joining(" ")), line.meaning(), line.use());
        }
    }

    @Override
    public void json(Appendable out) throws IOException {
        JsonReport json = new JsonReport(out, FORMAT, VERSION).beginList("codes");
        for (Line line : lines()) {
            json.element(line);
        }
        json.endList().field("notes", scan.notes()).end();
    }
}
