package org.manubrium.anatomy;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SideTest {
    @Test
    void rightComesBeforeLeft() {
        assertThat(Side.values()).containsExactly(Side.RIGHT, Side.LEFT, Side.NONE);
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void theOppositeOfTheOppositeIsTheSame(Side side) {
        assertThat(side.opposite().opposite()).isEqualTo(side);
        assertThat(Side.of(side.word())).contains(side);
    }

    @Test
    void theMidlineHasNoOpposite() {
        assertThat(Side.NONE.opposite()).isEqualTo(Side.NONE);
    }

    @Test
    void otherWordsAreNoSide() {
        assertThat(Side.of("Left")).isEmpty();
        assertThat(Side.of("both")).isEmpty();
    }

    @Test
    void relationsAreToldFromTheSideServed() {
        assertThat(Relation.SAME.from(Side.LEFT)).containsExactly(Side.LEFT);
        assertThat(Relation.OPPOSITE.from(Side.LEFT)).containsExactly(Side.RIGHT);
        assertThat(Relation.BOTH.from(Side.LEFT)).containsExactly(Side.RIGHT, Side.LEFT);
        assertThat(Relation.NONE.from(Side.LEFT)).containsExactly(Side.NONE);
    }
}
