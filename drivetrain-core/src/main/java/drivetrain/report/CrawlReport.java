package drivetrain.report;

import drivetrain.assessment.CrawlAnswer;
import drivetrain.gearing.Converter;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** Crawl ratio and crawl speed. */
public final class CrawlReport {

    private CrawlReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(CrawlAnswer answer, UnitSystem units) {
        String ratio = "The crawl ratio is " + DecimalText.fixed(answer.crawl().ratio(), 1) + " to 1, in "
                + answer.crawl().gear().label();
        String sentence = answer.speed()
                .fold(
                        speed -> ratio + "; at idle the vehicle creeps at "
                                + Figure.of(speed, Display.CRAWL_SPEED).text(units) + ".",
                        reason -> ratio + "; the crawl speed is not evaluated because " + reason + ".");
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence));
        blocks.add(new Facts("detail", "", facts(answer)));
        return AnswerGround.report("crawl", blocks, answer);
    }

    private static List<Fact> facts(CrawlAnswer answer) {
        List<Fact> facts = new ArrayList<>();
        facts.add(
                Fact.of("crawlRatio", "crawl ratio", Figure.plain(answer.crawl().ratio(), 2)));
        facts.add(Fact.of("gear", "gear", answer.crawl().gear().label()));
        facts.add(new Fact(
                "idleSpeed", "idle speed", Cell.of(answer.idle().map(speed -> Figure.of(speed, Display.ROTATION)))));
        facts.add(new Fact(
                "crawlSpeed",
                "crawl speed at idle",
                Cell.of(answer.speed().map(speed -> Figure.of(speed, Display.CRAWL_SPEED)))));
        facts.add(new Fact(
                "wheelTorque",
                "wheel torque at the engine's greatest torque",
                Cell.of(answer.torque().map(torque -> Figure.of(torque, Display.TORQUE)))));
        if (answer.crawl().coupling() instanceof Converter) {
            facts.add(new Fact(
                    "stallTorque",
                    "wheel torque with the converter at stall",
                    Cell.of(answer.stallTorque().map(torque -> Figure.of(torque, Display.TORQUE)))));
        }
        facts.addAll(RatioFacts.of(answer.crawl().gear()));
        answer.rolling().value().ifPresent(rolling -> facts.addAll(RollingFacts.of(rolling)));
        return facts;
    }
}
