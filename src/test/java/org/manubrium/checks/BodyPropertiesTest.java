package org.manubrium.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.manubrium.checks.Patient.REFERENCE;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.manubrium.ForAll;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.Site;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Sign;
import org.manubrium.patient.Variation;
import org.manubrium.patient.sign.Signs;
import org.manubrium.patient.sign.Strand;
import org.manubrium.tables.Reference;
import org.manubrium.tables.TableFiles;
import org.manubrium.tables.Tables;

/** What holds for every body and every manoeuvre. */
class BodyPropertiesTest {
    private static final Onset WEEKS = Onset.parse("weeks").orElseThrow();

    private static Map<Item, Sign> examined(Body body) {
        Map<Item, Sign> found = new HashMap<>();
        REFERENCE.signs().examine(body).forEach(sign -> found.put(sign.item(), sign));
        return found;
    }

    /** Right and left exchanged in the words of a reading that names a side. */
    private static String swapped(String text) {
        return text.replaceAll("\\bright\\b", "\0")
                .replaceAll("\\bleft\\b", "right")
                .replace("\0", "left");
    }

    /** The left ventricle stays the left one in the mirror; a leg that is named becomes the other. */
    private static List<String> mirrored(Item item, String term) {
        return item.side() == Side.NONE ? List.of(term, swapped(term)) : List.of(swapped(term));
    }

    @Test
    void mirroringLesionsAndVariationMirrorsEveryFinding() {
        ForAll.seeds(40, random -> {
            Patient patient = RandomPatients.moved(RandomPatients.with(random.nextInt(1, 4), random), random);
            Map<Item, Sign> mirrored = examined(patient.body().mirrored());
            examined(patient.body()).forEach((item, sign) -> {
                Sign other = mirrored.get(item.mirrored());
                assertThat(other.reading().toString())
                        .as("%s of %s", item, patient.body().ailments())
                        .isEqualTo(swapped(sign.reading().toString()));
                assertThat(other.normal()).as(item + " is normal").isEqualTo(sign.normal());
                assertThat(other.meaning().term())
                        .as(item + " means")
                        .isIn(mirrored(item, sign.meaning().term()));
            });
        });
    }

    @Test
    void aHealthyBodyIsNormalEverywhereAtEveryAge() {
        for (int seed = 1; seed <= 300; seed++) {
            Sex sex = seed % 2 == 0 ? Sex.FEMALE : Sex.MALE;
            Person person = new Person(20 + (seed * 7) % 76, sex, Variation.of(seed));
            Body body = new Body(REFERENCE.anatomy(), REFERENCE.physiology(), person, List.of());
            assertThat(examined(body).values().stream()
                            .filter(sign -> !sign.normal().equals(Optional.of(true))
                                    || !sign.meaning().term().equals("nothing-abnormal"))
                            .map(Sign::toString))
                    .as(person.toString())
                    .isEmpty();
        }
    }

    @Test
    void moreLossInThePeripheralArcNeverGivesALivelierReflex() {
        List<Manoeuvre> reflexes = REFERENCE.examination().manoeuvres().stream()
                .filter(m -> m.reader().equals("tendon-reflex"))
                .toList();
        assertThat(reflexes).hasSizeGreaterThan(10);
        ForAll.seeds(5, random -> {
            Patient start = RandomPatients.with(2, random);
            reflexes.forEach(reflex -> REFERENCE
                    .anatomy()
                    .arc(reflex.part(), Side.LEFT)
                    .sites()
                    .forEach(site -> falls(start, reflex, site)));
        });
    }

    private static void falls(Patient start, Manoeuvre reflex, Site site) {
        double before = Double.POSITIVE_INFINITY;
        for (int tenths = 0; tenths <= 10; tenths += 2) {
            double answer = answer(start, reflex, new Lesion(site, tenths / 10.0, WEEKS));
            assertThat(answer)
                    .as("%s with %d tenths lost at %s", reflex.id(), tenths, site)
                    .isLessThanOrEqualTo(before);
            before = answer;
        }
    }

    private static double answer(Patient start, Manoeuvre reflex, Lesion lesion) {
        List<Ailment> ailments = new ArrayList<>(start.body().ailments());
        ailments.add(new Ailment("more", false, List.of(lesion), Map.of()));
        Item item = new Item(reflex.id(), Side.LEFT, "");
        Sign sign = REFERENCE.signs().sign(start.body().with(ailments), Signs.usual(reflex, item));
        return ((Finding.Graded) sign.finding()).amount();
    }

    @Test
    void noLesionChangesWhatNoPathwayOfItReaches() {
        ForAll.seeds(60, random -> {
            Body body = RandomPatients.with(1, random).body();
            Lesion lesion = body.ailments().get(0).lesions().get(0);
            Map<Item, Sign> healthy = examined(body.healthy());
            examined(body).forEach((item, sign) -> {
                if (!reaches(body, item, lesion)) {
                    assertThat(sign.finding())
                            .as("%s with %s", item, lesion)
                            .isEqualTo(healthy.get(item).finding());
                }
            });
        });
    }

    private static boolean reaches(Body body, Item item, Lesion lesion) {
        Manoeuvre manoeuvre = Patient.manoeuvre(item.manoeuvre());
        return REFERENCE.signs().strands(body, Signs.usual(manoeuvre, item)).stream()
                .flatMap(strand -> strand.pathway().sites().stream())
                .anyMatch(lesion.site()::covers);
    }

    private static Set<Pathway> pathways(Body body) {
        Set<Pathway> found = new HashSet<>();
        for (Manoeuvre manoeuvre : REFERENCE.examination().manoeuvres()) {
            for (Item item : Examination.items(manoeuvre)) {
                REFERENCE.signs().strands(body, Signs.usual(manoeuvre, item)).stream()
                        .map(Strand::pathway)
                        .forEach(found::add);
            }
        }
        return found;
    }

    @Test
    void threeHundredPairsOfLesionsAgreeWithASlowWalk() {
        Set<Pathway> pathways = pathways(Patient.healthy().body());
        assertThat(pathways).hasSizeGreaterThan(200);
        ForAll.seeds(300, random -> {
            Body body = RandomPatients.with(2, random).body();
            SlowWalk slow = new SlowWalk(body.ailments());
            for (Pathway pathway : pathways) {
                assertThat(body.conduction(pathway)).isCloseTo(slow.passed(pathway), within(1e-9));
            }
        });
    }

    /** The same for what is read: power and feeling are what passes, put on the scale. */
    @Test
    void whatIsReadOfPowerAndFeelingIsWhatTheSlowWalkLetsPass() {
        List<Manoeuvre> read = REFERENCE.examination().manoeuvres().stream()
                .filter(m -> m.reader().equals("power") || m.reader().equals("feeling"))
                .filter(Manoeuvre::sided)
                .toList();
        ForAll.seeds(20, random -> {
            Body body = RandomPatients.with(2, random).body();
            SlowWalk slow = new SlowWalk(body.ailments());
            for (Manoeuvre manoeuvre : read) {
                for (Item item : Examination.items(manoeuvre)) {
                    Sign sign = REFERENCE.signs().sign(body, Signs.usual(manoeuvre, item));
                    assertThat(((Finding.Graded) sign.finding()).amount())
                            .as("%s with %s", item, body.ailments())
                            .isCloseTo(felt(manoeuvre, slow.passed(whole(manoeuvre, item))), within(1e-9));
                    assertThat(sign.reading()).isEqualTo(REFERENCE.signs().reading(manoeuvre, sign.finding()));
                }
            }
        });
    }

    /** Less than all of the paths is enough for some kinds of feeling. */
    private static double felt(Manoeuvre manoeuvre, double passed) {
        return manoeuvre.reader().equals("power")
                ? passed
                : Math.min(
                        1,
                        passed / REFERENCE.anatomy().modality(manoeuvre.part()).enough());
    }

    private static Pathway whole(Manoeuvre manoeuvre, Item item) {
        return manoeuvre.reader().equals("power")
                ? REFERENCE.anatomy().motor(manoeuvre.part(), item.side())
                : REFERENCE.anatomy().sensory(manoeuvre.part(), item.place(), item.side());
    }

    @Test
    void emptyingTheConditionsChangesNoExaminationByLesion() {
        TableFiles files = TableFiles.shipped();
        for (String table : List.of("conditions", "condition_effects", "severity_ranges")) {
            for (String file : files.files(table)) {
                files = files.with(file, text -> text.lines().findFirst().orElseThrow() + "\n");
            }
        }
        Reference bare = Tables.build(files);
        assertThat(bare.conditions().all()).isEmpty();
        ForAll.seeds(10, random -> {
            Body body = RandomPatients.with(2, random).body();
            Body same = new Body(bare.anatomy(), bare.physiology(), body.person(), body.ailments());
            assertThat(bare.signs().examine(same)).isEqualTo(REFERENCE.signs().examine(body));
        });
    }
}
