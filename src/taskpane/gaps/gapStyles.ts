import { SHADE_BANDS } from "../../workbook/shadeBands";

/** Fill and letters of the shades in the dark, in the order of the bands: each 1.5:1 or more from the next. */
export const DARK_SHADES = [
  { fill: "F2B57A", font: "2B1200" },
  { fill: "A3662F", font: "FFFFFF" },
  { fill: "64401F", font: "FFFFFF" },
] as const;

/** Class of a cell of the map by its band, the highest first. */
export const SHADE_CLASSES = ["worst", "bad", "some"] as const;

const shades = (of: readonly { readonly fill: string; readonly font: string }[], where = "") =>
  SHADE_CLASSES.map(
    (name, at) => `${where} .map .${name} { background: #${of[at].fill}; color: #${of[at].font}; }`,
  ).join("\n");

/** Layout of the gap map and of the row on the wire; numbers and edges tell the shades apart where colours do not. */
export const GAP_STYLES = `
.map { table-layout: fixed; }
.map tbody + tbody tr:first-child > * { border-block-start-width: 12px; border-block-start-color: transparent; }
.map th, .map td {
  block-size: 24px; padding: 2px 3px; text-align: center; vertical-align: middle;
  border: var(--strokeWidthThin) solid var(--colorNeutralStroke2); overflow-wrap: normal;
}
.map td[tabindex] { cursor: pointer; }
.map td:focus-visible { outline: 3px solid var(--colorStrokeFocus2); outline-offset: -1px; }
.map td[aria-selected="true"] { box-shadow: inset 0 0 0 2px var(--colorNeutralForeground1); }
.map .worst { font-weight: var(--fontWeightBold); }
${shades(SHADE_BANDS)}
${shades(DARK_SHADES, ':host([data-theme="dark"])')}
.map .none { font-weight: var(--fontWeightBold); }
.wire { display: block; inline-size: 100%; block-size: auto; color: inherit; }
.wire .on-wire { cursor: pointer; }
@media print { .map td { print-color-adjust: exact; -webkit-print-color-adjust: exact; } }
@media (forced-colors: active) {
  .map .some { border: 1px dashed CanvasText; }
  .map .bad { border: 3px solid CanvasText; }
  .map .worst { forced-color-adjust: none; background: CanvasText; color: Canvas; }
  .map td[aria-selected="true"] { outline: 2px solid Highlight; outline-offset: 1px; }
}
`;
