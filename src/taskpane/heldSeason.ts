import { checkSeason, inSheetOrder } from "../survey/checks/checkSeason";
import type { Finding } from "../survey/checks/finding";
import { decideSeason, type DecidedBefore, type DecidedVine } from "../survey/decide/decideSeason";
import { readSeason } from "../survey/reading/readSeason";
import type { Season } from "../survey/season/season";
import type { HeldSheets, HeldValues } from "./heldSheets";
import { inSlices } from "./inSlices";
import type { ReadingOptions } from "./readAreas";

/** The season of one version of the workbook. */
export interface SeasonReading extends HeldValues {
  readonly season: Season;
}

/** What is measured, so that it can be told how long it would take again. */
export type Measured = "season" | "findings" | "decisions" | "gaps" | "crew" | "outlook";

/** The one Season of the pane, with what was worked out from it; anew for every version of the workbook. */
export class HeldSeason {
  private readonly times = new Map<Measured, number>();
  private reading: SeasonReading | undefined;
  private decided: (DecidedBefore & { readonly version: number }) | undefined;

  constructor(private readonly sheets: HeldSheets) {}

  /** Raised by every change of what the sheets hold. */
  get version(): number {
    return this.sheets.version;
  }

  /** The season as the workbook holds it at this moment. */
  async read(options?: ReadingOptions): Promise<SeasonReading> {
    const values = await this.sheets.read(options);
    if (this.reading?.version !== values.version) {
      const season = this.timed("season", () => readSeason(values.areas, { mapping: values.mapping }));
      this.reading = { ...values, season };
    }
    return this.reading;
  }

  /** Looks whether the workbook still holds what was read. */
  look(): Promise<void> {
    return this.sheets.look();
  }

  stop(): Promise<void> {
    return this.sheets.stop();
  }

  /** Every vine decided, once for a version. */
  async decide(
    { version, season }: SeasonReading,
    signal: AbortSignal,
    onVine: (vine: DecidedVine) => void = () => {},
  ): Promise<readonly DecidedVine[]> {
    if (this.decided?.version === version) return this.decided.vines;
    const start = performance.now();
    const vines: DecidedVine[] = [];
    const take = (vine: DecidedVine) => {
      vines.push(vine);
      onVine(vine);
    };
    await inSlices(decideSeason(season, this.decided), take, signal);
    this.times.set("decisions", performance.now() - start);
    this.decided = { version, settings: season.settings, vines };
    return vines;
  }

  /** Every finding, in the order of the sheets. */
  async check(
    { season }: SeasonReading,
    today: number,
    signal: AbortSignal,
    onDone: (share: number) => void = () => {},
  ): Promise<Finding[]> {
    const start = performance.now();
    const findings: Finding[] = [];
    await inSlices(
      checkSeason(season, { today }),
      ({ finding, done }) => {
        if (finding !== undefined) findings.push(finding);
        else onDone(done);
      },
      signal,
    );
    this.times.set("findings", performance.now() - start);
    return inSheetOrder(findings, season);
  }

  timed<Made>(what: Measured, work: () => Made): Made {
    const start = performance.now();
    const made = work();
    this.times.set(what, performance.now() - start);
    return made;
  }

  /** Milliseconds that these took when they were last worked out. */
  took(what: readonly Measured[]): number {
    return what.reduce((sum, one) => sum + (this.times.get(one) ?? 0), 0);
  }
}
