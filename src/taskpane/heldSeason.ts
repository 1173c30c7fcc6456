import type { Finding } from "../survey/checks/finding";
import type { DecidedBefore, DecidedVine } from "../survey/decide/decideSeason";
import type { Season } from "../survey/season/season";
import type { HeldSheets, HeldValues } from "./heldSheets";
import { inSlices } from "./inSlices";
import type { ReadingOptions } from "./readAreas";

/** Reading, checking and deciding, fetched once the pane stands. */
export const seasonWork = () => import(/* webpackChunkName: "season-work" */ "./seasonWork");

/** The season of one version of the workbook. */
export interface SeasonReading extends HeldValues {
  readonly season: Season;
}

/** What is measured, so that it can be told how long it would take again. */
export type Measured = "season" | "findings" | "decisions" | "gaps" | "nodes" | "crew" | "outlook" | "stands";

/** The one Season of the pane, with what was worked out from it; anew for every version of the workbook. */
export class HeldSeason {
  private readonly times = new Map<Measured, number>();
  private readonly made = new Map<string, { readonly version: number; readonly result: unknown }>();
  private reading: SeasonReading | undefined;
  private decided: (DecidedBefore & { readonly version: number }) | undefined;

  private found: { readonly version: number; readonly findings: readonly Finding[] } | undefined;

  /** @param today the day as the pane knows it, as a spreadsheet serial */
  constructor(
    private readonly sheets: HeldSheets,
    private readonly today?: number,
  ) {}

  /** Raised by every change of what the sheets hold. */
  get version(): number {
    return this.sheets.version;
  }

  /** The season as the workbook holds it at this moment. */
  async read(options?: ReadingOptions): Promise<SeasonReading> {
    const [values, { readSeason }] = await Promise.all([this.sheets.read(options), seasonWork()]);
    if (this.reading?.version !== values.version) {
      const season = this.timed("season", () => readSeason(values.areas, { today: this.today }));
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
    const { decideSeason } = await seasonWork();
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

  /** Every finding, in the order of the sheets, once for a version. */
  async check(
    { version, season }: SeasonReading,
    today: number,
    signal: AbortSignal,
    onDone: (share: number) => void = () => {},
  ): Promise<readonly Finding[]> {
    if (this.found?.version === version) return this.found.findings;
    const { checkSeason, inSheetOrder } = await seasonWork();
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
    this.found = { version, findings: inSheetOrder(findings, season) };
    return this.found.findings;
  }

  /** A result, worked out once for a version of the workbook and each `of` what it may be worked out. */
  once<Made>(what: Measured, { version }: SeasonReading, of: string, work: () => Made): Made {
    const key = `${what} ${of}`;
    const known = this.made.get(key);
    if (known?.version === version) return known.result as Made;
    const result = this.timed(what, work);
    this.made.set(key, { version, result });
    return result;
  }

  /** Measures how long a piece of work takes. */
  timed<Made>(what: Measured, work: () => Made): Made {
    const start = performance.now();
    const made = work();
    this.times.set(what, performance.now() - start);
    return made;
  }

  /** The season as it was read last; undefined before the first reading. */
  get season(): Season | undefined {
    return this.reading?.season;
  }

  /** True once the workbook was read. */
  get hasRead(): boolean {
    return this.reading !== undefined;
  }

  /** Milliseconds that these took when they were last worked out; none for what stands ready for this version. */
  took(what: readonly Measured[]): number {
    const ready: Partial<Record<Measured, { readonly version: number } | undefined>> = {
      season: this.reading,
      findings: this.found,
      decisions: this.decided,
    };
    return what.reduce(
      (sum, one) => sum + (ready[one]?.version === this.version ? 0 : (this.times.get(one) ?? 0)),
      0,
    );
  }
}
