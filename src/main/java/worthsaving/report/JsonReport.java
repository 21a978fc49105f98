package worthsaving.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.io.Writer;
import java.nio.CharBuffer;

/**
 * Writes one JSON object piece by piece, so that a long list of results need not be held. It begins with
 * {@code "format"} and {@code "version"}; a change that a reader of the old version would stumble over
 * raises the version. Values may be records, maps, lists, text and finite numbers.
 */
public final class JsonReport {

    private static final ObjectMapper MAPPER =
            new ObjectMapper().disable(SerializationFeature.FLUSH_AFTER_WRITE_VALUE);

    private final JsonGenerator json;

    /**
     * @param format name of the kind of report, such as {@code "worthsaving/lot-check"}
     * @param version from 1
     */
    public JsonReport(Appendable out, String format, int version) throws IOException {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter layout = new DefaultPrettyPrinter();
        layout.indentObjectsWith(lines);
        layout.indentArraysWith(lines);
        json = MAPPER.getFactory().createGenerator(new AppendableWriter(out));
        json.setPrettyPrinter(layout);
        json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        json.writeStartObject();
        field("format", format);
        field("version", version);
    }

    public JsonReport field(String name, Object value) throws IOException {
        json.writeFieldName(name);
        MAPPER.writeValue(json, value);
        return this;
    }

    public JsonReport beginList(String name) throws IOException {
        json.writeArrayFieldStart(name);
        return this;
    }

    public JsonReport element(Object value) throws IOException {
        MAPPER.writeValue(json, value);
        return this;
    }

    public JsonReport endList() throws IOException {
        json.writeEndArray();
        return this;
    }

    public void end() throws IOException {
        json.writeEndObject();
        json.writeRaw('\n');
        json.close();
    }

    private static final class AppendableWriter extends Writer {
        private final Appendable out;

        private AppendableWriter(Appendable out) {
            this.out = out;
        }

        @Override
        public void write(char[] buffer, int offset, int length) throws IOException {
            out.append(CharBuffer.wrap(buffer, offset, length));
        }

        @Override
        public void flush() {
            // whoever owns the target flushes it
        }

        @Override
        public void close() {
            // whoever owns the target closes it
        }
    }
}
