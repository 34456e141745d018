package loftcoil.engine.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.words.ClassStrings;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The table of conduct: all of its sentences are said, they hold no figures, and no rule asks for what another forbids. */
class ConductTest {

    private static final Pattern ADVICE = Pattern.compile(
            "(?i)\\b(everybody|get out|leave the (room|dwelling|house)|rakes?|raked|raking"
                    + "|let (it|the fire) die|let it burn out|shut the air|open the stove|burning (wood|logs|fuel)|embers)\\b");

    @ParameterizedTest
    @EnumSource(Conduct.class)
    void aRuleSaysWhenAndWhat(Conduct rule) {
        assertFalse(rule.when().metric().endsWith("."), rule.code());
        assertTrue(rule.act().metric().endsWith("."), rule.code());
        assertEquals(
                "**" + rule.when().metric() + ":** " + rule.act().metric(),
                rule.rule().metric());
        // The same in any units: lessons have them as they stand.
        assertTrue(
                rule.rule().parts().stream().allMatch(MeasuredText.Text.class::isInstance),
                rule.rule().metric());
    }

    @Test
    void noSentenceIsLeftOver() {
        Set<String> codes = new TreeSet<>(
                Sentences.read(Conduct.class, "conduct.properties").codes());
        Stream.concat(
                        Stream.of(Conduct.values()).flatMap(rule -> Stream.of(rule.rule(), rule.happens())),
                        Stream.of(Conduct.worth(), Conduct.afterFrost()))
                .flatMap(said -> Stream.of(said.code().split(" ")))
                .forEach(codes::remove);
        assertEquals(Set.of(), codes);
    }

    /** A danger of the coil, the tank, the flue or the frost says which rule applies where it comes true. */
    @Test
    void aCautionNamesTheRuleThatApplies() {
        assertEquals(
                "If it happens, hold to the table of conduct: A coil that boils or may be dry.",
                new Caution(CautionKind.BOIL_HARD, Severity.DANGER, CautionKind.BOIL_HARD.decides())
                        .happens()
                        .orElseThrow()
                        .metric());
        assertEquals(Optional.of(Conduct.HOT_TANK), CautionKind.BOIL_TANK.conduct());
        assertEquals(Optional.of(Conduct.FUMES), CautionKind.CO_ALARM.conduct());
        assertEquals(Optional.of(Conduct.BACK_IN), CautionKind.FROST_LOOP.conduct());
        assertEquals(Optional.empty(), CautionKind.SCALD.conduct());
    }

    @Test
    void whoLeavesDoesNothingElse() {
        String leave = Conduct.STEAM.act().metric();
        for (String nothing : List.of("Open nothing", "shut nothing", "rake nothing", "add nothing", "let it die")) {
            assertTrue(leave.contains(nothing), leave);
        }
        assertTrue(Conduct.HOT_TANK.when().metric().contains("nothing knocks or leaks"));
    }

    /** Whoever writes such words into another sentence begins a second table. */
    @Test
    void noOtherSentenceGivesAdviceForTheseCases() throws IOException {
        Set<String> found = new TreeSet<>();
        for (Class<?> room : List.of(Conduct.class, BuildSheet.class)) {
            for (Path file : ClassStrings.files(room, ".properties")) {
                if (file.endsWith("conduct.properties")) {
                    continue;
                }
                Properties sentences = new Properties();
                try (Reader in = Files.newBufferedReader(file)) {
                    sentences.load(in);
                }
                sentences.forEach((code, text) -> {
                    if (ADVICE.matcher(text.toString()).find()) {
                        found.add(code + ": " + text);
                    }
                });
            }
        }
        assertEquals(Set.of(), found);
    }

    @Test
    void theTableSaysWhatItIsWorth() {
        assertTrue(Conduct.worth().metric().contains("common practice"));
        assertTrue(Conduct.worth().metric().contains("no licensed fitter has read it"));
    }
}
