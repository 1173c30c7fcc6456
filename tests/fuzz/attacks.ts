import { Dice } from "./dice";
import { changedWhileRead, killedAtSomeMoment, writtenByTwo } from "./disturbed";
import { oddWorkbook } from "./oddWorkbooks";
import { tallied, type Tally } from "./tally";
import { soundWorkbook } from "./writers";
import { oddCsv } from "./oddCsv";
import { someWay, writingRun, WRITING_WAYS } from "./writingRun";

type OnCase = (tried: number, failed: number) => void;

/** One kind of attack on files. */
export interface Attack {
  readonly name: string;
  /** Cases of 1,000. */
  readonly share: number;
  /**
   * @param asksValidator false leaves out the validator, of which each question takes a second
   * @param onCase hears after each case how many were tried and how many of them failed
   */
  run(cases: number, seed: number, asksValidator?: boolean, onCase?: OnCase): Promise<Tally>;
}

function attack(
  name: string,
  share: number,
  oneCase: (dice: Dice, asksValidator: boolean) => Promise<"done" | "refused">,
): Attack {
  return {
    name,
    share,
    run: (cases, seed, asksValidator = true, onCase = undefined) =>
      tallied(name, cases, seed, (own) => oneCase(new Dice(own), asksValidator), onCase),
  };
}

/** What happens to a case, with what it was put before what went wrong. */
async function told<T>(what: string, work: Promise<T>): Promise<T> {
  try {
    return await work;
  } catch (error) {
    (error as Error).message = `${what}: ${(error as Error).message}`;
    throw error;
  }
}

/** Share of odd workbooks about which the validator is asked, because each question takes a second. */
const JUDGED = 0.05;

export const ATTACKS: readonly Attack[] = [
  attack("odd workbooks through every command", 0.5, async (dice, asksValidator) => {
    const { bytes, oddities } = oddWorkbook(dice);
    const way = someWay(dice);
    const ran = writingRun("farm.xlsx", bytes, way, (asksValidator && dice.chance(JUDGED)) || undefined);
    return (await told(`${way.join(" ")} with ${oddities.join(", ")}`, ran)).outcome;
  }),
  attack("odd csv files through every command", 0.35, async (dice, asksValidator) => {
    const bytes = oddCsv(dice);
    const way = someWay(dice);
    return (
      await told(
        way.join(" "),
        writingRun("farm.csv", bytes, way, (asksValidator && dice.chance(JUDGED)) || undefined),
      )
    ).outcome;
  }),
  attack(
    "sound workbooks of four writers, one to three commands on each",
    0.15,
    async (dice, asksValidator) => {
      const { writer, bytes } = await soundWorkbook(dice);
      let current = bytes;
      let last: "done" | "refused" = "done";
      for (let left = dice.whole(1, 3); left > 0; left--) {
        const way = dice.one(WRITING_WAYS);
        const { outcome, after } = await told(
          `${writer}, ${way.join(" ")}`,
          writingRun("farm.xlsx", current, way, asksValidator),
        );
        current = after;
        last = outcome;
      }
      return last;
    },
  ),
  attack("killed at some moment of writing (done: whole new, refused: whole old)", 0.04, killedAtSomeMoment),
  attack("two processes at once on one file (refused: one of them)", 0.04, writtenByTwo),
  attack("a file saved by somebody else during a run", 0.04, changedWhileRead),
];
