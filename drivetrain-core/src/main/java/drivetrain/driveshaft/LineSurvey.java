package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import java.util.List;

/** The geometry of a shaft line as it was measured on the vehicle. */
public sealed interface LineSurvey permits SlopeSurvey, PointSurvey {

    /**
     * Reads a description of a line, from the transfer case to the axle.
     *
     * <p>By slopes: {@code output 3.5 deg down, shaft 1185 mm 9.2 deg down 40 mm left, pinion 3 deg down}. Every part of the line tells its slope
     * toward the axle, {@code down}, {@code up} or {@code level}; a shaft may tell instead by how much it falls, {@code 180 mm down}. A second
     * {@code shaft} makes a line with a center bearing. Output and pinion may tell a turn in plan view, {@code 1 deg left}.
     *
     * <p>By points: {@code output x -120 mm y 30 mm z 640 mm 3.5 deg down, pinion x -1290 mm y 30 mm z 455 mm 3 deg down}, with {@code bearing x ... y
     * ... z ...} between them for the joint at a center bearing. Where the point is the middle of a flange's face, {@code joint 45 mm out} tells how far the joint center
     * stands before it.
     *
     * @param text the text
     * @return the survey
     * @throws drivetrain.refusal.RefusedException if the text is something else, with the index of the fault
     */
    static LineSurvey parse(String text) {
        return new LineSurveyText(text).read();
    }

    /**
     * Lays the line in space.
     *
     * @param place which axle it runs to
     * @return the line
     * @throws drivetrain.refusal.RefusedException if the measured figures contradict each other or a joint bends more than 45 degrees
     */
    ShaftLine line(ShaftPlace place);

    /**
     * Returns how many joints the line has.
     *
     * @return 2, or 3 with a center bearing
     */
    int jointCount();

    /**
     * Returns what was measured, in the order of the line, each of which may be wrong.
     *
     * @return the readings
     */
    List<SurveyReading> readings();

    /**
     * Returns what was not measured and is taken for granted.
     *
     * @return the assumptions
     */
    List<Assumption> assumptions();

    /**
     * Writes the survey.
     *
     * @return the text that {@link #parse} reads back as an equal survey
     */
    String text();
}
