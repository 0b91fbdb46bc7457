package org.manubrium.patient.sign;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** Tests of what is drawn, with one board for all tests of a class; the classes of one machine run one after the other. */
abstract class AtTheBoard {
    static DrawingBoard board;

    @BeforeAll
    static void open() {
        board = new DrawingBoard();
    }

    @AfterAll
    static void close() {
        board.close();
    }
}
