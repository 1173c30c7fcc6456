/** The part of Office.addin that is used. */
export interface StartupBehavior {
  getStartupBehavior(): Promise<Office.StartupBehavior>;
  setStartupBehavior(behavior: Office.StartupBehavior): Promise<void>;
}

/** Whether this workbook starts Cordonbook when it is opened; not unless somebody asked for it. */
export async function startsAtOpening(addin: StartupBehavior): Promise<boolean> {
  return (await addin.getStartupBehavior()) === ("Load" as Office.StartupBehavior);
}

/**
 * Has this workbook start Cordonbook when it is opened, so that formulas typed by others are ready without the pane,
 * or no longer. Colleagues who do not have Cordonbook see a notice of Office at each opening; so it is never switched
 * on by itself.
 */
export function setStartsAtOpening(addin: StartupBehavior, on: boolean): Promise<void> {
  return addin.setStartupBehavior((on ? "Load" : "None") as Office.StartupBehavior);
}
