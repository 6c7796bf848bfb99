package drivetrain.driveshaft;

import java.util.function.DoubleFunction;

/**
 * One figure of a survey, and what the survey is if that figure was read wrong.
 *
 * @param name what was measured, such as {@code slope of shaft 1}
 * @param isAngle true for an angle, false for a length
 * @param misread the survey with an error added to the figure, in radians or meters
 */
public record SurveyReading(String name, boolean isAngle, DoubleFunction<LineSurvey> misread) {}
