package worthsaving.intake.advert;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faults in the vocabulary are all listed, with file and line. */
class VocabularyTest {

    private static Function<String, Reader> with(String file, String text) {
        return name -> name.equals(file) ? (text == null ? null : new StringReader(text)) : Vocabularies.open(name);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "spelling.csv | written,means\\na,b\\na,c | spelling.csv, line 3: 'a' is listed twice",
        "models.csv | # x\\nmake,model,aliases,usual,priced_as,weak\\nNobody,X,,,, | models.csv, line 3: make 'Nobody' is not in makes.csv",
        "models.csv | make,model,aliases,usual,priced_as,weak\\nFord,X,,STEAM,, | line 2: column usual holds 'STEAM'",
        "models.csv | make,model,aliases,usual,priced_as,weak\\nFord,X,,,,perhaps | line 2: column weak holds 'perhaps'",
        "models.csv | make,model,aliases,usual,priced_as,weak\\nFord,X,,,nowhere, | line 2: column priced_as holds 'nowhere'",
        "trims.csv | kind,trim,aliases,makes,near\\nLEVEL,X,,,maybe | line 2: column near holds 'maybe'; write yes or no",
        "trims.csv | kind,trim,aliases,makes,near\\nSHINE,X,,,no | line 2: 'SHINE' is not one of",
        "phrases.csv | kind,means,phrase\\nsymptom,toothache,it hurts | phrases.csv, line 2: 'toothache' is not listed in symptoms.csv",
        "phrases.csv | kind,means,phrase\\nsong,x,la la | line 2: kind 'song' is not one of",
        "phrases.csv | kind,means,phrase\\nitem,X,{nope} start | line 2: no class of words named '{nope}'",
        "phrases.csv | kind,means,phrase\\nitem,X,start? | line 2: the phrase 'start?' has no word that must be there",
        "phrases.csv | kind,means,phrase\\ntitle,SHINY,shiny title | line 2: 'SHINY' is not one of",
        "money.csv | role,side,reach,weight,phrase\\nASK,before,x,3,asking | line 2: reach and weight must be numbers",
        "implied.csv | when,then\\ntoothache,no_start | implied.csv, line 2: 'toothache' is not listed",
        "places.csv | kind,name,region,country\\nPLANET,Mars,,XX | line 2: kind 'PLANET' is neither REGION nor PLACE",
        "makes.csv | make\\nFord | makes.csv, line 1: no column aliases",
        "spelling.csv | written,means\\na,b,c | spelling.csv, line 2: has 3 cells",
    })
    void fault(String file, String text, String fault) {
        assertThatThrownBy(() -> Vocabulary.read(with(file, text.replace("\\n", "\n"))))
                .isInstanceOf(VocabularyException.class)
                .hasMessageContaining(fault);
    }

    @Test
    void missing_file_and_other_faults_are_told_at_once() {
        Function<String, Reader> files = name -> name.equals("money.csv") ? null
                : with("spelling.csv", "written,means\n,b\nc,").apply(name);
        assertThatThrownBy(() -> Vocabulary.read(files)).isInstanceOfSatisfying(VocabularyException.class, e ->
                assertThat(e.faults()).contains("money.csv: the file is missing",
                        "spelling.csv, line 2: column written is empty",
                        "spelling.csv, line 3: column means is empty"));
    }

    @Test
    void shipped_vocabulary_names_only_items_and_findings_of_the_catalogue() throws IOException {
        Path folder = Path.of("shared", "catalogue");
        assumeThat(folder.resolve("items.csv")).withFailMessage("skipped: no catalogue at " + folder).exists();
        assertThat(ids(folder.resolve("items.csv"))).containsAll(Vocabularies.SHIPPED.items());
        assertThat(ids(folder.resolve("findings.csv"))).containsAll(Vocabularies.SHIPPED.findings());
    }

    private static Set<String> ids(Path file) throws IOException {
        return Files.readAllLines(file).stream().filter(l -> !l.startsWith("#")).map(l -> l.split(",", 2)[0])
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void all_files_are_asked_for() {
        Set<String> asked = new TreeSet<>();
        Vocabulary.read(name -> {
            asked.add(name);
            return Vocabularies.open(name);
        });
        assertThat(asked).containsExactlyInAnyOrderElementsOf(Vocabulary.FILES);
    }
}
