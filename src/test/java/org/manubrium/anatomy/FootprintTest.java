package org.manubrium.anatomy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.manubrium.tables.Tables;

class FootprintTest {
    private final Anatomy anatomy = Tables.shipped().anatomy();
    private final List<Site> sites = anatomy.points().stream()
            .flatMap(point -> anatomy.sensory("pin", point.id(), Side.RIGHT).sites().stream())
            .distinct()
            .toList();

    @Test
    void aLesionMeetsEverySiteThatItCovers() {
        for (Site lesion : sites) {
            List<Site> wider = List.of(
                    lesion,
                    Site.of(lesion.structure(), lesion.side()),
                    new Site(lesion.structure(), lesion.segment(), lesion.side(), Optional.empty()));
            for (Site wide : wider) {
                Set<Site> missed = sites.stream()
                        .filter(wide::covers)
                        .filter(site -> !Footprint.ofLesion(wide).meets(Footprint.of(site)))
                        .collect(Collectors.toSet());
                assertThat(missed).as("covered by a lesion of " + wide).isEmpty();
            }
        }
    }

    @Test
    void aLesionOfOneSideSeldomMeetsASiteItDoesNotCover() {
        long pairs = 0;
        long met = 0;
        for (Site lesion : sites) {
            for (Site site : sites) {
                if (!lesion.covers(site)) {
                    pairs++;
                    met += Footprint.ofLesion(lesion).meets(Footprint.of(site)) ? 1 : 0;
                }
            }
        }
        assertThat((double) met / pairs).isLessThan(0.1);
    }
}
