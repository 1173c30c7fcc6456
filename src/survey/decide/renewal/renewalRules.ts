import type { RenewalTriggers } from "../../../domain/renewal/cordonRenewal";
import type { YoungClusters } from "../../../domain/plan/youngVine";
import type { SettingValues } from "../../settings/settings";

/** The figures of renewal as the Settings sheet has them. */
export interface RenewalRules {
  readonly trunksWanted: number;
  readonly triggers: RenewalTriggers & {
    readonly trunkAge: number;
    readonly trunksWanted: number;
    readonly youngClusters: YoungClusters;
  };
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
  const trunksWanted = Math.round(settings.trunksWantedOnAVine);
  return {
    trunksWanted,
    triggers: {
      trunksWanted,
      emptyShare: settings.emptyShareThatRenewsACordon,
      badlyPlacedShare: settings.badlyPlacedShareThatRenewsACordon,
      spurSpacing: settings.spurSpacing,
      spurHeight: settings.spurHeightThatLowers,
      trunkAge: settings.trunkAgeThatRenews,
      youngClusters: { 2: settings.clustersAVineInYear2, 3: settings.clustersAVineInYear3 },
    },
    thickShare: settings.thickShareOfANewCane,
    yearlyLoss: settings.trunksLostAYear,
    broughtUp: settings.missingTrunksBroughtUpAYear,
  };
}
