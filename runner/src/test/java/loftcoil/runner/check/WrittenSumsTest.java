package loftcoil.runner.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each sum that a lesson or a worked solution writes out comes, in the numbers it shows, to what it says, to the last digit. */
class WrittenSumsTest {

    private static final String UNITS =
            "°C|°F|°|%|kWh/kg|kWh/m²|kWh|kW|W/\\(m² K\\)|W/m²|W/m|W|MJ/kg|kJ/kg|kJ/s|MJ|kJ|J/s|J"
                    + "|kN/m²|kN|N/kg|N|kPa/m|kPa|Pa·s|Pa|kg/m³|kg/m|kg/s|kg/h|kg|g|mg/L|mg|L/kWh|L/min|L/cm|L/kg|L|mL/L|mL/cm|mL|mm/m|mm"
                    + "|cm²/kW|cm²|cm|dm²|dm/m|dm|m³/s|m³|m²|m/s²|m/s|m|s/min|s/h|s|min|h|drops/mL|drops|degrees";

    private static final Pattern UNIT = Pattern.compile("(?<=[\\d)]) ?(?:" + UNITS + ")(?![\\w²³·/])");
    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d) (?=\\d{3}(?!\\d))");
    private static final Pattern SUM = Pattern.compile("(?<![\\w.√{}^(])(?<!ln)(?<!ln )(?<!power )"
            + "((?:\\(|\\d)[\\d.()\\s×/+−^²]*[×/+−][\\d.()\\s×/+−^²]*) = (?:about )?(\\d+(?:\\.\\d+)?)(?![\\d{])");

    /** Thousands of a unit, and shares in percent. */
    private static final double[] UNIT_STEPS = {1, 100, 1000, 0.001};

    private static final int FEWEST = 100;

    private int seen;

    private List<String> wrong(String text) {
        List<String> wrong = new ArrayList<>();
        String plain = UNIT.matcher(THOUSANDS
                        .matcher(text.replaceAll("(?s)```.*?```", "").replaceAll("[\\s\\u00a0]+", " "))
                        .replaceAll(""))
                .replaceAll("");
        for (Matcher sum = SUM.matcher(plain); sum.find(); ) {
            OptionalDouble value = value(sum.group(1));
            if (value.isPresent()) {
                seen++;
                if (!agree(value.getAsDouble(), sum.group(2))) {
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

    private static boolean agree(double value, String said) {
        int point = said.indexOf('.');
        int zeros = said.length() - said.replaceAll("0+$", "").length();
        double half = 0.5 * Math.pow(10, point < 0 ? zeros : point + 1 - said.length());
        double number = Double.parseDouble(said);
        return DoubleStream.of(UNIT_STEPS).anyMatch(step -> Math.abs(value * step - number) <= half * (1 + 1e-9));
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
}
