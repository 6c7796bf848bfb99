package drivetrain.driveshaft;

import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;

/**
 * What the joints of a line leave of each other's unevenness: sum of (-1)^(i-1) b_i^2 exp(2j(Psi_i - Gamma_i)), a vector of which the root of the size is the
 * equivalent angle.
 *
 * @param real its component along the first single joint, rad2
 * @param imaginary its component across, rad2
 */
public record Residual(double real, double imaginary) {

    static final Source RULE = Source.derived(
            "first harmonic of the joints' law, added as vectors; in one plane and in phase it is the common root of b1^2 - b2^2 + b3^2");

    static Residual of(InstalledShaft installed) {
        double real = 0.0;
        double imaginary = 0.0;
        double turned = 0.0;
        double sign = 1.0;
        for (int joint = 0; joint < installed.line().jointCount(); joint++) {
            if (installed.shaft().joints().get(joint).isDouble()) {
                continue;
            }
            double angle = installed.line().bend(joint);
            real += sign * angle * angle * Math.cos(2.0 * turned);
            imaginary += sign * angle * angle * Math.sin(2.0 * turned);
            sign = -sign;
            if (joint < installed.shaft().pieces().size()) {
                turned += installed.mismatch(joint);
            }
        }
        return new Residual(real, imaginary);
    }

    /**
     * Returns the equivalent angle.
     *
     * @return the operating angle of the one joint that would shake the driven end alike, 0 if the line cancels
     */
    public Angle equivalentAngle() {
        return Angle.ofRadians(radians());
    }

    double radians() {
        return Math.sqrt(Math.hypot(real, imaginary));
    }

    static Working working(InstalledShaft installed) {
        Working.Builder working = Working.of(
                "equivalent residual angle of the " + installed.place().label() + " line");
        String place = installed.place().label();
        int joints = installed.line().jointCount();
        for (int i = 0; i < joints; i++) {
            boolean even = installed.shaft().joints().get(i).isDouble();
            working.step(
                    place + ", operating angle of joint " + (i + 1) + (even ? ", double" : ""),
                    "b" + (i + 1) + " = atan2(|u" + i + " x u" + (i + 1) + "|, u" + i + " . u" + (i + 1) + ")",
                    Figure.of(installed.line().angle(i), Display.JOINT_ANGLE));
        }
        for (int i = 0; i < joints - 1; i++) {
            int piece = i + 1;
            working.input(
                    place + ", phase of the yokes of piece " + piece,
                    "psi" + piece,
                    Figure.of(Angle.ofRadians(installed.phase(i)), Display.JOINT_ANGLE),
                    installed.shaft().pieces().get(i).phase().isPresent() ? "shaft" : "assumed");
            working.step(
                    place + ", turn from joint plane " + piece + " to joint plane " + (piece + 1),
                    "g" + piece + " = angle from n" + piece + " to n" + (piece + 1) + " about u" + piece,
                    Figure.of(installed.line().planeTurn(i), Display.JOINT_ANGLE));
        }
        return working.step(
                        place + ", equivalent residual angle",
                        "b_eq = |sum of (-1)^(i-1) b_i^2 exp(2j(Psi_i - Gamma_i))|^(1/2), single joints only",
                        Figure.of(installed.residual().equivalentAngle(), Display.JOINT_ANGLE))
                .source(RULE)
                .build();
    }
}
