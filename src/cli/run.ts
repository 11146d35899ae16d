import { Command, CommanderError } from "commander";
import { sentence } from "../words";
import { type AimAsked, aimCommand } from "./commands/aim";
import { buyCommand } from "./commands/buy";
import { check } from "./commands/check";
import { closingsCommand } from "./commands/closings";
import { compareCommand } from "./commands/compare";
import { type DrawAsked, drawCommand } from "./commands/draw";
import { mayCommand } from "./commands/may";
import { oneMoreCommand } from "./commands/one-more";
import { type PlanAsked, planCommand } from "./commands/plan";
import { pourCommand } from "./commands/pour";
import { reasonsCommand } from "./commands/reasons";
import { stripCommand } from "./commands/strip";
import { whyCommand } from "./commands/why";
import { Fault, type Outcome, type Ports } from "./fault";

const about = `Works out what goes in before what, when, and what moves when something slips.

FILE is a build file, or a build that comes with the program: example:garden-wall, example:bank-cellar, example:tank-house.
Steps are named by their name, a part of it that no other step has, or their id.
Exit code: 0, 1 where the answer is no (it cannot be built, nothing orders the two), 2 for a command that cannot be read.`;

/** Runs one command line (without the program's own name). @returns the exit code */
export async function run(words: readonly string[], ports: Ports): Promise<number> {
  let code = 0;
  const tell = async (work: Promise<Outcome>): Promise<void> => {
    const done = await work;
    ports.out(done.text);
    code = done.code;
  };
  const program = newProgram(ports);
  const file = "a build file, or example:NAME";
  program
    .command("check")
    .argument("FILE", file)
    .description("everything found in a build; 1 when it cannot be built")
    .action((f: string) => tell(check(f, ports)));
  program
    .command("plan")
    .argument("FILE", file)
    .option("--json", "for other programs")
    .option("--search <tries>", "look for an earlier finish: 1e3, 1e4, 3e4 or 1e5 tries")
    .description("the plan by site day, what sets the finish, hold points, cautions, assumptions")
    .action((f: string, asked: PlanAsked) => tell(planCommand(f, asked, ports)));
  program
    .command("why")
    .argument("FILE", file)
    .argument("A", "a step")
    .argument("B", "another")
    .description("why one step comes before another")
    .action((f: string, a: string, b: string) => tell(whyCommand(f, a, b, ports)));
  program
    .command("may")
    .argument("FILE", file)
    .argument("A", "a step")
    .argument("B", "another")
    .description("whether A can be done before B begins")
    .action((f: string, a: string, b: string) => tell(mayCommand(f, a, b, ports)));
  program
    .command("closings")
    .argument("FILE", file)
    .description("what closes when, and what must be done before")
    .action((f: string) => tell(closingsCommand(f, ports)));
  program
    .command("compare")
    .argument("BEFORE", file)
    .argument("AFTER", file)
    .description("what moved between two builds")
    .action((a: string, b: string) => tell(compareCommand(a, b, ports)));
  program
    .command("draw")
    .argument("FILE", file)
    .option("--out <file>", "write the drawing there instead of to the terminal")
    .option("--whole", "the whole build, a weekend about 20 px")
    .option("--slack", "with the slack of every step")
    .option("--dark", "light on dark")
    .description("the Dates sheet as SVG")
    .action((f: string, asked: DrawAsked) => tell(drawCommand(f, asked, ports)));
  program
    .command("reasons")
    .argument("FILE", file)
    .description("the steps in an order that works, with reasons")
    .action((f: string) => tell(reasonsCommand(f, ports)));
  program
    .command("pour")
    .argument("FILE", file)
    .argument("[POUR]", "a pour, by its name or a part of it; all where left out")
    .description("the sheet of a pour: pressure, what its form carries, what would make it hold, the day; 1 when one is not ready")
    .action((f: string, name: string | undefined) => tell(pourCommand(f, name, ports)));
  program
    .command("strip")
    .argument("FILE", file)
    .description("what comes off when, on which ground, and what each pour needs until then")
    .action((f: string) => tell(stripCommand(f, ports)));
  program
    .command("buy")
    .argument("FILE", file)
    .description("what is still to buy for pours and forms, and by when to order it")
    .action((f: string) => tell(buyCommand(f, ports)));
  program
    .command("one-more")
    .argument("FILE", file)
    .description("what one more day off, helper's day, visit or set of things would buy")
    .action((f: string) => tell(oneMoreCommand(f, ports)));
  program
    .command("aim")
    .argument("FILE", file)
    .option("--for <what>", "site-days, visits, pours or weekends; left out, what the build aims at")
    .option("--months <list>", "months to pour in, like 4,5,9")
    .option("--coldest <temperature>", "no pour on a day that gets colder than this")
    .option("--weeks-later <number>", "how much later the finish may be for it")
    .option("--out <file>", "write the build that is planned so")
    .description("a plan with fewer site days or visits, better days for pours or evener weeks; 1 when none was found")
    .action((f: string, asked: AimAsked) => tell(aimCommand(f, asked, ports)));
  for (const command of program.commands) command.exitOverride().configureOutput({ writeOut: ports.out, writeErr: () => {} });

  try {
    await program.parseAsync(words, { from: "user" });
    return code;
  } catch (error) {
    if (error instanceof Fault) return refuse(error.message, ports);
    if (!(error instanceof CommanderError)) throw error;
    if (error.exitCode === 0) return 0;
    if (error.code === "commander.help")
      return refuse(
        "Name a command, like check, plan, why, may, closings, compare, draw, reasons, pour, strip, buy, one-more or aim; --help tells more.",
        ports,
      );
    return refuse(
      sentence(
        error.message
          .replace(/^error: /, "")
          .replaceAll("'", "")
          .replace(/\n.*$/s, ""),
      ),
      ports,
    );
  }
}

function refuse(message: string, ports: Ports): number {
  ports.err(`${message}\n`);
  return 2;
}

function newProgram(ports: Ports): Command {
  return new Command("batterboard")
    .description(about)
    .helpCommand(false)
    .exitOverride()
    .configureOutput({ writeOut: ports.out, writeErr: () => {} });
}
