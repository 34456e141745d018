package loftcoil.runner.lesson;

import java.util.Optional;
import java.util.function.Consumer;
import org.commonmark.node.Code;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.jspecify.annotations.Nullable;

/** Walks over parsed text without recursion, so that no depth of nesting can exhaust the stack. */
final class Nodes {

    private Nodes() {}

    /** Every node below the given one, in reading order. */
    static void each(Node root, Consumer<Node> use) {
        Node at = root.getFirstChild();
        while (at != null) {
            use.accept(at);
            at = next(root, at);
        }
    }

    private static @Nullable Node next(Node root, Node at) {
        if (at.getFirstChild() != null) {
            return at.getFirstChild();
        }
        Node up = at;
        while (up != null && up != root) {
            if (up.getNext() != null) {
                return up.getNext();
            }
            up = up.getParent();
        }
        return null;
    }

    /** The only child, where there is just one. */
    static Optional<Node> onlyChild(Node node) {
        Node first = node.getFirstChild();
        return first != null && first.getNext() == null ? Optional.of(first) : Optional.empty();
    }

    /** The words in a node, without marks. */
    static String words(Node node) {
        StringBuilder words = new StringBuilder();
        each(node, child -> {
            if (child instanceof Text text) {
                words.append(text.getLiteral());
            } else if (child instanceof Code code) {
                words.append(code.getLiteral());
            } else if (child instanceof SoftLineBreak || child instanceof HardLineBreak) {
                words.append(' ');
            }
        });
        return words.toString().strip();
    }
}
