package loftcoil.runner.session;

import java.util.List;
import java.util.Set;

/** A value given from outside, as a piece that can be run again. */
final class Binding {

    private Binding() {}

    /** The declaration that brings the variable back in a fresh machine. */
    static List<DonePiece> declaration(String javaType, String name, String javaExpression) {
        Piece piece = new Piece(javaType + " " + name + " = " + javaExpression + ";", 0, true);
        return List.of(new DonePiece(piece, Set.of("variable " + name), javaType, List.of()));
    }
}
