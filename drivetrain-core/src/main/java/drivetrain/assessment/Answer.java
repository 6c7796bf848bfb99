package drivetrain.assessment;

import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Working;
import java.util.List;

/** The answer to one question, with what it rests on. */
public sealed interface Answer
        permits CruiseAnswer,
                RoadSpeedsAnswer,
                CrawlAnswer,
                WheelTorqueAnswer,
                ShiftAnswer,
                SpeedometerAnswer,
                EngineAnswer,
                TireAnswer,
                OrdersAnswer,
                SuspectAnswer,
                TubesAnswer,
                CriticalSpeedAnswer,
                StrengthAnswer,
                ShaftsAnswer,
                TravelAnswer,
                PullAnswer,
                TopAnswer,
                SprintAnswer,
                GripAnswer,
                LoadsAnswer,
                ConverterAnswer,
                DrivingForceAnswer,
                SupplyAnswer,
                TankAnswer,
                PumpSizeAnswer,
                InjectorSizeAnswer,
                LineSizeAnswer {

    /**
     * Returns what the answer rests on that was not measured on this vehicle.
     *
     * @return the assumptions
     */
    List<Assumption> assumptions();

    /**
     * Returns the checks that belong to the question.
     *
     * @return the findings
     */
    List<Finding> findings();

    /**
     * Returns the warnings that belong to acting on the answer.
     *
     * @return the cautions; empty where acting on it hurts nobody
     */
    List<Caution> cautions();

    /**
     * Works the answer out in the open. Made anew at each call.
     *
     * @return inputs, formulas, results and sources
     */
    Working working();
}
