package drivetrain.repl.shell;

import drivetrain.repl.command.Command;
import drivetrain.repl.command.Progress;
import drivetrain.repl.command.Vocabulary;
import drivetrain.repl.command.ask.CheckCommand;
import drivetrain.repl.command.ask.ConverterCommand;
import drivetrain.repl.command.ask.CrawlCommand;
import drivetrain.repl.command.ask.CriticalCommand;
import drivetrain.repl.command.ask.CruiseCommand;
import drivetrain.repl.command.ask.EngineQuestion;
import drivetrain.repl.command.ask.ExplainCommand;
import drivetrain.repl.command.ask.GripCommand;
import drivetrain.repl.command.ask.LoadsCommand;
import drivetrain.repl.command.ask.OrdersCommand;
import drivetrain.repl.command.ask.PartsCommand;
import drivetrain.repl.command.ask.PlotCommand;
import drivetrain.repl.command.ask.PullCommand;
import drivetrain.repl.command.ask.QuestionCommand;
import drivetrain.repl.command.ask.RangeCommand;
import drivetrain.repl.command.ask.ShaftsCommand;
import drivetrain.repl.command.ask.ShiftsCommand;
import drivetrain.repl.command.ask.ShowCommand;
import drivetrain.repl.command.ask.SizeCommand;
import drivetrain.repl.command.ask.SpeedometerCommand;
import drivetrain.repl.command.ask.SpeedsCommand;
import drivetrain.repl.command.ask.SprintCommand;
import drivetrain.repl.command.ask.StrengthCommand;
import drivetrain.repl.command.ask.SupplyCommand;
import drivetrain.repl.command.ask.SuspectCommand;
import drivetrain.repl.command.ask.TireQuestion;
import drivetrain.repl.command.ask.TopCommand;
import drivetrain.repl.command.ask.TorqueCommand;
import drivetrain.repl.command.ask.TravelCommand;
import drivetrain.repl.command.ask.TubesCommand;
import drivetrain.repl.command.choose.AxleCommand;
import drivetrain.repl.command.choose.ConditionCommand;
import drivetrain.repl.command.choose.FuelChoices;
import drivetrain.repl.command.choose.PartCommand;
import drivetrain.repl.command.choose.ShaftCommand;
import drivetrain.repl.command.choose.TireCommand;
import drivetrain.repl.command.compare.CompareCommand;
import drivetrain.repl.command.compare.FrontCommand;
import drivetrain.repl.command.compare.KeepCommand;
import drivetrain.repl.command.compare.SensitivityCommand;
import drivetrain.repl.command.compare.SolveCommand;
import drivetrain.repl.command.compare.SweepCommand;
import drivetrain.repl.command.compare.ToleranceCommand;
import drivetrain.repl.command.compare.WhatIfCommand;
import drivetrain.repl.command.keep.HelpCommand;
import drivetrain.repl.command.keep.OpenCommand;
import drivetrain.repl.command.keep.OutputCommand;
import drivetrain.repl.command.keep.QuitCommand;
import drivetrain.repl.command.keep.RedoCommand;
import drivetrain.repl.command.keep.SaveCommand;
import drivetrain.repl.command.keep.TitleCommand;
import drivetrain.repl.command.keep.TourCommand;
import drivetrain.repl.command.keep.UndoCommand;
import drivetrain.repl.command.keep.UnitsCommand;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;

/** The words of the language, in the order of the help. */
final class Words {

    private Words() {}

    static Vocabulary vocabulary() {
        return vocabulary(Progress.NONE);
    }

    /** Makes the words; a command that takes long tells how far it is. */
    static Vocabulary vocabulary(Progress progress) {
        AtomicReference<Vocabulary> whole = new AtomicReference<>();
        List<Command> commands = new ArrayList<>(PartCommand.all());
        commands.add(new AxleCommand());
        commands.add(new TireCommand());
        commands.add(new ShaftCommand());
        commands.addAll(ConditionCommand.all());
        commands.addAll(FuelChoices.all());
        List<QuestionCommand<?>> questions = List.of(
                new CruiseCommand(),
                new SpeedsCommand(),
                new CrawlCommand(),
                new TorqueCommand(),
                new ShiftsCommand(),
                new SpeedometerCommand(),
                new PullCommand(),
                new TopCommand(),
                new SprintCommand(),
                new GripCommand(),
                new LoadsCommand(),
                new ConverterCommand(),
                new ShaftsCommand(),
                new TravelCommand(),
                new CriticalCommand(),
                new StrengthCommand(),
                new OrdersCommand(),
                new SuspectCommand(),
                new TubesCommand(),
                new SupplyCommand(),
                new RangeCommand());
        commands.addAll(questions);
        commands.add(new CheckCommand());
        commands.add(new ShowCommand());
        commands.add(explain(questions));
        commands.add(new PlotCommand());
        commands.add(new SizeCommand());
        commands.add(new PartsCommand());
        commands.add(new KeepCommand());
        commands.add(new CompareCommand());
        commands.add(new WhatIfCommand());
        commands.add(new SolveCommand());
        commands.add(new SweepCommand(progress));
        commands.add(new FrontCommand(progress));
        commands.add(new SensitivityCommand());
        commands.add(new ToleranceCommand());
        commands.add(new TitleCommand());
        commands.add(new SaveCommand());
        commands.add(new OpenCommand());
        commands.add(new UndoCommand());
        commands.add(new RedoCommand());
        commands.add(new UnitsCommand());
        commands.add(new OutputCommand());
        commands.add(new HelpCommand(whole::get));
        commands.add(new TourCommand());
        commands.add(new QuitCommand());
        Vocabulary vocabulary = new Vocabulary(commands);
        whole.set(vocabulary);
        return vocabulary;
    }

    private static ExplainCommand explain(List<QuestionCommand<?>> questions) {
        List<QuestionCommand<?>> all = new ArrayList<>(questions);
        all.add(new EngineQuestion());
        all.add(new TireQuestion());
        all.add(RangeCommand.ofTank());
        all.addAll(SizeCommand.questions());
        return new ExplainCommand(all);
    }
}
