/** Layout of the crop's pictures; line kinds tell their parts apart where colours do not. */
export const OUTLOOK_STYLES = `
.crop-axis { display: block; inline-size: 100%; block-size: auto; }
.crop-axis text {
  font-size: 11px; fill: var(--colorNeutralForeground1);
  stroke: var(--colorNeutralBackground1); stroke-width: 3px; paint-order: stroke;
}
#crop-stages .aside { display: block; }
.crop-axis .grid { stroke: var(--colorNeutralStroke2); }
.crop-axis .band { fill: var(--colorBrandBackground2Hover); stroke: var(--colorBrandStroke1); }
.crop-axis .counted .band { fill: none; stroke: var(--colorNeutralForeground2); stroke-dasharray: 3 2; }
.crop-axis .likely { stroke: var(--colorNeutralForeground1); stroke-width: 3px; }
.crop-axis .target { stroke: var(--colorNeutralForeground1); stroke-width: 2px; stroke-dasharray: 5 3; }
.crop-axis .picked { fill: var(--colorNeutralForeground1); stroke: var(--colorNeutralBackground1); }
.doubt { display: grid; grid-template-columns: 1fr auto; column-gap: 8px; row-gap: 2px; padding-block-end: 6px; }
.doubt > .track {
  grid-column: 1 / -1; block-size: 10px;
  border: var(--strokeWidthThin) solid var(--colorNeutralStroke1); background: var(--colorNeutralBackground3);
}
.doubt i { display: block; block-size: 100%; background: var(--colorBrandBackground); }
@media (forced-colors: active) {
  .crop-axis text { fill: CanvasText; stroke: Canvas; }
  .crop-axis .grid { stroke: GrayText; }
  .crop-axis .band { fill: Canvas; stroke: Highlight; stroke-width: 2px; }
  .crop-axis .counted .band { stroke: CanvasText; }
  .crop-axis .likely, .crop-axis .target { stroke: CanvasText; }
  .crop-axis .picked { fill: CanvasText; stroke: Canvas; }
  .doubt i { forced-color-adjust: none; background: Highlight; }
}
`;
