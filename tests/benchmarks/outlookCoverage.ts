import { coverage, SCENARIOS } from "../domain/outlook/coverage";

const BLOCKS = Number(process.argv[2] ?? 4000);
const CONFIDENCE = Number(process.argv[3] ?? 0.9);

console.log(
  `How often a ${100 * CONFIDENCE} % range of the crop outlook holds the true crop, ${BLOCKS} simulated blocks a line`,
);
console.log(`${"figures".padEnd(46)}${"held".padStart(8)}${"+-".padStart(7)}${"half-width".padStart(12)}`);
let outside = 0;
for (const [index, scenario] of SCENARIOS.entries()) {
  const { share, error, halfWidth } = coverage(scenario, BLOCKS, 1000 + index, CONFIDENCE);
  const mark = Math.abs(share - CONFIDENCE) <= 0.02 ? "" : "  more than 2 points off";
  if (mark) outside++;
  const percent = (value: number) => `${(100 * value).toFixed(1)} %`;
  console.log(
    `${scenario.name.padEnd(46)}${percent(share).padStart(8)}${percent(error).padStart(7)}${percent(halfWidth).padStart(12)}${mark}`,
  );
}
console.log(outside ? `${outside} lines more than 2 points off` : "every line within 2 points");
