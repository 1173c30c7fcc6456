import type { SettingRow } from "./setting";
import { figure, share } from "./figure";
import { TEXTS } from "../../texts/texts";

const NAMES = TEXTS.settingNames;
const MEANINGS = TEXTS.settings.renewal;

/** Settings for the renewal of trunks and cordons. */
export const RENEWAL_SETTINGS = {
  trunksWantedOnAVine: figure(
    NAMES.trunksWantedOnAVine,
    2,
    "trunks",
    "msu2002",
    [1, 6],
    MEANINGS.trunksWantedOnAVine,
  ),
  trunkAgeThatRenews: figure(
    NAMES.trunkAgeThatRenews,
    10,
    "years",
    "msu2002",
    [1, 100],
    MEANINGS.trunkAgeThatRenews,
  ),
  emptyShareThatRenewsACordon: share(
    NAMES.emptyShareThatRenewsACordon,
    0.33,
    "ours",
    MEANINGS.emptyShareThatRenewsACordon,
  ),
  badlyPlacedShareThatRenewsACordon: share(
    NAMES.badlyPlacedShareThatRenewsACordon,
    0.5,
    "ours",
    MEANINGS.badlyPlacedShareThatRenewsACordon,
  ),
  spurHeightThatLowers: figure(
    NAMES.spurHeightThatLowers,
    4,
    "in",
    "ours",
    [1, 40],
    MEANINGS.spurHeightThatLowers,
  ),
  thickShareOfANewCane: share(NAMES.thickShareOfANewCane, 0.5, "klodd2020", MEANINGS.thickShareOfANewCane),
  trunksLostAYear: share(NAMES.trunksLostAYear, 0.05, "ours", MEANINGS.trunksLostAYear),
  missingTrunksBroughtUpAYear: share(
    NAMES.missingTrunksBroughtUpAYear,
    0.5,
    "ours",
    MEANINGS.missingTrunksBroughtUpAYear,
  ),
} satisfies Readonly<Record<string, SettingRow>>;
