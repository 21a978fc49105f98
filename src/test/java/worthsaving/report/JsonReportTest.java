package worthsaving.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JsonReportTest {

    private record Car(String id, double ask, List<String> notes) {}

    @Test
    void begins_with_format_and_version_and_reads_back() throws IOException {
        StringBuilder out = new StringBuilder();
        new JsonReport(out, "worthsaving/test", 3)
                .field("one", new Car("A\u00e41", -1200.5, List.of("\"q\"", "\n")))
                .beginList("many").element(Map.of("k", 1)).element("text").endList()
                .end();

        assertThat(out.toString())
                .startsWith("{\n  \"format\" : \"worthsaving/test\",\n  \"version\" : 3")
                .endsWith("}\n");
        JsonNode read = new ObjectMapper().readTree(out.toString());
        assertThat(read.at("/one/id").asText()).isEqualTo("A\u00e41");
        assertThat(read.at("/one/ask").asDouble()).isEqualTo(-1200.5);
        assertThat(read.at("/one/notes/1").asText()).isEqualTo("\n");
        assertThat(read.at("/many")).hasSize(2);
    }
}
