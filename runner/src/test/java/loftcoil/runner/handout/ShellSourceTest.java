package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Snippets brought into lines that the JDK's shell can take one by one. */
class ShellSourceTest {

    @Test
    void aChainStandsOnOneLine() {
        assertEquals(
                "plot(\"a\") .up(\"b\", \"c\") .show();\n",
                ShellSource.of("plot(\"a\")\n    .up(\"b\", \"c\")\n    .show();"));
    }

    @Test
    void aRemarkWithinAChainMovesAboveIt() {
        assertEquals(
                "// the title\nplot(\"a\") .show();\n", ShellSource.of("plot(\"a\")   // the title\n    .show();"));
    }

    @Test
    void aRemarkBehindAWholeStatementStays() {
        assertEquals("double a = 1;   // m\ndouble b = 2;\n", ShellSource.of("double a = 1;   // m\ndouble b = 2;"));
    }

    @Test
    void whatStandsInBracketsKeepsItsLinesAndRemarks() {
        String method = "double twice(double x) {  // doubles\n    return 2\n        * x;\n}\n";
        assertEquals(method, ShellSource.of(method.stripTrailing()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "double a = 1\\n    + 2; | double a = 1 + 2;",
                "double a =\\n    2; | double a = 2;",
                "double a = 1 +\\n    2; | double a = 1 + 2;",
                "if (a > 1) { b(); }\\nelse { c(); } | if (a > 1) { b(); } else { c(); }",
                "String s = \"a // no remark\"; | String s = \"a // no remark\";",
                "char c = '\"';\\nint d = 1; | char c = '\"';\\nint d = 1;",
                "a\\n\\nb | a\\n\\nb",
                "int a = 1;\\n++a; | int a = 1;\\n++a;",
                "int a = 1;\\n\\n// remark\\nint b = 2; | int a = 1;\\n\\n// remark\\nint b = 2;",
            })
    void linesAreJoinedOnlyWhereTheStatementGoesOn(String snippet, String shell) {
        assertEquals(shell.replace("\\n", "\n") + "\n", ShellSource.of(snippet.replace("\\n", "\n")));
    }

    @Test
    void signsBeyondPlainLettersAreCodesInJavaAndStayInRemarks() {
        assertEquals("String s = \"\\u00b0C\";   // °C\n", ShellSource.of("String s = \"°C\";   // °C"));
    }

    @Test
    void aTextBlockKeepsItsLines() {
        String block = "String s = \"\"\"\n    a\n    .b\n    \"\"\";\n";
        assertEquals(block, ShellSource.of(block.stripTrailing()));
    }
}
