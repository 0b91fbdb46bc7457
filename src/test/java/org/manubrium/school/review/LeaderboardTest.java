package org.manubrium.school.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.school.review.Leaderboard.Place;

class LeaderboardTest {
    private static final Student DIPPER = new Student(1, "Dipper 10");
    private static final Student HERON = new Student(2, "Heron 20");
    private static final Student TERN = new Student(3, "Tern 30");
    private static final Student WREN = new Student(4, "Wren 40");
    private static final List<Student> ALL = List.of(DIPPER, HERON, TERN, WREN);

    @Test
    void equalMeansShareAPlaceAndTheNextIsMissedOut() {
        Leaderboard board = Leaderboard.of(ALL, List.of(Map.of(1L, 70.0, 2L, 90.0, 3L, 70.0, 4L, 50.0)));

        assertThat(board.ranked()).extracting(Place::rank).containsExactly(1, 2, 2, 4);
        assertThat(board.ranked()).extracting(Place::student).containsExactly(HERON, DIPPER, TERN, WREN);
    }

    @Test
    void meansThatLookEqualToOneDecimalAreEqual() {
        Leaderboard board = Leaderboard.of(ALL, List.of(Map.of(1L, 66.66, 2L, 66.74, 3L, 66.76, 4L, 0.0)));

        assertThat(board.ranked()).extracting(Place::rank).containsExactly(1, 2, 2, 4);
        assertThat(board.ranked().get(1).mean()).hasValue(66.7);
        assertThat(board.ranked().get(2).mean()).hasValue(66.7);
    }

    @Test
    void meanIsOverWhatWasHandedInAndTooFewCasesStandApart() {
        Leaderboard board =
                Leaderboard.of(ALL, List.of(Map.of(1L, 80.0, 2L, 60.0), Map.of(1L, 40.0, 3L, 100.0), Map.of(2L, 61.0)));

        assertThat(board.least()).isEqualTo(2);
        assertThat(board.ranked()).extracting(Place::student).containsExactly(HERON, DIPPER);
        assertThat(board.ranked().get(0).mean()).hasValue(60.5);
        assertThat(board.apart()).extracting(Place::student).containsExactly(TERN, WREN);
        assertThat(board.apart()).extracting(Place::handedIn).containsExactly(1, 0);
        assertThat(board.apart().get(1).mean()).isEmpty();
    }

    @Test
    void nobodyIsRankedWhileNothingCounts() {
        Leaderboard board = Leaderboard.of(ALL, List.of());

        assertThat(board.counted()).isZero();
        assertThat(board.ranked()).isEmpty();
        assertThat(board.apart()).hasSize(4);
    }

    @Test
    void nothingEarnedIsAMeanOfNoughtAndNotNoMean() {
        Leaderboard board = Leaderboard.of(List.of(WREN), List.of(Map.of(4L, 0.0)));

        assertThat(board.ranked().get(0).mean()).hasValue(0.0);
        assertThat(board.ranked().get(0).rank()).isEqualTo(1);
    }
}
