package loftcoil.runner.session;

/**
 * One statement, declaration, import or expression of a snippet.
 *
 * @param source its Java, complete for evaluation
 * @param offset where it starts in the whole snippet, from 0
 * @param whole false where the snippet ends before this piece does
 */
record Piece(String source, int offset, boolean whole) {}
