import { html, svg, type TemplateResult } from "lit";
import { lengthWords } from "../survey/decide/choice/lengthWords";
import type { DecidedVine } from "../survey/decide/decideSeason";
import { vineDrawing, type DrawnCordon } from "../survey/decide/picture/vineDrawing";
import type { UnitSystem } from "../domain/units";
import { SIDE_WORDS, VERDICT_WORDS } from "../texts/choice";
import { say, type Language } from "../texts/language";
import { PICTURE_TEXTS } from "../texts/picture";

const WIDTH = 288;
const LINE = 32;
const TOP = 16;
const TRUNK_HEIGHT = 34;
/** From the end of a cordon to its name, for each sign of the name, and for the longest that is drawn whole. */
const LABEL = { gap: 4, sign: 9, most: 76 };
const TRUNK_STEP = 14;
const SPUR = 9;
const STROKES: Readonly<Record<DrawnCordon["verdict"], { width: number; dashes: string }>> = {
  stays: { width: 4, dashes: "none" },
  goes: { width: 2, dashes: "7 4" },
  ask: { width: 3, dashes: "1.5 4" },
};

/**
 * A picture of a vine, drawn to scale from its counts: trunks, cordons, live spurs with the way they point, and the
 * longest gap. The same is told in words for those who do not see it; line kinds tell stays from goes without colour.
 */
export function vinePicture(vine: DecidedVine, language: Language, unitSystem: UnitSystem): TemplateResult {
  const drawing = vineDrawing(vine);
  const longest = Math.max(0, ...drawing.cordons.map((cordon) => nameOf(cordon).length));
  const label = Math.min(LABEL.most, LABEL.gap + longest * LABEL.sign);
  const scale = (WIDTH / 2 - label - (drawing.trunks.length * TRUNK_STEP) / 2) / drawing.reach;
  const lines = linesOf(drawing.cordons);
  const height = TOP + (Math.max(0, ...lines) + 1) * LINE + TRUNK_HEIGHT;
  const trunkAt = (trunk: number | undefined) => {
    const index = trunk === undefined ? -1 : drawing.trunks.indexOf(trunk);
    return WIDTH / 2 + (index < 0 ? 0 : (index - (drawing.trunks.length - 1) / 2) * TRUNK_STEP);
  };
  const headY = (trunk: number) =>
    Math.min(
      ...drawing.cordons.map((cordon, index) =>
        cordon.trunk === trunk ? TOP + lines[index] * LINE : height,
      ),
    );
  return html`<figure class="vine-picture" style="margin:0">
    <svg
      viewBox=${`0 0 ${WIDTH} ${height}`}
      role="img"
      aria-label=${pictureWords(vine, language, unitSystem)}
      style="inline-size:100%;block-size:auto;color:inherit"
    >
      <defs>
        <pattern id="bare" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" y1="0" x2="0" y2="5" stroke="currentColor" stroke-width="1.4" />
        </pattern>
      </defs>
      <line x1="0" x2=${WIDTH} y1=${height - 1} y2=${height - 1} stroke="currentColor" stroke-width="1" />
      ${drawing.trunks.map(
        (trunk) => svg`<g class="trunk">
          <line x1=${trunkAt(trunk)} x2=${trunkAt(trunk)} y1=${headY(trunk)} y2=${height - 1} stroke="currentColor" stroke-width="5" stroke-linecap="round" />
          <text x=${trunkAt(trunk)} y=${height - 6} font-size="11" font-weight="600" text-anchor="middle" fill="currentColor" stroke="var(--colorNeutralBackground1, Canvas)" stroke-width="3" paint-order="stroke">${trunk}</text>
        </g>`,
      )}
      ${drawing.cordons.map((cordon, index) =>
        cordonShape(cordon, trunkAt(cordon.trunk), TOP + lines[index] * LINE, scale),
      )}
    </svg>
    <figcaption class="small quiet">${PICTURE_TEXTS.key[language]}</figcaption>
  </figure>`;
}

/** The picture in words. */
function pictureWords(vine: DecidedVine, language: Language, unitSystem: UnitSystem): string {
  const unknown = PICTURE_TEXTS.unknown[language];
  const cordons = vine.toDecide.candidates.map((candidate, index) =>
    say(PICTURE_TEXTS.cordon, language, {
      side: SIDE_WORDS[candidate.side]?.[language] ?? candidate.side,
      cordon: candidate.cordon,
      length: candidate.length === undefined ? unknown : lengthWords(candidate.length, language, unitSystem),
      spurs: candidate.liveSpurs ?? unknown,
      gap: candidate.longestGap ?? unknown,
      trunk: candidate.trunk ?? unknown,
      verdict: VERDICT_WORDS[vine.decision.cordons[index].verdict][language],
    }),
  );
  return [PICTURE_TEXTS.title[language], ...cordons].join(" ");
}

/** The line that each cordon is drawn on: those of one side lie below one another, what stays on top. */
function linesOf(cordons: readonly DrawnCordon[]): number[] {
  const order = ["stays", "ask", "goes"];
  return cordons.map((cordon, index) =>
    cordons.reduce((line, other, at) => {
      if (other.towards !== cordon.towards || at === index) return line;
      const before = order.indexOf(other.verdict) - order.indexOf(cordon.verdict) || at - index;
      return before < 0 ? line + 1 : line;
    }, 0),
  );
}

const nameOf = ({ cordon, verdict }: DrawnCordon) => `${cordon}${verdict === "ask" ? "?" : ""}`;

function cordonShape(cordon: DrawnCordon, from: number, y: number, scale: number) {
  const x = (metres: number) => from + cordon.towards * metres * scale;
  const end = x(cordon.length);
  const { width, dashes } = STROKES[cordon.verdict];
  const { gap } = cordon;
  return svg`<g class=${`cordon ${cordon.verdict}`}>
    <line x1=${from} x2=${end} y1=${y} y2=${y} stroke="currentColor" stroke-width=${width} stroke-dasharray=${dashes} stroke-linecap=${cordon.verdict === "ask" ? "round" : "butt"} />
    ${
      gap === undefined
        ? ""
        : svg`<rect class="gap" x=${Math.min(x(gap.from), x(gap.to))} y=${y - 6} width=${Math.abs(x(gap.to) - x(gap.from))} height="12" fill="url(#bare)" stroke="currentColor" stroke-width="0.8" />`
    }
    ${cordon.spurs.map(({ at, points }) => {
      const dy = points === "down" ? SPUR : points === "up" ? -SPUR : 0;
      const dx = dy === 0 ? cordon.towards * 3 : 0;
      const y2 = points === "level" || points === "unknown" ? y + (points === "level" ? 4 : -4) : y + dy;
      return svg`<line class="spur" x1=${x(at)} x2=${x(at) + dx} y1=${y} y2=${y2} stroke="currentColor" stroke-width="1.6" />`;
    })}
    <text x=${end + cordon.towards * LABEL.gap} y=${y + 4} font-size="12" font-weight="600" text-anchor=${cordon.towards < 0 ? "end" : "start"} fill="currentColor">${nameOf(cordon)}</text>
  </g>`;
}
