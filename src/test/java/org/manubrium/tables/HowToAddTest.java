package org.manubrium.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Sign;
import org.manubrium.patient.Variation;
import org.manubrium.patient.sign.Signs;

/** The rows that DEVELOPERS.md gives as examples are added to the tables, and nothing else. */
class HowToAddTest {
    private static final Pattern ROWS = Pattern.compile("(?s) *```csv (\\S+)\n(.*?)\n *```");

    private static TableFiles withTheRowsOfTheHowTo() throws IOException {
        TableFiles files = TableFiles.shipped();
        Matcher block = ROWS.matcher(Files.readString(Path.of("DEVELOPERS.md")));
        while (block.find()) {
            String rows = block.group(2).stripIndent();
            files = files.with(block.group(1), text -> text.stripTrailing() + "\n" + rows + "\n");
        }
        return files;
    }

    private static Sign sign(Reference reference, List<Ailment> ailments, String manoeuvre, String place) {
        Person person = new Person(40, Sex.MALE, Variation.of(0));
        Body body = new Body(reference.anatomy(), reference.physiology(), person, ailments);
        Manoeuvre wanted = reference.examination().manoeuvre(manoeuvre).orElseThrow();
        return reference.signs().sign(body, Signs.usual(wanted, new Item(manoeuvre, Side.LEFT, place)));
    }

    @Test
    void theConditionOfTheHowToNumbsTheBackOfTheThumbAndNothingElse() throws IOException {
        Reference reference = Tables.build(withTheRowsOfTheHowTo());
        List<Ailment> strap = List.of(reference
                .conditions()
                .ailment(
                        reference.conditions().condition("tight-strap-palsy").orElseThrow(),
                        Side.LEFT,
                        Optional.empty(),
                        1,
                        Optional.empty()));

        assertThat(sign(reference, strap, "pin", "first-dorsal-web").normal()).contains(false);
        assertThat(sign(reference, strap, "pin", "c8-little-finger").normal()).contains(true);
        assertThat(sign(reference, strap, "thumb-extension", "").normal()).contains(true);
    }

    @Test
    void theManoeuvreOfTheHowToReadsWhatItsReaderReads() throws IOException {
        Reference reference = Tables.build(withTheRowsOfTheHowTo());
        assertThat(sign(reference, List.of(), "knee-flexion-prone", "").reading())
                .isEqualTo(sign(reference, List.of(), "knee-flexion", "").reading());
    }

    @Test
    void withoutTheHowToNeitherIsThere() {
        Reference reference = Tables.shipped();
        assertThat(reference.conditions().condition("tight-strap-palsy")).isEmpty();
        assertThat(reference.examination().manoeuvre("knee-flexion-prone")).isEmpty();
    }
}
