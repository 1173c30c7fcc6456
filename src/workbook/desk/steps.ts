import { CommandType, ICommandService, type Injector } from "@univerjs/core";
import type { OwnSheet } from "../surveyWorkbook";

/** Something that was done to a workbook on the page, so that the same can be done again to the file as it was opened. */
export type Step =
  | { readonly is: "mutation"; readonly id: string; readonly params: object }
  | { readonly is: "ownSheet"; readonly content: OwnSheet }
  | {
      readonly is: "flag";
      readonly key: string;
      readonly value: string | undefined;
    };

/** What the engine works out by itself: formulas, of which only the names are somebody's doing, and heights of rows. */
const WORKED_OUT = /^formula\.mutation\.(?!(?:set|remove)-defined-name$)|row-auto-height$/;

/** Tells of every change of a workbook that the engine makes, by a person or by the pane; what it works out is none. */
export function watchMutations(
  injector: Injector,
  unitId: string,
  onStep: (step: Step) => void,
): { dispose(): void } {
  return injector.get(ICommandService).onCommandExecuted(({ id, type, params }, options) => {
    if (type !== CommandType.MUTATION || options?.onlyLocal || options?.fromCollab || WORKED_OUT.test(id))
      return;
    const given = params as { unitId?: string } | undefined;
    if (given?.unitId === unitId) onStep({ is: "mutation", id, params: given });
  });
}

/** Makes a mutation again, in the workbook that is open now. */
export function repeatMutation(injector: Injector, unitId: string, id: string, params: object): void {
  const again = { ...params, unitId };
  const done: unknown = injector.get(ICommandService).syncExecuteCommand(id, again, { fromCollab: true });
  if (done === false) throw new Error(id);
}
