package org.manubrium.web.review;

import java.util.List;
import java.util.Map;
import org.manubrium.school.review.Leaderboard;
import org.manubrium.school.review.Leaderboard.Place;

/** A leaderboard as a page shows it. */
final class BoardModel {
    private BoardModel() {}

    /** @param reader the account of the student who looks at it; -1 for everybody else */
    static Map<String, Object> of(Leaderboard board, long reader) {
        return Map.of(
                "ranked", places(board.ranked(), board, reader),
                "apart", places(board.apart(), board, reader),
                "counted", board.counted(),
                "least", board.least(),
                "howMade", board.howMade());
    }

    private static List<Map<String, Object>> places(List<Place> places, Leaderboard board, long reader) {
        return places.stream()
                .map(place -> Map.<String, Object>of(
                        "rank",
                        place.rank(),
                        "name",
                        place.student().shownAs(),
                        "you",
                        place.student().account() == reader,
                        "mean",
                        place.mean().isPresent()
                                ? Percent.oneDecimal(place.mean().getAsDouble())
                                : "–",
                        "handedIn",
                        place.handedIn() + " of " + board.counted()))
                .toList();
    }
}
