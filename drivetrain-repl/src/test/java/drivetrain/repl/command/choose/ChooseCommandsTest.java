package drivetrain.repl.command.choose;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.repl.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChooseCommandsTest {

    private static String shown(String... lines) {
        String[] all = java.util.Arrays.copyOf(lines, lines.length + 1);
        all[lines.length] = "show";
        Trial trial = Trial.of(all);
        assertThat(trial.err()).isEmpty();
        return trial.out().replaceAll(" +", " ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "engine v8-6.2 | engine v8-6.2 6.2 L V8",
                "gearbox 4.03 2.36 1.53 | transmission 4.03 2.36 1.53",
                "transfer case 1.00 2.72 | transfer case 1.00 2.72",
                "transfer none | transfer case none",
                "overdrive 0.78 | overdrive 0.78",
                "hubs 24/16 | hub reduction 24/16 1.50",
                "vehicle mass 2150 kg front 1250 kg rear 1700 kg | vehicle mass 2150 kg",
                "tyre 285/75R16 rollout 2510 mm | tire 285/75R16 rollout 2510 mm"
            })
    void takesANameOrALiteral(String line, String shown) {
        assertThat(shown(line)).contains(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "fuel, fuel not chosen",
        "pump, pump not chosen",
        "feed, feed line not chosen",
        "return, return line none fitted",
        "injectors, injectors not chosen",
        "system, fuel system not chosen",
        "tank, tank not chosen"
    })
    void takesAPieceOfTheFuelSupplyAwayAndBack(String word, String shown) {
        assertThat(shown("open demo", word + " none")).contains(shown);
        assertThat(shown("open demo", word + " none", "undo")).doesNotContain(shown);
    }

    /** A range is told in the unit that was typed, and a bare gallon is asked about once. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tank 20 gal | tank \"20 gal\": \"gal\" can mean more than one unit; allowed: US gal or imp gal",
                "tank -20 gal | volume of the tank is negative, and \"gal\" can mean",
                "tank 2000 US gal | out of range; allowed: 0.2642 to 264.1 US gal",
                "system return 4000 psi | out of range; allowed: 1.451 to 145 psi",
                "shaft rear line output level, shaft 900 in 5 deg down, pinion level | allowed: 1.969 to 196.8 in",
                "shaft rear tube 3 in x 2 in of steel | more than the radius of the tube; allowed: up to 1.5 in",
                "tubes -50 in | allowed: more than 0 in",
                "tubes 900 in | allowed: at most 196.8 in"
            })
    void refusesInTheUnitThatWasTyped(String line, String words) {
        assertThat(Trial.of(line).err()).contains(words);
    }

    @Test
    void choosesBothAxlesOrOne() {
        assertThat(shown("axle 41/10")).contains("rear axle 41/10 4.10", "front axle 41/10 4.10");
        assertThat(shown("axle 41/10", "axle front 37/9")).contains("rear axle 41/10 4.10", "front axle 37/9 4.11");
        assertThat(shown("axle rear 4.10")).contains("rear axle 4.10", "front axle not chosen");
        assertThat(shown("axle 41/10", "axle front none")).contains("rear axle 41/10", "front axle not chosen");
    }

    @Test
    void keepsTheFrontTiresWhenTheRearOnesChange() {
        assertThat(shown("tire 265/75R16", "tire rear 285/75R16")).contains("tire 285/75R16", "front tire 265/75R16");
        assertThat(shown("tire 265/75R16", "tire front 235/85R16")).contains("tire 265/75R16", "front tire 235/85R16");
        assertThat(shown("tire front 235/85R16", "tire 265/75R16")).contains("front tire as at the rear");
        assertThat(shown("tire rear 265/75R16")).contains("front tire as at the rear");
    }

    @Test
    void showsThePresentChoiceWithoutAPart() {
        assertThat(Trial.of("open demo", "engine").out()).startsWith("The engine gives ");
        assertThat(Trial.of("open demo", "tire").out()).startsWith("In one turn the tire rolls ");
        assertThat(Trial.of("open demo", "axle front").out())
                .contains("front axle")
                .doesNotContain("rear axle");
        assertThat(Trial.of("transmission").out()).contains("transmission  not chosen");
        assertThat(Trial.of("engine").out()).contains("engine  not chosen");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "axle 4,10 | -c:1:7: ",
                "axle front 4,10 | -c:1:13: ",
                "tire 285/75Q16 | -c:1:12: ",
                "tire front  285/75Q16 | -c:1:19: ",
                "transfer 1.00 two | -c:1:15: "
            })
    void placesTheFault(String line, String place) {
        assertThat(Trial.of(line).err()).startsWith(place);
    }

    @Test
    void suggestsANameThatIsNear() {
        assertThat(Trial.of("engine v8-6.3").err()).contains("v8-6.2");
        assertThat(Trial.of("axle xyzzy-plugh").err()).doesNotContain("near:");
    }

    @Test
    void keepsSurfaceAndAir() {
        Trial trial =
                Trial.of("surface", "air", "surface wet asphalt", "air altitude 5000 ft", "surface", "air", "show");
        assertThat(trial.err()).isEmpty();
        assertThat(trial.out())
                .contains(
                        "dry asphalt is taken",
                        "standard air at sea level is taken",
                        "wet asphalt",
                        "altitude 5000 ft");
        assertThat(Trial.of("surface moon").err()).startsWith("-c:1:9:").contains("is not a surface");
        assertThat(Trial.of("air altitude 9000 m").err()).startsWith("-c:1:14:").contains("out of range");
        assertThat(Trial.of("surface ice", "undo", "surface").out()).contains("dry asphalt is taken");
    }
}
