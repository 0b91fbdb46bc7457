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
        SiteMap map = new SiteMap(pathways);
        return damaged.isEmpty() ? SiteKey.NONE : key(map, map, new LinkedHashSet<>(damaged));
    }

    /**
     * One key for each new ailment that damages a site.
     *
     * @param pathways along which steps are counted; {@code drawn} are those to be drawn
     */
    List<SiteKey> of(List<Ailment> ailments, Collection<Pathway> pathways, Collection<Pathway> drawn) {
        SiteMap map = new SiteMap(pathways);
        SiteMap drawing = new SiteMap(drawn);
        return ailments.stream()
                .filter(ailment -> !ailment.old())
                .map(SiteKeys::damaged)
                .filter(sites -> !sites.isEmpty())
                .map(sites -> key(map, drawing, sites))
                .toList();
    }

    private static Set<Site> damaged(Ailment ailment) {
        return ailment.lesions().stream()
                .filter(lesion -> lesion.loss() > 0)
                .map(Lesion::site)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private SiteKey key(SiteMap map, SiteMap drawing, Set<Site> truth) {
        String sites = truth.stream().map(Site::toString).collect(Collectors.joining("; "));
        String place = truth.size() == 1 ? sites : gazetteer.naming(truth).orElse(sites);
        return new SiteKey(
                place,
                gazetteer.near(map.around(truth), truth),
                drawing.sites().stream().map(Site::toString).toList());
    }
}
