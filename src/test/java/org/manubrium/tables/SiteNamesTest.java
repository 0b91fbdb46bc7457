package org.manubrium.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.SiteName;
import org.manubrium.anatomy.UnknownSite;

/** The ways in which clinicians say sites; the pairs are common practice, without a source. */
class SiteNamesTest {
    private static final Anatomy ANATOMY = Tables.shipped().anatomy();
    private static final Onset WEEKS = Onset.parse("6 weeks").orElseThrow();

    private static Set<String> read(String text) {
        return ANATOMY.lesions(text, 1, WEEKS).stream()
                .map(lesion -> lesion.site().toString())
                .collect(Collectors.toSet());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "cauda equina|cauda equina L2-S5",
                "left cauda equina|cauda equina L2-S5 left half",
                "cauda equina L5-S5 left|cauda equina L5-S5 left half",
                "conus|spinal cord S2-S5",
                "conus medullaris|spinal cord S2-S5",
                "chiasm|optic chiasm",
                "hemicord T8 left|spinal cord T8 left half",
                "cord T8 left|spinal cord T8 left half",
                "the left half of the spinal cord at T8|spinal cord T8 left half",
                "thoracic cord T8|spinal cord T8",
                "central cord C5-T1|spinal cord C5-T1 central",
                "anterior cord at T6|spinal cord T6 anterior",
                "L5 nerve root right|root L5 right",
                "S1 left|root S1 left",
                "left C5 and C6|root C5-C6 left",
                "upper brachial plexus left|brachial plexus left at upper trunk",
                "peroneal nerve left|common fibular nerve left",
                "common peroneal nerve left at the fibular head|common fibular nerve left at fibular neck",
                "lateral popliteal nerve right at the knee|common fibular nerve right at fibular neck",
                "lateral cutaneous nerve of the thigh right|lateral femoral cutaneous nerve right",
                "ulnar nerve elbow left|ulnar nerve left at elbow",
                "ulnar nerve at the cubital tunnel left|ulnar nerve left at elbow",
                "median nerve at wrist left|median nerve left at wrist",
                "median nerve right in the carpal tunnel|median nerve right at wrist",
                "guyon's canal left|guyon canal left",
                "third cranial nerve right|third nerve right",
                "oculomotor nerve right|third nerve right",
                "CN VII left|facial nerve left",
                "left 7th nerve|facial nerve left",
                "6th nerve both|abducens nerve both",
                "vagus left|vagus nerve left",
                "recurrent laryngeal nerve left|vagus nerve left at neck",
                "optic nerves both|optic nerve both",
                "cerebellum left|cerebellar hemisphere left",
                "long nerves to the knees|long nerves to the knees both",
                "proximal muscles|proximal muscles both"
            })
    void whatIsSaidInOtherWordsIsTheSameSite(String said, String same) {
        assertThat(read(said)).isEqualTo(read(same)).isNotEmpty();
    }

    @Test
    void aNameOfSeveralSitesIsAllOfThem() {
        Set<String> both = read("lumbar plexus right");
        both.addAll(read("sacral plexus right"));

        assertThat(read("lumbosacral plexus right")).isEqualTo(both);
        assertThat(read("eighth nerve left")).hasSize(2);
    }

    @Test
    void everyOtherNameReadsWithASideAndASegmentWhereItNeedsThem() {
        for (SiteName name : ANATOMY.tables().siteNames()) {
            List<String> tried = new ArrayList<>();
            for (String with : List.of("", " left", " C6", " C6 left")) {
                String said = name.said().replaceFirst(" at |$", with + "$0");
                try {
                    tried.add(said + read(said));
                } catch (UnknownSite e) {
                    assertThat(e).hasMessageNotContaining("no structure is called");
                }
            }
            assertThat(tried).as(name.said()).isNotEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "pons left, lateral pons",
        "midbrain left, ventral midbrain",
        "medulla right, lateral medulla",
        "hemisphere left, cerebellar hemisphere",
        "basal ganglia left, substantia nigra",
        "tarsal left, tarsal tunnel",
        "long nerves, long nerves to the knees"
    })
    void aPlaceThatIsSaidTooLooselyIsAnsweredWithThePlacesThere(String said, String offered) {
        assertThatThrownBy(() -> read(said))
                .isInstanceOf(UnknownSite.class)
                .hasMessageContaining("did you mean")
                .hasMessageContaining("\"" + offered + "\"");
    }

    @Test
    void noOtherNameHidesAStructureOfTheTables() {
        Set<String> known =
                ANATOMY.tables().structures().stream().map(s -> s.name()).collect(Collectors.toSet());
        ANATOMY.tables().siteNames().stream()
                .filter(name -> !name.said().equals(name.meant()))
                .forEach(name -> assertThat(known).doesNotContain(name.said()));
        assertThatCode(() -> read("posterior cord left")).doesNotThrowAnyException();
    }
}
