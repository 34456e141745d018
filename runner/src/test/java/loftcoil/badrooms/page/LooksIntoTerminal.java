package loftcoil.badrooms.page;

import loftcoil.badrooms.terminal.Prints;

/** Breaks the rule that no face imports another, for the test of that rule. */
final class LooksIntoTerminal {

    private LooksIntoTerminal() {}

    static Prints other() {
        return new Prints();
    }
}
