import type { UnitSystem } from "../domain/units";
import { SAMPLE_NAMES } from "../texts/desk";
import { emptySeasonFile } from "../texts/emptySeasonFile";
import { LANGUAGES, sameText, withTexts, type Language, type Text } from "../texts/language";
import { TEXTS } from "../texts/texts";
import { FIRST_SAMPLE } from "./sampleFile";

/** A workbook that comes with the project. */
export interface Sample {
  readonly id: string;
  readonly name: Text;
}

const LANGUAGE_NAMES: Readonly<Record<Language, string>> = TEXTS.language.name;
const UNIT_SYSTEMS = ["US", "metric"] as const;

/** An empty season to fill in, by the units and the language of its sheets. */
export function emptySample(units: UnitSystem, of: Language): Sample {
  return {
    id: emptySeasonFile(units, of).replace("-season", "").replace(".xlsx", ""),
    name: withTexts(SAMPLE_NAMES.empty, {
      units: SAMPLE_NAMES[units],
      language: sameText(LANGUAGE_NAMES[of]),
    }),
  };
}

/** The first one is opened when the page starts. */
export const SAMPLES: readonly Sample[] = [
  { id: FIRST_SAMPLE, name: SAMPLE_NAMES.clean },
  { id: "mistakes", name: SAMPLE_NAMES.mistakes },
  ...LANGUAGES.flatMap((of) => UNIT_SYSTEMS.map((units) => emptySample(units, of))),
];

/** A sample by its name in the page's address; the first where there is no such one. */
export function sampleOf(id: string | null): Sample {
  return SAMPLES.find((candidate) => candidate.id === id) ?? SAMPLES[0];
}
