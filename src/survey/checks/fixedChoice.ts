import type { Check, FindingKind } from "./check";
import { rowsByVine } from "../season/vineGroups";
import { choiceId } from "../season/vinePlaces";

const deadCordonStays: FindingKind = { code: "deadCordonStays", severity: "wrong", action: "lookAtVine" };
const sickCordonStays: FindingKind = { code: "sickCordonStays", severity: "ask", action: "lookAtVine" };
const twoStayOnSide: FindingKind = { code: "twoStayOnSide", severity: "ask", action: "lookAtVine" };

/** Decisions of a person that contradict the condition of the cordon or its trunk, or keep two cordons on one side. */
export const FIXED_CHOICE: Check = {
  id: "fixedChoice",
  kinds: [deadCordonStays, sickCordonStays, twoStayOnSide],
  sheets: ["cordons"],
  scope: "row",
  prepare(table, context) {
    const decided = table.column("fixedChoice");
    if (!decided) return undefined;
    const condition = table.column("condition");
    const trunkCondition = table.column("trunkCondition");
    const spurs = table.column("liveSpurs")?.numbers;
    const side = table.column("side");
    const doubled = new Map<number, number>();
    if (side)
      for (const [, rows] of rowsByVine(table, context)) {
        const first = new Map<number, number>();
        for (const i of rows) {
          if (choiceId(decided, i) !== "stays" || side.codes[i] < 0) continue;
          const other = first.get(side.codes[i]);
          if (other === undefined) first.set(side.codes[i], i);
          else doubled.set(i, other);
        }
      }
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        if (choiceId(decided, i) !== "stays") continue;
        const states = [condition, trunkCondition].map((column) => column && choiceId(column, i));
        if (states.includes("dead") || spurs?.[i] === 0)
          report(deadCordonStays, i, decided, { spurs: spurs?.[i] ?? 0 });
        else if (states.includes("diseased")) report(sickCordonStays, i, decided);
        const other = doubled.get(i);
        if (other !== undefined)
          report(twoStayOnSide, i, decided, { otherRow: table.sheetRow(other), choice: choiceId(side!, i)! });
      }
    };
  },
};
