package drivetrain.combination;

import drivetrain.driveshaft.Driveshaft;
import drivetrain.driveshaft.InstalledShaft;
import drivetrain.driveshaft.LineSurvey;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.Suspension;
import drivetrain.finding.Outcome;
import java.util.Optional;

/**
 * What is chosen for the shaft to one axle.
 *
 * @param place which axle
 * @param shaft the driveshaft
 * @param line the line in which it runs, as measured
 * @param suspension what guides the axle
 */
public record ShaftChoice(
        ShaftPlace place,
        Optional<Part<Driveshaft>> shaft,
        Optional<Part<LineSurvey>> line,
        Optional<Part<Suspension>> suspension) {

    /**
     * Tells whether anything is chosen.
     *
     * @return true if a shaft, a line or a suspension is
     */
    public boolean isAnyChosen() {
        return shaft.isPresent() || line.isPresent() || suspension.isPresent();
    }

    /**
     * Returns the shaft for an answer that needs one.
     *
     * @return the shaft, or the reason that none is chosen
     */
    public Outcome<Driveshaft> needShaft() {
        return Outcome.of(shaft.map(Part::item), "no " + place.label() + " shaft is chosen");
    }

    /**
     * Returns the line for an answer that needs one.
     *
     * @return the line as measured, or the reason that none is chosen
     */
    public Outcome<LineSurvey> needLine() {
        return Outcome.of(line.map(Part::item), "the line of the " + place.label() + " shaft is not measured");
    }

    /**
     * Returns the suspension for an answer that needs one.
     *
     * @return the suspension, or the reason that none is chosen
     */
    public Outcome<Suspension> needSuspension() {
        return Outcome.of(
                suspension.map(Part::item), "the suspension of the " + place.label() + " axle is not described");
    }

    /**
     * Returns the shaft in its line.
     *
     * @return the shaft, or what is missing, or that the shaft and the line have not as many joints
     */
    public Outcome<InstalledShaft> installed() {
        return needShaft().then(made -> needLine().then(measured -> fitted(made, measured)));
    }

    private Outcome<InstalledShaft> fitted(Driveshaft made, LineSurvey measured) {
        if (made.joints().size() != measured.jointCount()) {
            return Outcome.notEvaluated("the " + place.label() + " shaft has "
                    + made.joints().size() + " joints and its line " + measured.jointCount());
        }
        return Outcome.of(new InstalledShaft(place, made, measured.line(place)));
    }
}
