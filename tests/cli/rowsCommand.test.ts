import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import Papa from "papaparse";
import { run } from "./testTerminal";

jest.setTimeout(60000);

const PROJECT = join(__dirname, "../..");
const folder = mkdtempSync(join(tmpdir(), "cordonbook-rows-"));
afterAll(() => rmSync(folder, { recursive: true }));

interface RowGaps {
  readonly block: string;
  readonly row: number;
  readonly vines: number;
  readonly cordons: number;
  readonly positions: number;
  readonly liveSpurs: number;
  readonly gaps: number;
  readonly share: number;
  readonly longestGap: number;
}

/** The query that the README shows. */
function readmeQuery(): string {
  const [, query] = /```sql\n([\s\S]*?)```/.exec(readFileSync(join(PROJECT, "README.md"), "utf8"))!;
  return query;
}

test("the README's query over a region gives the gaps of every farm in it", async () => {
  const farms = ["east.xlsx", "west.xlsx"].map((name, index) => {
    const path = join(folder, name);
    const sample = index === 0 ? "larkmoor-clean.xlsx" : "larkmoor-mistakes.xlsx";
    copyFileSync(join(PROJECT, "sample-workbooks", sample), path);
    return path;
  });
  const { out, exitCode, told } = await run(["rows", ...farms]);
  // the odd text “about eight” in the farm with mistakes is asked about
  expect([exitCode, told]).toEqual([1, expect.stringContaining("1 question is open.")]);
  const region = join(folder, "region.csv");
  writeFileSync(region, out);

  const instance = await DuckDBInstance.create(":memory:");
  const connection = await instance.connect();
  const query = readmeQuery().replace("'region.csv'", `'${region}'`);
  expect(query).toContain(region);
  const rows = (await connection.runAndReadAll(query)).getRowObjects().map((row) => ({
    file: String(row.file),
    block: String(row.block),
    row: Number(row.vine_row),
    vines: Number(row.vines),
    cordons: Number(row.cordons),
    positions: Number(row.positions),
    liveSpurs: Number(row.live_spurs),
    gaps: Number(row.gaps),
    share: Number(row.share),
    longestGap: Number(row.longest_gap),
  }));
  connection.closeSync();
  instance.closeSync();

  for (const farm of farms) {
    const gaps = JSON.parse((await run(["gaps", farm, "--format", "json"])).out) as { rows: RowGaps[] };
    const file = farm.slice(farm.lastIndexOf("/") + 1);
    expect(gaps.rows.length).toBeGreaterThan(20);
    for (const expected of gaps.rows) {
      const found = rows.find(
        (row) => row.file === file && row.block === expected.block && row.row === expected.row,
      )!;
      expect(found).toMatchObject({
        cordons: expected.cordons,
        positions: expected.positions,
        liveSpurs: expected.liveSpurs,
        gaps: expected.gaps,
      });
      expect(found.share).toBeCloseTo(expected.share, 12);
    }
  }
});

test("rows are metric, with ids for words, and safe to open in a spreadsheet", async () => {
  const path = join(folder, "counts.csv");
  writeFileSync(
    path,
    "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs,Condition,Date\n=1+1,1,2,L,A,1,10,8,nine,ok,2026-01-12\n",
  );
  const { data } = Papa.parse<Record<string, string>>((await run(["rows", path])).out, { header: true });
  expect(data).toEqual([
    expect.objectContaining({
      sheet: "counts",
      sheet_row: "2",
      block: "'=1+1",
      vine_row: "1",
      vine: "2",
      side: "left",
      length: "3.048",
      positions: "8",
      live_spurs: "",
      condition: "sound",
      counted_on: "2026-01-12",
    }),
  ]);
});
