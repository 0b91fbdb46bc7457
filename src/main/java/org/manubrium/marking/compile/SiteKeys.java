package org.manubrium.marking.compile;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Site;
import org.manubrium.marking.key.SiteKey;
import org.manubrium.patient.Ailment;

/** Makes the keys to where something is damaged. */
final class SiteKeys {
    private final Gazetteer gazetteer;

    SiteKeys(Anatomy anatomy) {
        this.gazetteer = new Gazetteer(anatomy);
    }

    /** The damaged sites on the pathways of one sign. */
    SiteKey on(Collection<Pathway> pathways, Collection<Site> damaged) {
        return damaged.isEmpty() ? SiteKey.NONE : key(new SiteMap(pathways), new LinkedHashSet<>(damaged));
    }

    /** One key for each new ailment that damages a site. */
    List<SiteKey> of(List<Ailment> ailments, Collection<Pathway> pathways) {
        SiteMap map = new SiteMap(pathways);
        return ailments.stream()
                .filter(ailment -> !ailment.old())
                .map(SiteKeys::damaged)
                .filter(sites -> !sites.isEmpty())
                .map(sites -> key(map, sites))
                .toList();
    }

    private static Set<Site> damaged(Ailment ailment) {
        return ailment.lesions().stream()
                .filter(lesion -> lesion.loss() > 0)
                .map(Lesion::site)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private SiteKey key(SiteMap map, Set<Site> truth) {
        String place = gazetteer
                .naming(truth)
                .orElseGet(() -> truth.stream().map(Site::toString).collect(Collectors.joining("; ")));
        return new SiteKey(
                place,
                gazetteer.near(map.around(truth), truth),
                map.sites().stream().map(Site::toString).toList());
    }
}
