import type * as Calculations from "./tableCalculations";
import type * as WholeTables from "./wholeTables";

let here: typeof Calculations | undefined;
let coming: Promise<void> | undefined;

/** The calculations over whole tables, fetched before the first call; what did not arrive is asked for by the next. */
export const bringTables: typeof WholeTables.bringTables = () =>
  here === undefined ? (coming ??= fetchTables().finally(() => (coming = undefined))) : undefined;

async function fetchTables(): Promise<void> {
  here = await import(/* webpackChunkName: "whole-tables" */ "./tableCalculations");
}

export const decisionsOfTable: typeof Calculations.decisionsOfTable = (...given) =>
  here!.decisionsOfTable(...given);
export const scoresOfTable: typeof Calculations.scoresOfTable = (...given) => here!.scoresOfTable(...given);
export const findingsOfCounts: typeof Calculations.findingsOfCounts = (...given) =>
  here!.findingsOfCounts(...given);
export const gapsOfTable: typeof Calculations.gapsOfTable = (...given) => here!.gapsOfTable(...given);
export const outlookOfTables: typeof Calculations.outlookOfTables = (...given) =>
  here!.outlookOfTables(...given);
export const renewalOfTables: typeof Calculations.renewalOfTables = (...given) =>
  here!.renewalOfTables(...given);
