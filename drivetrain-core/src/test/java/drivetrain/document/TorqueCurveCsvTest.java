package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.engine.OperatingPoint;
import drivetrain.engine.TorqueCurve;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Torque;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TorqueCurveCsvTest {

    private static final String ROWS = "\n1000,200\n2000,220.5\n3000,210\n";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "speed rpm,torque lb-ft",
                "rpm,lb-ft",
                "rpm, lb\u00B7ft",
                "speed (rpm),torque (lb-ft)",
                "speed [rpm], torque [lb-ft]",
                "# bench\n\nrpm,lb-ft"
            })
    void readsAHeaderWithUnits(String header) {
        TorqueCurve curve = TorqueCurveCsv.parse("f", header + ROWS);
        assertThat(curve.points())
                .containsExactly(
                        OperatingPoint.of(AngularSpeed.ofRpm(1000), Torque.ofPoundFeet(200)),
                        OperatingPoint.of(AngularSpeed.ofRpm(2000), Torque.ofPoundFeet(220.5)),
                        OperatingPoint.of(AngularSpeed.ofRpm(3000), Torque.ofPoundFeet(210)));
    }

    @Test
    void readsEveryKindOfLineEndAndSpacesAroundCells() {
        TorqueCurve curve = TorqueCurveCsv.parse("f", "rpm,Nm\r\n 1000 , 200 \r2000,2.2e2\n# warm\n\n3000,210.");
        assertThat(curve.points()).hasSize(3);
        assertThat(curve.points().get(1).torque()).isEqualTo(Torque.ofNewtonMeters(220));
    }

    @Test
    void readsAFile() throws IOException {
        assertThat(TorqueCurveCsv.read(Samples.path("curves/i4-2.5-diesel.csv")).points())
                .hasSize(6);
        assertThatThrownBy(() -> TorqueCurveCsv.read(Path.of("nowhere.csv"))).isInstanceOf(NoSuchFileException.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|1:1: torque curve: is empty; allowed: a header such as \"speed rpm,torque lb-ft\"",
                "# only\\n|1:1: torque curve: is empty",
                "speed,torque\\n1000,200|1:1: torque curve \"speed\": does not name a unit of rotational speed",
                "rpm,hp\\n1000,200|1:5: torque curve \"hp\": does not name a unit of torque",
                "lb-ft,rpm\\n1000,200|1:1: torque curve \"lb-ft\": does not name a unit",
                "1000,200\\n2000,300|1:1: torque curve \"1000\": does not name a unit",
                "rpm;lb-ft\\n1000;200|1:1: torque curve \"rpm;lb-ft\": has 1 cell; allowed: two cells with a comma between them",
                "rpm,lb-ft\\n1000,200,5|2:1: torque curve \"1000,200,5\": has 3 cells",
                "rpm,lb-ft\\n\"1000\",200|2:1: torque curve \"\"1000\",200\": has a quotation mark",
                "rpm,lb-ft\\n1000,|2:6: torque curve: is not a number; allowed: a plain number; its unit stands in the header",
                "rpm,lb-ft\\n1000, 200 Nm|2:7: torque curve \"200 Nm\": is not a number",
                "rpm,lb-ft\\n1000,NaN|2:6: torque curve \"NaN\": is not a number",
                "rpm,lb-ft\\n1000,1e999|2:6: torque \"1e999 lb-ft\": is too large a number",
                "rpm,lb-ft\\n-1000,200|2:1: ",
                "rpm,lb-ft\\n1000,200\\n2000,220|torque curve \"2 points\": cannot be drawn",
                "rpm,lb-ft\\n1000,200\\n2000,220\\n2000,230|torque curve",
                "rpm,lb-ft\\n1000,200\\u001b|1:"
            })
    void refusesAFaultyLineAtTheFault(String text, String sentence) {
        String unescaped = text.replace("\\u001b", "\u001b").translateEscapes();
        String place = Character.isDigit(sentence.charAt(0)) ? "f:" : "f: ";
        String expected = sentence.equals("1:") ? "f:2:9: document: has the character U+001B" : place + sentence;
        assertThat(Refused.sentence(() -> TorqueCurveCsv.parse("f", unescaped))).startsWith(expected);
    }

    @Test
    void refusesTooManyPoints() {
        StringBuilder text = new StringBuilder("rpm,Nm\n");
        for (int i = 0; i <= TorqueCurve.MOST_POINTS; i++) {
            text.append(1000 + i).append(",200\n");
        }
        assertThat(Refused.sentence(() -> TorqueCurveCsv.parse("f", text.toString())))
                .isEqualTo("f:1002:1: torque curve: has more than 1000 points");
    }
}
