import { measureQuality } from "./measureQuality";

const [seasons = 200, seed = 1000] = process.argv.slice(2).map(Number);
const quality = measureQuality(seasons, seed);
const percent = (part: number, whole: number) =>
  whole === 0 ? "-" : `${((100 * part) / whole).toFixed(1)} %`;
const line = (...cells: (string | number)[]) =>
  process.stdout.write(
    cells.map((cell, i) => (i === 0 ? String(cell).padEnd(22) : String(cell).padStart(12))).join("") + "\n",
  );

process.stdout.write(
  `${quality.seasons} seasons from seed ${seed}, ${quality.cleanRows} clean rows (cordons, vines, bud cuts)\n\n`,
);
line("kind", "severity", "planted", "found", "recall", "named", "false", "a 500 rows");
for (const kind of quality.kinds)
  line(
    kind.code,
    kind.severity,
    kind.planted,
    kind.found,
    percent(kind.found, kind.planted),
    percent(kind.named, kind.planted),
    kind.falseAlarms,
    ((500 * kind.falseAlarms) / quality.cleanRows).toFixed(3),
  );
for (const severity of ["wrong", "ask", "note"] as const) {
  const own = quality.kinds.filter((kind) => kind.severity === severity);
  const sum = (of: (kind: (typeof own)[number]) => number) =>
    own.reduce((total, kind) => total + of(kind), 0);
  const [planted, found, named, alarms] = [
    sum((kind) => kind.planted),
    sum((kind) => kind.found),
    sum((kind) => kind.named),
    sum((kind) => kind.falseAlarms),
  ];
  line(
    `all ${severity}`,
    severity,
    planted,
    found,
    percent(found, planted),
    percent(named, planted),
    alarms,
    ((500 * alarms) / quality.cleanRows).toFixed(3),
  );
}
process.stdout.write(
  `\nfalse alarms (wrong and ask): ${quality.falseAlarms} in ${quality.cleanRows} clean rows, one in ${Math.round(quality.cleanRows / Math.max(1, quality.falseAlarms))}\n`,
);
const short = quality.kinds.filter(
  (kind) =>
    kind.planted > 0 &&
    ((kind.severity === "wrong" && kind.found < kind.planted) ||
      (kind.severity === "ask" && kind.found < 0.9 * kind.planted)),
);
process.stdout.write(
  short.length === 0
    ? "no kind falls short of its goal\n"
    : `short of the goal: ${short.map((kind) => `${kind.code} ${percent(kind.found, kind.planted)}`).join(", ")}\n`,
);
