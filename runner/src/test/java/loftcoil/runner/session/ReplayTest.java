package loftcoil.runner.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ReplayTest {

    private static DonePiece piece(String source, String... declares) {
        return new DonePiece(new Piece(source, 0, true), Set.of(declares), "", List.of());
    }

    private static List<String> sources(Replay replay) {
        return replay.pieces().stream().map(done -> done.piece().source()).toList();
    }

    @Test
    void aStepRunAgainTakesItsOldPlaceWithItsNewText() {
        Replay replay = new Replay();
        replay.keep("a", List.of(piece("int x = 1;", "variable x")));
        replay.keep("b", List.of(piece("int y = x;", "variable y")));
        replay.keep("a", List.of(piece("int x = 2;", "variable x")));
        assertEquals(List.of("int x = 2;", "int y = x;"), sources(replay));
    }

    @Test
    void declarationsTheNewTextLacksStayAndStatementsGo() {
        Replay replay = new Replay();
        replay.keep("a", List.of(piece("int x = 1;", "variable x"), piece("x++;"), piece("int z = 1;", "variable z")));
        replay.keep("a", List.of(piece("int x = 2;", "variable x")));
        assertEquals(List.of("int z = 1;", "int x = 2;"), sources(replay));
    }

    @Test
    void aDroppedPieceStaysAway() {
        Replay replay = new Replay();
        DonePiece bad = piece("bad();");
        replay.keep("a", List.of(piece("good();"), bad));
        replay.drop(bad);
        assertEquals(List.of("good();"), sources(replay));
    }
}
