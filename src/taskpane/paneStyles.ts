/** Layout of the pane; colours and sizes come from Fluent's tokens. The top right corner stays free for Excel. */
export const PANE_STYLES = `
  :host {
    display: block;
    box-sizing: border-box;
    min-width: 0;
    block-size: 100%;
    overflow: auto;
    background: var(--colorNeutralBackground1);
    color: var(--colorNeutralForeground1);
    font: var(--fontWeightRegular) var(--fontSizeBase300) / var(--lineHeightBase300) var(--fontFamilyBase);
    overflow-wrap: anywhere;
  }
  * {
    box-sizing: border-box;
  }
  .pane {
    display: flex;
    flex-direction: column;
    min-block-size: 100%;
  }
  .top {
    display: flex;
    align-items: center;
    position: sticky;
    inset-block-start: 0;
    z-index: 2;
    padding-inline: 0 38px;
    block-size: 36px;
    background: var(--colorNeutralBackground1);
    border-block-end: var(--strokeWidthThin) solid var(--colorNeutralStroke2);
  }
  fluent-tablist {
    display: flex;
    flex-wrap: nowrap;
  }
  fluent-tab {
    min-inline-size: 0;
    padding-inline: 3px;
    font-size: var(--fontSizeBase200);
    white-space: nowrap;
  }
  #more {
    position: relative;
    font-size: var(--fontSizeBase200);
  }
  #more > summary {
    list-style: none;
    padding: 6px 5px;
    cursor: pointer;
    white-space: nowrap;
    color: var(--colorNeutralForeground2);
  }
  #more > summary::-webkit-details-marker {
    display: none;
  }
  #more > summary:focus-visible {
    outline: 2px solid var(--colorStrokeFocus2);
  }
  .behind {
    position: absolute;
    inset-inline-end: 0;
    inset-block-start: 100%;
    z-index: 3;
    display: flex;
    flex-direction: column;
    min-inline-size: 120px;
    padding: 4px;
    border: var(--strokeWidthThin) solid var(--colorNeutralStroke1);
    border-radius: var(--borderRadiusMedium);
    background: var(--colorNeutralBackground1);
  }
  .page {
    display: flex;
    flex-direction: column;
    gap: 12px;
    padding: 12px;
    flex: 1 0 auto;
  }
  .page[hidden] {
    display: none;
  }
  .card {
    margin: 12px 12px 0;
    padding: 12px;
    border: var(--strokeWidthThin) solid var(--colorNeutralStroke1);
    border-radius: var(--borderRadiusMedium);
    background: var(--colorNeutralBackground2);
  }
  .page > .card {
    margin: 0;
  }
  .next {
    border-inline-start: 4px solid var(--colorBrandStroke1);
  }
  .pair {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(120px, 1fr));
    align-items: end;
    gap: 8px;
  }
  .stands {
    table-layout: fixed;
  }
  .stands thead th {
    font-size: 10.5px;
    font-weight: var(--fontWeightRegular);
    overflow-wrap: normal;
  }
  .stands th,
  .stands td {
    border: 0;
    padding: 2px 3px 2px 0;
  }
  .stands tbody tr:first-child > * {
    padding-block-start: 8px;
    border-block-start: var(--strokeWidthThin) solid var(--colorNeutralStroke2);
  }
  .stands .said {
    color: var(--colorPaletteRedForeground1);
  }
  .bar {
    block-size: 12px;
    border: var(--strokeWidthThin) solid var(--colorNeutralStroke1);
    background: var(--colorNeutralBackground3);
  }
  .bar > i {
    display: block;
    block-size: 100%;
    background: var(--colorPaletteGreenForeground1);
  }
  .bar.stop {
    border: 2px solid var(--colorPaletteRedForeground1);
  }
  .wrong-here {
    padding: 8px 10px;
    border: var(--strokeWidthThin) solid var(--colorPaletteRedBorder2);
    border-radius: var(--borderRadiusMedium);
  }
  .wrong-here > ul {
    padding-block-start: 8px;
  }
  .foot {
    display: flex;
    flex-wrap: wrap;
    align-items: flex-end;
    gap: 8px;
    padding: 8px 12px 12px;
  }
  h1,
  h2,
  h3,
  p,
  ul,
  ol {
    margin: 0;
  }
  h1 {
    font-size: var(--fontSizeBase400);
    line-height: var(--lineHeightBase400);
    font-weight: var(--fontWeightSemibold);
  }
  h2,
  h3 {
    font-size: var(--fontSizeBase300);
    line-height: var(--lineHeightBase300);
    font-weight: var(--fontWeightSemibold);
  }
  ul,
  ol {
    padding-inline-start: 20px;
  }
  .plain {
    list-style: none;
    padding: 0;
  }
  .quiet {
    color: var(--colorNeutralForeground2);
  }
  .small {
    font-size: var(--fontSizeBase200);
    line-height: var(--lineHeightBase200);
  }
  .stack {
    display: flex;
    flex-direction: column;
    gap: 8px;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
  .beside {
    display: flex;
    align-items: center;
    gap: 8px;
  }
  .beside > .wide {
    flex: 1;
    min-inline-size: 0;
  }
  fluent-button {
    min-inline-size: 0;
    max-inline-size: 100%;
  }
  fluent-text-input,
  fluent-dropdown,
  fluent-textarea,
  fluent-message-bar {
    inline-size: 100%;
    max-inline-size: none;
    min-inline-size: 0;
  }
  fluent-message-bar {
    flex-shrink: 0;
    padding-block: 8px;
    white-space: normal;
  }
  fluent-field {
    display: flex;
    align-items: flex-start;
  }
  .choice {
    display: flex;
    flex-direction: column;
    gap: 2px;
  }
  .foot .choice {
    flex: 1;
    min-inline-size: 120px;
  }
  .choice > span {
    color: var(--colorNeutralForeground1);
  }
  .heading fluent-badge {
    vertical-align: middle;
  }
  fluent-accordion-item::part(button) {
    block-size: auto;
    min-block-size: 44px;
    padding-block: 6px;
  }
  fluent-accordion-item::part(heading) {
    block-size: auto;
    padding-inline: 4px;
  }
  fluent-accordion-item::part(content) {
    margin: 0 4px 8px;
  }
  .finding {
    border-block-start: var(--strokeWidthThin) solid var(--colorNeutralStroke2);
    padding-block: 8px;
  }
  .editor {
    padding-block-start: 8px;
  }
  .finding > .beside {
    justify-content: space-between;
  }
  table {
    border-collapse: collapse;
    inline-size: 100%;
    font-variant-numeric: tabular-nums;
  }
  caption {
    text-align: start;
    padding-block-end: 4px;
  }
  th,
  td {
    text-align: start;
    padding: 4px 6px 4px 0;
    border-block-end: var(--strokeWidthThin) solid var(--colorNeutralStroke2);
    vertical-align: top;
    font-weight: var(--fontWeightRegular);
  }
  th {
    overflow-wrap: normal;
  }
  thead th {
    font-weight: var(--fontWeightSemibold);
  }
  .number {
    text-align: end;
    overflow-wrap: normal;
  }
  .range {
    display: block;
    inline-size: 100%;
    block-size: 20px;
  }
  .scale {
    fill: var(--colorNeutralStroke2);
  }
  .band {
    fill: var(--colorBrandBackground2Hover);
  }
  .likely {
    stroke: var(--colorNeutralForeground1);
    stroke-width: 2px;
    vector-effect: non-scaling-stroke;
  }
  .unseen {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  dl {
    margin: 0;
  }
  dt {
    font-weight: var(--fontWeightSemibold);
  }
  dd {
    margin: 0 0 4px;
  }
  code {
    font-family: var(--fontFamilyMonospace);
    overflow-wrap: anywhere;
  }
  @media (forced-colors: active) {
    .bar > i {
      background: Highlight;
      forced-color-adjust: none;
    }
    .bar.stop {
      border: 3px double CanvasText;
    }
    .scale {
      fill: GrayText;
    }
    .band {
      fill: Canvas;
      stroke: Highlight;
      stroke-width: 2px;
      vector-effect: non-scaling-stroke;
    }
    .likely {
      stroke: CanvasText;
    }
    fluent-tab[aria-selected="true"] {
      border-block-end: 3px solid Highlight;
    }
    fluent-message-bar {
      border: 1px solid CanvasText;
    }
  }
`;
