package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Torque;
import drivetrain.refusal.RefusedException;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JointLawTest {

    @Test
    void straightJointTurnsEvenly() {
        JointLaw law = JointLaw.at(Angle.ofDegrees(0));

        assertThat(law.fluctuation()).isZero();
        assertThat(law.speedRatio(Angle.ofDegrees(33))).isEqualTo(1.0);
        assertThat(law.peakAcceleration(AngularSpeed.ofRpm(3000)).toRadiansPerSecondSquared())
                .isZero();
        assertThat(law.drivenAngle(Angle.ofDegrees(77)).toDegrees()).isCloseTo(77.0, within(1e-12));
    }

    /** The speed ratio, integrated by a general-purpose integrator, gives back the arctan law over more than a whole turn. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 8, 20, 30, 44})
    void ratioIntegratesToTheArctanLaw(double degrees) {
        JointLaw law = JointLaw.at(Angle.ofDegrees(degrees));
        FirstOrderDifferentialEquations rate = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public void computeDerivatives(double angle, double[] turned, double[] ratio) {
                ratio[0] = law.speedRatio(Angle.ofRadians(angle));
            }
        };
        double[] turned = {0.0};

        new DormandPrince853Integrator(1e-8, 0.1, 1e-13, 1e-13).integrate(rate, 0.0, turned, 7.0, turned);

        double cosine = Math.cos(Math.toRadians(degrees));
        double arctan = Math.atan(Math.tan(7.0) * cosine) + 2.0 * Math.PI;
        assertThat(turned[0]).isCloseTo(arctan, within(1e-9));
        assertThat(law.drivenAngle(Angle.ofRadians(7.0)).toRadians()).isCloseTo(arctan, within(1e-12));
    }

    /** The peak by formula against the greatest of many finite differences of the arctan law. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 3, 12, 30, 45})
    void peakAccelerationIsTheGreatestSecondDifferenceOfTheArctanLaw(double degrees) {
        double cosine = Math.cos(Math.toRadians(degrees));
        double step = 1e-4;
        double greatest = 0.0;
        for (int i = 1; i < 15700; i++) {
            double at = i * step;
            double second = Math.atan(cosine * Math.tan(at + step))
                    - 2.0 * Math.atan(cosine * Math.tan(at))
                    + Math.atan(cosine * Math.tan(at - step));
            greatest = at + step < Math.PI / 2.0 ? Math.max(greatest, Math.abs(second) / (step * step)) : greatest;
        }

        double peak = JointLaw.at(Angle.ofDegrees(degrees))
                .peakAcceleration(AngularSpeed.ofRadiansPerSecond(1.0))
                .toRadiansPerSecondSquared();

        assertThat(peak).isCloseTo(greatest, within(1e-6));
    }

    @Test
    void peakLiesBehindFortyFiveDegrees() {
        assertThat(JointLaw.at(Angle.ofDegrees(1)).peakAt().toDegrees()).isCloseTo(45.0, within(0.01));
        assertThat(JointLaw.at(Angle.ofDegrees(30)).peakAt().toDegrees()).isBetween(48.0, 55.0);
    }

    @Test
    void smallAngleFormIsSevenPercentLowAtThirtyDegrees() {
        double exact = JointLaw.at(Angle.ofDegrees(30))
                .peakAcceleration(AngularSpeed.ofRadiansPerSecond(1.0))
                .toRadiansPerSecondSquared();
        double small = Math.pow(Math.toRadians(30), 2);

        assertThat(1.0 - small / exact).isCloseTo(0.069, within(0.0005));
    }

    @Test
    void peakGrowsWithTheSquareOfTheSpeed() {
        JointLaw law = JointLaw.at(Angle.ofDegrees(6));

        assertThat(law.peakAcceleration(AngularSpeed.ofRpm(3000))
                        .ratioTo(law.peakAcceleration(AngularSpeed.ofRpm(1000))))
                .isCloseTo(9.0, withinPercentage(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 89.5, 180})
    void refusesAnglesThatNoJointHas(double degrees) {
        assertThatThrownBy(() -> JointLaw.at(Angle.ofDegrees(degrees))).isInstanceOf(RefusedException.class);
    }

    @Test
    void secondaryCoupleIsTangentAndSineOfTheAngle() {
        SecondaryCouple couple = SecondaryCouple.of(Torque.ofNewtonMeters(1000), Angle.ofDegrees(30));

        assertThat(couple.onDriving().toNewtonMeters()).isCloseTo(577.35, within(0.01));
        assertThat(couple.onDriven().toNewtonMeters()).isCloseTo(500.0, within(1e-9));
        assertThat(couple.secondOrder().toNewtonMeters()).isCloseTo(577.35 / 2, within(0.01));
        assertThatThrownBy(() -> SecondaryCouple.of(Torque.ofNewtonMeters(0), Angle.ofDegrees(30)))
                .isInstanceOf(RefusedException.class);
    }

    /**
     * Independent check by vectors, derived: pins without friction pass a moment only square to both, along p x q. Of the driving shaft's share, what lies in the plane of the
     * joint has a mean of half its greatest value and swings about it as far, twice a turn; the driven shaft's is greatest a quarter turn later.
     */
    @Test
    void secondaryCoupleIsWhatThePinsOfTheCrossCannotTurnAway() {
        double angle = Math.toRadians(23);
        Vector3D driving = new Vector3D(1, 0, 0);
        Vector3D driven = new Vector3D(Math.cos(angle), Math.sin(angle), 0);
        SecondaryCouple couple = SecondaryCouple.of(Torque.ofNewtonMeters(800), Angle.ofRadians(angle));
        int steps = 720;
        double mean = 0;
        double second = 0;
        double most = 0;
        double mostDriven = 0;
        for (int i = 0; i < steps; i++) {
            double turned = 2 * Math.PI * i / steps;
            Vector3D pin = new Vector3D(0, Math.cos(turned), Math.sin(turned));
            Vector3D normal = pin.crossProduct(driven.crossProduct(pin));
            Vector3D moment = normal.scalarMultiply(800 / normal.dotProduct(driving));
            double inPlane = moment.dotProduct(new Vector3D(0, 1, 0));
            mean += inPlane / steps;
            second -= 2 * inPlane * Math.cos(2 * turned) / steps;
            most = Math.max(most, moment.crossProduct(driving).getNorm());
            mostDriven = Math.max(mostDriven, moment.crossProduct(driven).getNorm());
        }

        assertThat(couple.onDriving().toNewtonMeters()).isCloseTo(most, within(1e-9));
        assertThat(couple.onDriven().toNewtonMeters()).isCloseTo(mostDriven, within(1e-9));
        assertThat(couple.secondOrder().toNewtonMeters())
                .isCloseTo(mean, within(1e-9))
                .isCloseTo(second, within(1e-9));
    }

    /** Independent check, derived: the moments on both shafts of a joint that turns evenly balance, T e1 + C1 = T e2 + C2. */
    @Test
    void couplesOfADoubleJointBalanceAndStandStill() {
        double angle = Math.toRadians(26);
        SecondaryCouple couple = SecondaryCouple.ofDouble(Torque.ofNewtonMeters(1000), Angle.ofRadians(angle));
        Vector3D driving = new Vector3D(1, 0, 0);
        Vector3D driven = new Vector3D(Math.cos(angle), Math.sin(angle), 0);
        Vector3D onDriving = new Vector3D(couple.onDriving().toNewtonMeters(), new Vector3D(0, 1, 0));
        Vector3D onDriven =
                new Vector3D(couple.onDriven().toNewtonMeters(), new Vector3D(Math.sin(angle), -Math.cos(angle), 0));

        assertThat(new Vector3D(1000, driving).add(onDriving).distance(new Vector3D(1000, driven).add(onDriven)))
                .isCloseTo(0.0, within(1e-9));
        assertThat(couple.secondOrder().toNewtonMeters()).isZero();
    }
}
