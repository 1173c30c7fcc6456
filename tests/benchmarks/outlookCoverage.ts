import { PUBLISHED_WINTERS, winterOutlookOf } from "../published/winterToHarvest";
import { BUD_SCENARIOS, budCoverage, coverage, SCENARIOS } from "../domain/outlook/coverage";

const BLOCKS = Number(process.argv[2] ?? 4000);
const CONFIDENCE = Number(process.argv[3] ?? 0.9);
const percent = (value: number) => `${(100 * value).toFixed(1)} %`;

console.log(
  `How often a ${100 * CONFIDENCE} % range of the crop outlook holds the true crop, ${BLOCKS} simulated blocks a line`,
);
console.log(`${"figures".padEnd(46)}${"held".padStart(8)}${"+-".padStart(8)}${"half-width".padStart(12)}`);
let outside = 0;
const line = (name: string, seen: { share: number; error: number; halfWidth: number }, bad: boolean) => {
  if (bad) outside++;
  console.log(
    `${name.padEnd(46)}${percent(seen.share).padStart(8)}${percent(seen.error).padStart(8)}${percent(seen.halfWidth).padStart(12)}${bad ? "  off" : ""}`,
  );
};
for (const [index, scenario] of SCENARIOS.entries()) {
  const seen = coverage(scenario, BLOCKS, 1000 + index, CONFIDENCE);
  line(scenario.name, seen, Math.abs(seen.share - CONFIDENCE) > 0.02);
}
console.log("The worth of the buds alone: at least as often as it says");
for (const [index, scenario] of BUD_SCENARIOS.entries()) {
  const [canes, alive, correlation, secondary] = scenario;
  const name = `buds, ${canes} canes, ${alive} alive, ${correlation} alike, ${secondary} saved`;
  const seen = budCoverage(scenario, BLOCKS, 2000 + index, CONFIDENCE);
  line(name, seen, seen.share < CONFIDENCE - 0.02);
}
console.log(
  "Winters of which nodes and harvest were published, a vine in kg, by the usual figures of Settings",
);
for (const winter of PUBLISHED_WINTERS) {
  const { low, likely, high } = winterOutlookOf(winter).perVine;
  const held = winter.harvest >= low && winter.harvest <= high ? "held" : "missed";
  const range = [low, likely, high].map((value) => value.toFixed(1)).join(" - ");
  console.log(`${winter.vine.padEnd(56)}${range.padStart(18)}, picked ${winter.harvest.toFixed(1)}: ${held}`);
}
console.log(outside ? `${outside} lines off` : "every line as it says");
