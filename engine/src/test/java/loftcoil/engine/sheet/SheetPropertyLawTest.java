package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.LaggingTable;
import loftcoil.engine.pipe.TubeTable;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.statistics.Statistics;

/** Any decision a learner can make: a sheet without a hole in it that survives its file, or a refusal with its field. */
class SheetPropertyLawTest {

    private record Decision(String name, String value) {}

    @Property(tries = 3000, seed = "20260102")
    void wholeOrRefused(
            @ForAll("decisions") List<Decision> decisions, @ForAll @DoubleRange(min = 0, max = 110) double tankC) {
        String outcome;
        try {
            Design design = Example.orchardBothy();
            for (Decision decision : decisions) {
                design = Changes.apply(design, decision.name(), decision.value());
            }
            assertEquals(design, DesignJson.read(DesignJson.write(design)));
            Sheet sheet = Sheet.of(design, tankC);
            String all = SheetJson.write(sheet) + String.join("\n", SheetText.lines(sheet)) + Drawing.of(design);
            assertTrue(!all.contains("NaN") && !all.contains("Infinity"), all);
            outcome = sheet.loop().circulates() ? "circulates" : "does not";
        } catch (RefusedException refused) {
            assertTrue(refused.faults().stream().noneMatch(fault -> fault.path().isBlank()), refused.getMessage());
            outcome = "refused";
        }
        Statistics.label("outcome").collect(outcome).coverage(cover -> {
            cover.check("circulates").percentage(share -> share > 5);
            cover.check("does not").percentage(share -> share > 5);
            cover.check("refused").percentage(share -> share > 1);
        });
    }

    @Provide
    Arbitrary<List<Decision>> decisions() {
        Arbitrary<Decision> numbers = Combinators.combine(
                        Arbitraries.of(Changes.names().stream()
                                .filter(name -> Changes.describe(name).range().isPresent())
                                .toList()),
                        Arbitraries.doubles().between(0, 1))
                .as(SheetPropertyLawTest::number);
        Arbitrary<Decision> tubes = Arbitraries.of(TubeTable.names()).map(tube -> new Decision("loop.tube", tube));
        Arbitrary<Decision> laggings =
                Arbitraries.of(LaggingTable.names()).map(lagging -> new Decision("loop.laggingMaterial", lagging));
        return Arbitraries.oneOf(numbers, tubes, laggings).list().ofMaxSize(4);
    }

    private static Decision number(String name, double share) {
        double low = Changes.describe(name).range().orElseThrow().low();
        double high = Changes.describe(name).range().orElseThrow().high();
        return new Decision(name, Double.toString(low + share * (high - low)));
    }
}
