package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loftcoil.engine.fault.Refusal;
import org.junit.jupiter.api.Test;

/** What is thrown to refuse is one family, so that no face can forget a member. */
class RefusalFamilyTest {

    /** Thrown and caught within a room or two; none reaches a face. */
    private static final Set<String> WITHIN = Set.of(
            "DoubtException",
            "ReckoningException",
            "RefusedRequest",
            "StandardOutput$LostException",
            "SumText$NoSumException",
            "Watch$StoppedException");

    @Test
    void everyUncheckedExceptionIsARefusalOrStaysWithin() {
        Set<String> outside = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("loftcoil").stream()
                        .filter(type -> type.isAssignableTo(RuntimeException.class))
                        .filter(type -> !type.isAssignableTo(Refusal.class))
                        .map(JavaClass::getName)
                        .map(name -> name.substring(name.lastIndexOf('.') + 1))
                        .map(name -> name.endsWith("$DoubtException") ? "DoubtException" : name)
                        .collect(Collectors.toCollection(TreeSet::new));

        assertEquals(new TreeSet<>(WITHIN), outside);
    }
}
