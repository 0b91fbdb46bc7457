package org.manubrium.reasoning.weigh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.manubrium.reasoning.weigh.Raking.Wanted;

class RakingTest {
    private static final double[] EQUAL = {0.25, 0.25, 0.25, 0.25};

    @Test
    void theShareThatShowsASignBecomesTheOneWanted() {
        double[] shows = {0.03, 0.05, 0.9, 0.95};
        double[] weights = Raking.weights(EQUAL, List.of(new Wanted(shows, 0.76)));

        assertThat(Raking.share(weights, shows)).isEqualTo(0.76, within(1e-9));
        assertThat(DoubleStream.of(weights).sum()).isEqualTo(1, within(1e-12));
    }

    @Test
    void twoSignsAreMetAtOnceWhereBodiesAllowIt() {
        double[] one = {0.03, 0.95, 0.03, 0.95};
        double[] other = {0.05, 0.05, 0.9, 0.9};
        double[] weights = Raking.weights(EQUAL, List.of(new Wanted(one, 0.6), new Wanted(other, 0.3)));

        assertThat(Raking.share(weights, one)).isEqualTo(0.6, within(1e-6));
        assertThat(Raking.share(weights, other)).isEqualTo(0.3, within(1e-6));
    }

    @Test
    void whatLiesBeyondEveryBodyComesAsNearAsItCan() {
        double[] shows = {0.9, 0.92, 0.95, 0.97};
        double[] weights = Raking.weights(EQUAL, List.of(new Wanted(shows, 0.2)));

        assertThat(Raking.share(weights, shows)).isBetween(0.9, Raking.share(EQUAL, shows));
    }

    @Test
    void weightsThatFitAlreadyStayAsTheyAre() {
        double[] shows = {0, 0, 1, 1};

        assertThat(Raking.weights(EQUAL, List.of(new Wanted(shows, 0.5)))).containsExactly(EQUAL, within(1e-9));
    }
}
