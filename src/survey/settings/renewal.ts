import type { SettingRow } from "./setting";
import { figure, share } from "./figure";
import { TEXTS } from "../../texts/texts";

const MEANINGS = TEXTS.settings.renewal;

/** Settings for the renewal of trunks and cordons. */
export const RENEWAL_SETTINGS = {
  trunksWantedOnAVine: figure(
    "Trunks wanted on a vine",
    2,
    "trunks",
    "msu2002",
    [1, 6],
    MEANINGS.trunksWantedOnAVine,
  ),
  trunkAgeThatRenews: figure(
    "Trunk age that renews",
    10,
    "years",
    "msu2002",
    [1, 100],
    MEANINGS.trunkAgeThatRenews,
  ),
  emptyShareThatRenewsACordon: share(
    "Empty share that renews a cordon",
    0.33,
    "ours",
    MEANINGS.emptyShareThatRenewsACordon,
  ),
  badlyPlacedShareThatRenewsACordon: share(
    "Badly placed share that renews a cordon",
    0.5,
    "ours",
    MEANINGS.badlyPlacedShareThatRenewsACordon,
  ),
  spurHeightThatLowers: figure(
    "Spur height that lowers",
    4,
    "in",
    "ours",
    [1, 40],
    MEANINGS.spurHeightThatLowers,
  ),
  thickShareOfANewCane: share("Thick share of a new cane", 0.5, "klodd2020", MEANINGS.thickShareOfANewCane),
  trunksLostAYear: share("Trunks lost a year", 0.05, "ours", MEANINGS.trunksLostAYear),
  missingTrunksBroughtUpAYear: share(
    "Missing trunks brought up a year",
    0.5,
    "ours",
    MEANINGS.missingTrunksBroughtUpAYear,
  ),
} satisfies Readonly<Record<string, SettingRow>>;
