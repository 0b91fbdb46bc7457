package org.manubrium.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.marking.key.Soreness;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** Where a patient is sore follows from the body. */
class SoreOfCaseTest {
    private static final Reference REFERENCE = Tables.shipped();

    private static List<Item> sore(String conditions) {
        CaseFile file = CaseFile.read("patient: {age: 30, sex: male}\n" + conditions, "case", REFERENCE)
                .caseFile()
                .orElseThrow();
        return new SoreOfCase(REFERENCE.signs(), REFERENCE.marking().hurting())
                .of(file.body(REFERENCE)).stream()
                        .map(Soreness::sore)
                        .flatMap(List::stream)
                        .toList();
    }

    @Test
    void healthyPeopleAreSoreNowhere() {
        assertThat(sore("")).isEmpty();
    }

    /** Low on the right is where an inflamed appendix hurts: common practice, no source. */
    @Test
    void anInflamedAppendixIsSoreLowOnTheRight() {
        List<Item> sore = sore("conditions: [{is: appendicitis}]\n");

        assertThat(sore).contains(new Item("belly-light-sides", Side.RIGHT, "lower"));
        assertThat(sore).doesNotContain(new Item("belly-light-sides", Side.LEFT, "upper"));
    }

    @Test
    void brokenRibsAreSoreOnTheirOwnSideAndMirrorImagesInMirrorImage() {
        List<Item> right = sore("conditions: [{is: rib-fractures, side: right}]\n");
        List<Item> left = sore("conditions: [{is: rib-fractures, side: left}]\n");

        assertThat(right).isNotEmpty().allMatch(item -> item.side() != Side.LEFT);
        assertThat(left)
                .containsExactlyInAnyOrderElementsOf(
                        right.stream().map(Item::mirrored).toList());
    }
}
