import type { Check, FindingKind } from "./check";
import { choiceId } from "../season/vinePlaces";

const deadWithSpurs: FindingKind = { code: "deadWithSpurs", severity: "wrong", action: "lookAtVine" };
const deadTrunkLiveCordon: FindingKind = {
  code: "deadTrunkLiveCordon",
  severity: "wrong",
  action: "lookAtVine",
};

/** A dead cordon with live spurs; a cordon with live spurs on a dead trunk. */
export const CONTRADICTIONS: Check = {
  id: "contradictions",
  kinds: [deadWithSpurs, deadTrunkLiveCordon],
  sheets: ["cordons"],
  scope: "row",
  prepare(table) {
    const spurs = table.column("liveSpurs")?.numbers;
    const condition = table.column("condition");
    const trunkCondition = table.column("trunkCondition");
    if (!spurs || (!condition && !trunkCondition)) return undefined;
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        if (!(spurs[i] > 0)) continue;
        if (condition && choiceId(condition, i) === "dead")
          report(deadWithSpurs, i, condition, { spurs: spurs[i] });
        else if (trunkCondition && choiceId(trunkCondition, i) === "dead")
          report(deadTrunkLiveCordon, i, trunkCondition, { spurs: spurs[i] });
      }
    };
  },
};
