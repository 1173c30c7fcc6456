import { grouped } from "../../domain/grouped";
import type { DoubtKind } from "./countOfText";
import type { OpenAccount, ReadingAnswers, ReadingNote } from "./readingAccount";
import { isoDay, type DayOrder } from "./serialDate";

interface Seen {
  cells: number;
  sheet: string;
  readonly examples: string[];
  readonly columns: Set<string>;
  proposals: number;
}

/** Kinds that a spreadsheet made of something else: what was counted can only be guessed, so a recount goes first. */
const GUESSED: ReadonlySet<DoubtKind> = new Set(["date", "time"]);

/** Odd cells of a season by their kind, so that each kind is one question or one note. */
export class OddCells {
  private readonly doubts = new Map<DoubtKind, Seen>();
  private readonly read = new Map<"strokes" | "worded" | "ownUnits" | "textNumbers", Seen>();
  private unclear: { sheet: string; cells: number; likely: DayOrder }[] = [];
  private settled: ReadingNote[] = [];
  private noYear: { sheet: string; cells: number; example: string; likely: number | undefined }[] = [];

  /** @param winter that most dates of the workbook tell, for dates without a year where no other stands beside them */
  constructor(
    readonly answers: ReadingAnswers,
    readonly winter?: number,
  ) {}

  /** True where this kind of count is taken as proposed. */
  isTaken(kind: DoubtKind): boolean {
    return this.answers.oddCounts?.includes(kind) === true;
  }

  doubt(kind: DoubtKind, sheet: string, column: string, value: unknown, proposal: number | undefined): void {
    const seen = seenIn(this.doubts, kind, sheet);
    note(seen, column, value);
    if (proposal !== undefined) seen.proposals++;
  }

  wasRead(
    how: "strokes" | "worded" | "ownUnits" | "textNumbers",
    sheet: string,
    column: string,
    value: unknown,
  ): void {
    note(seenIn(this.read, how, sheet), column, value);
  }

  /** Forgets what was told of a sheet's dates piece by piece, which is told anew of all of them. */
  forgetDates(sheet: string): void {
    this.unclear = this.unclear.filter((dates) => dates.sheet !== sheet);
    this.settled = this.settled.filter((dates) => dates.sheet !== sheet);
    this.noYear = this.noYear.filter((dates) => dates.sheet !== sheet);
  }

  unclearDates(sheet: string, cells: number, likely: DayOrder): void {
    this.unclear.push({ sheet, cells, likely });
  }

  yearless(sheet: string, cells: number, example: string, likely: number | undefined): void {
    this.noYear.push({ sheet, cells, example, likely });
  }

  settledDates(
    sheet: string,
    cells: number,
    order: DayOrder,
    first: { readonly text: string } & Readonly<Record<DayOrder, number>>,
  ): void {
    const example = `${first.text} = ${isoDay(first[order])}`;
    this.settled.push({ code: "datesSettled", sheet, facts: { cells, order, examples: [example] } });
  }

  tell(account: OpenAccount): void {
    account.notes.push(...this.settled);
    for (const [code, { sheet, cells, examples, columns }] of this.read)
      account.notes.push({ code, sheet, facts: { cells, examples, columns: [...columns] } });
    for (const [kind, { sheet, cells, examples, columns, proposals }] of this.doubts) {
      if (this.answers.recount?.includes(kind)) continue;
      account.questions.push({
        code: "oddCounts",
        sheet,
        facts: { kind, cells, examples, columns: [...columns] },
        proposals: [
          ...(proposals > 0 && !GUESSED.has(kind) ? [{ oddCounts: [kind] }] : []),
          { recount: [kind] },
          ...(proposals > 0 && GUESSED.has(kind) ? [{ oddCounts: [kind] }] : []),
        ],
      });
    }
    for (const [likely, own] of grouped(this.noYear, (dates) => dates.likely)) {
      const sheets = [...new Set(own.map(({ sheet }) => sheet))];
      account.questions.push({
        code: "noYear",
        sheet: sheets[0],
        facts: {
          cells: own.reduce((sum, { cells }) => sum + cells, 0),
          examples: [...new Set(own.map(({ example }) => example))].slice(0, 3),
          sheets,
        },
        proposals:
          likely === undefined ? [] : [{ winters: sheets.map((sheet) => ({ sheet, winter: likely })) }],
      });
    }
    if (this.unclear.length === 0) return;
    const [{ sheet, likely }] = this.unclear;
    account.questions.push({
      code: "dateOrder",
      sheet,
      facts: { cells: this.unclear.reduce((sum, { cells }) => sum + cells, 0) },
      proposals: [{ dateOrder: likely }, { dateOrder: likely === "dayFirst" ? "monthFirst" : "dayFirst" }],
    });
  }
}

function seenIn<Key>(all: Map<Key, Seen>, key: Key, sheet: string): Seen {
  let seen = all.get(key);
  if (!seen) all.set(key, (seen = { cells: 0, sheet, examples: [], columns: new Set(), proposals: 0 }));
  return seen;
}

function note(seen: Seen, column: string, value: unknown): void {
  seen.cells++;
  seen.columns.add(column);
  const example = String(value).trim();
  if (seen.examples.length < 3 && !seen.examples.includes(example)) seen.examples.push(example);
}
