package drivetrain.document;

import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import java.util.List;

/** Writes what answers rest on: findings, assumptions, cautions, workings, sources. */
final class EvidenceTree {

    private EvidenceTree() {}

    static void finding(FigureTree tree, Finding finding) {
        tree.with("checked", finding.checked())
                .with("verdict", finding.verdict().label())
                .with("statement", finding.statement())
                .withOptional("value", finding.value(), (into, figure) -> into.with("value", figure))
                .withOptional("limit", finding.limit(), (into, figure) -> into.with("limit", figure))
                .withOptional("margin", finding.margin(), (into, figure) -> into.with("margin", figure))
                .with("rule", source(tree, finding.rule()));
    }

    static void assumption(FigureTree tree, Assumption assumption) {
        tree.with("subject", assumption.subject())
                .with("statement", assumption.statement())
                .with("flagged", assumption.flagged())
                .with("source", source(tree, assumption.source()));
    }

    static void caution(FigureTree tree, Caution caution) {
        tree.with("hazard", caution.hazard()).with("text", caution.text());
    }

    static void working(FigureTree tree, Working working) {
        tree.with("question", working.question())
                .withList(
                        "inputs",
                        working.inputs(),
                        (into, input) -> into.with("name", input.name())
                                .with("symbol", input.symbol())
                                .with("figure", input.figure())
                                .with("origin", input.origin()))
                .withList(
                        "steps",
                        working.steps(),
                        (into, step) -> into.with("name", step.name())
                                .with("formula", step.formula())
                                .with("result", step.result()))
                .with("sources", sources(tree, working.sources()));
    }

    private static List<?> sources(FigureTree tree, List<Source> sources) {
        return sources.stream().map(source -> source(tree, source).map()).toList();
    }

    private static FigureTree source(FigureTree tree, Source source) {
        return tree.inner()
                .with("citation", source.citation())
                .with("class", source.kind().label());
    }
}
