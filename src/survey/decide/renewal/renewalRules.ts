import type { RenewalTriggers } from "../../../domain/renewal/cordonRenewal";
import { metresFromFeet } from "../../../domain/units";
import type { SettingValues } from "../../settings/setting";

/** The figures of renewal as the Settings sheet has them. */
export interface RenewalRules {
  readonly trunksWanted: number;
  readonly triggers: RenewalTriggers;
  /** Share of a cane that is thick enough to lay. */
  readonly thickShare: number;
  readonly yearlyLoss: number;
  readonly broughtUp: number;
}

/**
 * The figures of renewal as the Settings sheet has them.
 *
 * @example
 * renewalRules(defaultSettings()).trunksWanted // 2
 */
export function renewalRules(settings: SettingValues): RenewalRules {
  const number = (id: string) => Number(settings.get(id));
  return {
    trunksWanted: Math.round(number("Trunks wanted on a vine")),
    triggers: {
      emptyShare: number("Empty share that renews a cordon"),
      badlyPlacedShare: number("Badly placed share that renews a cordon"),
      spurSpacing: metresFromFeet(number("Spur spacing") / 12),
    },
    thickShare: number("Thick share of a new cane"),
    yearlyLoss: number("Trunks lost a year"),
    broughtUp: number("Missing trunks brought up a year"),
  };
}
