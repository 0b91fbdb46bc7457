package org.manubrium.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiteReaderTest {
    private static final Onset WEEKS = Onset.parse("6 weeks").orElseThrow();

    private final Anatomy anatomy = TinyBody.anatomy();

    private String read(String text) {
        return anatomy.lesions(text, 1, WEEKS).stream()
                .map(lesion -> lesion.site().toString())
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "root C7 left|root C7 left",
                "left root C7|root C7 left",
                "Root c7 LEFT|root C7 left",
                "  root   C7 left |root C7 left",
                "root C6-C7 left|root C6 left; root C7 left",
                "root C6-7 left|root C6 left; root C7 left",
                "root C8-T1 left|root C8 left; root T1 left",
                "root C7 both|root C7 right; root C7 left",
                "root C7 bilateral|root C7 right; root C7 left",
                "optic nerve right|optic nerve right",
                "radial nerve left at spiral groove|radial nerve left at spiral groove",
                "radial nerve left at the spiral groove|radial nerve left at spiral groove",
                "radial nerve left in the axilla|radial nerve left at axilla",
                "radial nerve left|radial nerve left",
                "anterior commissure C6|anterior commissure C6",
                "spinal cord T8 posterior|dorsal column T8 right; dorsal column T8 left",
                "spinal cord T8-9 central|anterior commissure T8; anterior commissure T9",
                "spinal cord T8 to T9 central|anterior commissure T8; anterior commissure T9",
                "C7 left|root C7 left",
                "root C6 and C7 left|root C6 left; root C7 left",
                "root C6, C7 on the left|root C6 left; root C7 left",
                "radial nerve at spiral groove left|radial nerve left at spiral groove",
                "left-sided radial nerve axilla|radial nerve left at axilla",
                "the left radial nerve in the axilla|radial nerve left at axilla",
                "both optic nerves|optic nerve right; optic nerve left",
                "musculospiral nerve left at the humerus|radial nerve left at spiral groove",
                "cone|anterior commissure T8; anterior commissure T9",
                "cone C6|anterior commissure C6",
                "arm|brachial plexus right; brachial plexus left; radial nerve right; radial nerve left",
                "arm left|brachial plexus left; radial nerve left"
            })
    void sitesAreReadAsAClinicianSaysThem(String text, String sites) {
        assertThat(read(text)).isEqualTo(sites);
    }

    @Test
    void halfACordIsEveryTractOfThatSide() {
        assertThat(read("left half of the spinal cord at T8")).isEqualTo(read("spinal cord T8 left half"));
        assertThat(read("spinal cord T8 right half"))
                .isEqualTo("lateral corticospinal tract T8 right; dorsal column T8 right; spinothalamic tract T8 right;"
                        + " dorsal horn T8 right");
    }

    @Test
    void theShareOfAPartScalesTheLoss() {
        assertThat(anatomy.lesions("spinal cord T8 posterior", 0.8, WEEKS))
                .extracting(Lesion::loss)
                .containsExactly(0.4, 0.4);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "rot C7 left|no structure is called \"rot\" in \"rot C7 left\"",
                "root left|\"root left\" names no segment: expected for example \"root C7\"",
                "root C7|\"root C7\" names no side: expected right, left or both",
                "root C9 left|there is no segment C9 in \"root C9 left\": expected C1 to S5",
                "root C8-C6 left|\"root C8-C6 left\" names segments upwards: write the upper one first",
                "optic nerve C7 left|the optic nerve in \"optic nerve C7 left\" is not said with a segment",
                "anterior commissure C6 left|the anterior commissure in \"anterior commissure C6 left\" lies in the midline",
                "radial nerve left at wrist|the radial nerve has no level \"wrist\" in \"radial nerve left at wrist\":"
                        + " expected axilla, spiral groove",
                "optic nerve left at chiasm|the optic nerve has no level \"chiasm\" in \"optic nerve left at chiasm\":"
                        + " expected none",
                "spinal cord T8 right half at elbow|the spinal cord half has no level \"elbow\"",
                "optic left|did you mean \"optic nerve\"?",
                "plexus left|did you mean \"brachial plexus\"?",
                "spiral groove left|did you mean \"radial nerve at spiral groove\"?",
                "spinal cord T8|no structure is called \"spinal cord\""
            })
    void aTextThatNamesNoSiteSaysWhatWasExpected(String text, String message) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(UnknownSite.class).hasMessageContaining(message);
    }

    @ParameterizedTest
    @CsvSource({
        "root C7 left",
        "radial nerve right at axilla",
        "anterior commissure C6",
        "muscle left at triceps",
        "optic nerve right"
    })
    void whatIsWrittenReadsBack(String text) {
        assertThat(read(read(text))).isEqualTo(text);
    }
}
