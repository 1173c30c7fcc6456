import { SOURCES, type SourceId } from "../../domain/sources";
import { BLOCK_FIGURES } from "../../texts/blockFigures";
import { say, type Language } from "../../texts/language";
import type { BlockFigure, BlockFigureId, BlockFigures } from "../season/blockFigures";
import { SHEETS } from "../sheets/sheets";
import { threeDigits } from "./cropWords";

/**
 * Which figures are in force in a block and where each is from, in one sentence; after it that none is published for the
 * kind of grape, where that kind is named and Settings stand in.
 */
export function blockFigureSentence(
  figures: BlockFigures,
  ids: readonly BlockFigureId[],
  language: Language,
): string {
  const shown = ids.map((id) => {
    const { value, ...figure }: BlockFigure<number | string> = figures[id];
    return say(BLOCK_FIGURES.figure, language, {
      figure: SHEETS.blocks.columns.find((column) => column.id === id)!.header[language],
      value: typeof value === "number" ? threeDigits(value, language) : value,
      from: origin(figure, language),
    });
  });
  const { from, kind } = figures.secondaryWorth;
  const isLeftOpen = ids.includes("secondaryWorth") && from === "settings" && kind !== undefined;
  return [
    say(BLOCK_FIGURES.figures, language, { figures: shown.join("; ") }),
    ...(isLeftOpen ? [say(BLOCK_FIGURES.noneOfKind, language, { kind: kindWord(kind, language) })] : []),
  ].join(" ");
}

function origin({ from, source, cultivar, kind }: Omit<BlockFigure, "value">, language: Language): string {
  if (from === "block") return say(BLOCK_FIGURES.block, language);
  const work = source !== undefined && source in SOURCES ? SOURCES[source as SourceId] : undefined;
  if (!work) return say(BLOCK_FIGURES.settings, language);
  if (from === "settings") return say(BLOCK_FIGURES.settingsSource, language, { source: work.name });
  return say(BLOCK_FIGURES.published, language, {
    grape: from === "cultivar" ? cultivar : kindWord(kind, language),
    source: work.mark === "derived" ? say(BLOCK_FIGURES.derived, language, { source: work.name }) : work.name,
  });
}

function kindWord(kind: BlockFigure["kind"], language: Language): string {
  const { choices } = SHEETS.blocks.columns.find(({ id }) => id === "grapeKind")!;
  return choices?.find(({ id }) => id === kind)?.word[language] ?? "";
}
