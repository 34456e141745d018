package loftcoil.runner.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.exercise.Reckoned;
import loftcoil.runner.exercise.Variation;
import org.junit.jupiter.api.Test;

/** Each sum that a lesson or a worked solution writes out comes, in the numbers it shows, to what it says, to the last digit. */
class WrittenSumsTest {

    private static final String UNITS =
            "kg °C/kWh|L °C|J/\\(kg °C\\)|kJ/\\(kg °C\\)|W/\\(m °C\\)|W/\\(m² °C\\)|mm/\\(m °C\\)|kg/\\(m² mm\\)|m² °C/W|°C m/W|°C/W|°C/kWh|W/°C|kW/°C"
                    + "|J/°C|/°C|°C|°F|°|%|kWh/kg|kWh/m²|kWh|kW|W/\\(m² K\\)|W/m²|W/m|W|MJ/kg|kJ/kg|J/kg|kJ/s|MJ|kJ|J/s|J"
                    + "|kN/m²|kN|N/kg|N|kPa/m|kPa|Pa·s|Pa/mm|Pa|kg/m³|kg/m²|kg/min|kg/m|kg/s|kg/h|kg/L|kg|g/mol|g|mg/L|mg|mol"
                    + "|L/kWh|L/min|L/day|L/cm|L/mm|L/kg|L/mol|L/m|L|mL/L|mL/cm|mL|mm/m|mm"
                    + "|cm²/kW|cm²|cm|dm²|dm/m|dm/s|dm|m³/s|m³|m²|m/s²|m/s|m|s/min|s/h|s|min|h|drops/mL|drops/min|drops|degrees";

    private static final Pattern UNIT = Pattern.compile("(?<=[\\d)]) ?(?:" + UNITS + ")(?![\\w²³·/])");
    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d) (?=\\d{3}(?!\\d))");
    private static final Pattern SUM = Pattern.compile("(?<![\\w.√{}^(])(?<!ln)(?<!ln )(?<!power )"
            + "((?:\\(|\\d)[\\d.()\\s×/+−^²]*[×/+−][\\d.()\\s×/+−^²]*) = (?:about )?(\\d+(?:\\.\\d+)?)(?![\\d{])");

    /** Thousands of a unit, and shares in percent. */
    private static final double[] UNIT_STEPS = {1, 100, 1000, 0.001};

    private static final int FEWEST = 100;

    private static final List<Reckoned> RECKONED = CourseReader.builtIn().exercises().values().stream()
            .filter(Reckoned.class::isInstance)
            .map(Reckoned.class::cast)
            .toList();

    private int seen;

    /** Steps are shown to four digits, and the next goes on with what was shown. */
    private static final double OF_STEPS = 2e-3;

    private List<String> wrong(String text) {
        return wrong(text, 0);
    }

    private List<String> wrong(String text, double slack) {
        List<String> wrong = new ArrayList<>();
        String plain = UNIT.matcher(THOUSANDS
                        .matcher(text.replaceAll("(?s)```.*?```", "").replaceAll("[\\s\\u00a0]+", " "))
                        .replaceAll(""))
                .replaceAll("");
        for (Matcher sum = SUM.matcher(plain); sum.find(); ) {
            OptionalDouble value = value(sum.group(1));
            if (value.isPresent()) {
                seen++;
                if (!agree(value.getAsDouble(), sum.group(2), slack)) {
                    wrong.add(sum.group() + ", but it comes to " + value.getAsDouble());
                }
            }
        }
        return wrong;
    }

    private static OptionalDouble value(String sum) {
        return AnswerText.read(sum.strip()) instanceof AnswerText.Amount amount
                        && amount.unit().isEmpty()
                ? OptionalDouble.of(amount.value())
                : OptionalDouble.empty();
    }

    private static boolean agree(double value, String said, double slack) {
        int point = said.indexOf('.');
        int zeros = said.length() - said.replaceAll("0+$", "").length();
        double half = 0.5 * Math.pow(10, point < 0 ? zeros : point + 1 - said.length());
        double number = Double.parseDouble(said);
        return DoubleStream.of(UNIT_STEPS)
                .anyMatch(step -> Math.abs(value * step - number) <= half * (1 + 1e-9) + slack * number);
    }

    @Test
    void aSumThatDoesNotComeToWhatItSaysIsFound() {
        assertEquals(1, wrong("So the rise is 1.2 kJ / 0.168 kJ = 7.2 °C.").size());
        assertEquals(List.of(), wrong("So the rise is 1.2 kJ / 0.168 kJ = 7.1 °C."));
        assertEquals(List.of(), wrong("That is (60 g / (100 g + 60 g)) = 37.5 %."));
    }

    @Test
    void everySumOfTheCourseComesToWhatItSays() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (String folder : List.of("../lessons", "../exercises")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    if (file.toString().matches(".*\\.(md|json)")) {
                        String text = Files.readString(file).replace("\\n", " ").replace("½", "0.5");
                        wrong(text).forEach(each -> wrong.add(file.getFileName() + ": " + each));
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(seen >= FEWEST, seen + " sums were read");
    }

    @Test
    void everyStepOfAWorkedSolutionComesToWhatTheNextGoesOnWith() {
        List<String> wrong = new ArrayList<>();
        for (Reckoned exercise : RECKONED) {
            for (long seed = 1; seed <= 5; seed++) {
                String text = exercise.with(Variation.numbers(exercise, seed))
                        .about()
                        .solution()
                        .text();
                String shown = Worked.steps(text);
                assertFalse(shown.replace("{{answer}}", "").contains("{{"), exercise.path() + ": " + shown);
                wrong(shown.replace('\n', ' '), OF_STEPS).forEach(each -> wrong.add(exercise.path() + ": " + each));
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(seen >= 600, seen + " sums were read");
    }

    /** A worked solution is a sum with its units: no step that only says what would be reckoned. */
    @Test
    void noStepOfAWorkedSolutionIsLeftToTheReader() {
        List<String> wrong = new ArrayList<>();
        for (Reckoned exercise : RECKONED) {
            String text = exercise.about().solution().text();
            for (String left : List.of(
                    "so many", "the first /", "the first less", "those /", "those litres", "that sum", "that ×")) {
                if (text.toLowerCase(Locale.ROOT).contains(left)) {
                    wrong.add(exercise.path() + ": " + left);
                }
            }
            for (String step : text.lines().toList()) {
                if (step.matches("\\d\\. .* [×/+−] .*") && !step.contains("=")) {
                    wrong.add(exercise.path() + ": " + step);
                }
            }
            Matcher sum = Pattern.compile("(?s)([^.:;,\\n]|(?<=\\d)[.,](?=\\d))*= \\{\\{answer}}")
                    .matcher(text);
            if (sum.find()
                    && !exercise.reference().unit().isEmpty()
                    && !UNIT.matcher(sum.group().replaceAll("\\{\\{[^}]*}}", "1"))
                            .find()) {
                wrong.add(exercise.path() + ": " + sum.group());
            }
        }
        assertEquals(List.of(), wrong);
    }
}
