import type { Text } from "./language";
import { TEXTS } from "./texts";

/** Stages of a season, as headings. */
export const STAGE_NAMES = TEXTS.outlook.stageNames;

/** Sources of spread, in words. */
export const SPREAD_SOURCES = TEXTS.outlook.spreadSources;

/** What more of a sample would bring: {more} {minutes} {low} {high} {percent}. */
export const NEXT_STEPS = TEXTS.outlook.nextSteps;

/** What the sheets lack for an outlook, by the code in outlookInputs. */
export const OUTLOOK_LACKS: Readonly<Record<string, Text>> = TEXTS.outlook.outlookLacks;

/** Names of the groups of vines for thinning, lightest first. */
export const THINNING_GROUPS: readonly Text[] = TEXTS.outlook.thinningGroups;

/** Where crop load lies against its range: {load} {low} {high} {range}. */
export const CROP_LOAD_VERDICTS = TEXTS.outlook.cropLoadVerdicts;

/** The ranges of crop load, by the word that Settings has for them. */
export const CROP_LOAD_RANGE_NAMES = TEXTS.outlook.cropLoadRanges;

/** Which crop is divided by which prunings: {year}. */
export const CROP_LOAD_PAIRS = TEXTS.outlook.cropLoadPairs;

/** Both crops where secondaries can be read two ways: {other} {clusters}. */
/** The most that a block in one of its first three years may carry. */
export const YOUNG_BLOCK: Readonly<Record<"bare" | "carries", Text>> = TEXTS.outlook.youngBlock;

export const OTHER_SECONDARIES: Text = TEXTS.outlook.otherSecondaries;

/** What nodes counted after a spring frost leave of a crop: {nodes} {primaries} {secondaries} {worth} {share}. */
export const FROST_COUNTED: Text = TEXTS.outlook.frostCounted;

/** Said beside a crop load verdict when the range of the crop reaches over a limit. */
export const CROP_LOAD_UNSURE: Text = TEXTS.outlook.cropLoadUnsure;

/** Why missing vines are not counted as zero. */
export const MISSING_TWICE: Text = TEXTS.outlook.missingTwice;

/** What handbooks say to count, beside the calculated number: {vines} {clusters} {percent}. */
export const HANDBOOK_SAMPLES: Readonly<Record<string, Text>> = TEXTS.outlook.handbookSamples;

/** A figure of the farm's own, proposed: {figure} {cultivar} {years} {now} {value} {percent}. */
export const FARM_FIGURES: Readonly<Record<string, Text>> = TEXTS.outlook.farmFigures;

/** A block's own harvests, and how a range stands to them: {years} {first} {last} {least} {mean} {most} {low} {high} {unit}. */
export const OWN_HARVESTS = TEXTS.outlook.ownHarvests;

/** How a proposed figure was made. */
export const FARM_FIGURE_WEIGHT: Text = TEXTS.outlook.farmFigureWeight;
