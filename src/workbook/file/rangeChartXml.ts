import { cellName } from "../address";
import {
  CHART_GAP,
  CHART_LINE,
  CHART_PART_FILLS,
  layOutOwnSheet,
  type ChartLayout,
  type OwnValue,
} from "../ownSheet";
import type { OwnSheet } from "../surveyWorkbook";
import { xmlAttribute, xmlText } from "./xmlSpans";

/** Namespaces of drawings, transitional or strict. */
export interface DrawingNamespaces {
  readonly sheet: string;
  readonly main: string;
  readonly chart: string;
  /** Namespace of relation ids. */
  readonly relations: string;
}

const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const CATEGORY_AXIS = 111000001;
const VALUE_AXIS = 111000002;
const LINE = `<a:ln w="9525"><a:solidFill><a:srgbClr val="${CHART_LINE}"/></a:solidFill></a:ln>`;
const GRID =
  '<c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="BFBFBF"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>';

/**
 * The part of a chart of ranges over the table of a sheet of ours. The figures stand in it as the table has them, so
 * that a program that does not calculate shows the chart as well.
 *
 * @param sheet name under which the sheet stands in the file
 */
export function rangeChartXml(
  content: OwnSheet,
  sheet: string,
  layout: ChartLayout,
  namespaces: DrawingNamespaces,
): string {
  const { chart, labels, parts, firstRow, lastRow } = layout;
  const { values } = layOutOwnSheet(content);
  const place = (column: number, first: number, last: number) => {
    const [from, to] = [first, last].map((row) =>
      cellName(row, column + 1).replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2"),
    );
    return xmlText(`'${sheet.replace(/'/g, "''")}'!${from === to ? from : `${from}:${to}`}`);
  };
  const cells = (column: number) => values.slice(firstRow - 1, lastRow).map((row) => row[column]);
  const strings = (column: number, first: number, last: number) =>
    `<c:strRef><c:f>${place(column, first, last)}</c:f><c:strCache>${points(
      values.slice(first - 1, last).map((row) => row[column]),
    )}</c:strCache></c:strRef>`;
  const series = parts.map(
    (column, part) =>
      `<c:ser><c:idx val="${part}"/><c:order val="${part}"/><c:tx>${strings(column, firstRow - 1, firstRow - 1)}</c:tx>` +
      `<c:spPr><a:solidFill><a:srgbClr val="${CHART_PART_FILLS[part]}"/></a:solidFill>${LINE}</c:spPr><c:invertIfNegative val="0"/>` +
      `<c:cat>${strings(labels, firstRow, lastRow)}</c:cat><c:val><c:numRef><c:f>${place(column, firstRow, lastRow)}</c:f>` +
      `<c:numCache><c:formatCode>${xmlText(content.columns?.[column]?.format ?? "General")}</c:formatCode>` +
      `${points(cells(column).map((value) => (Number.isFinite(value) ? value : null)))}</c:numCache></c:numRef></c:val></c:ser>`,
  );
  return (
    `${DECLARATION}<c:chartSpace xmlns:c="${namespaces.chart}" xmlns:a="${namespaces.main}" xmlns:r="${namespaces.relations}">` +
    `<c:roundedCorners val="0"/><c:chart>${titleXml(chart.title, 1400, true)}<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>` +
    `<c:barChart><c:barDir val="bar"/><c:grouping val="stacked"/><c:varyColors val="0"/>${series.join("")}` +
    `<c:gapWidth val="${CHART_GAP}"/><c:overlap val="100"/><c:axId val="${CATEGORY_AXIS}"/><c:axId val="${VALUE_AXIS}"/></c:barChart>` +
    `<c:catAx><c:axId val="${CATEGORY_AXIS}"/><c:scaling><c:orientation val="maxMin"/></c:scaling><c:delete val="0"/><c:axPos val="l"/>` +
    '<c:numFmt formatCode="General" sourceLinked="0"/><c:majorTickMark val="none"/><c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/>' +
    `<c:crossAx val="${VALUE_AXIS}"/><c:crosses val="autoZero"/><c:auto val="0"/><c:lblAlgn val="ctr"/><c:lblOffset val="100"/><c:noMultiLvlLbl val="1"/></c:catAx>` +
    `<c:valAx><c:axId val="${VALUE_AXIS}"/><c:scaling><c:orientation val="minMax"/><c:min val="0"/></c:scaling><c:delete val="0"/><c:axPos val="b"/>` +
    `${GRID}${titleXml(chart.axis, 1000, false)}<c:numFmt formatCode="General" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/>` +
    `<c:crossAx val="${CATEGORY_AXIS}"/><c:crosses val="max"/><c:crossBetween val="between"/></c:valAx></c:plotArea>` +
    '<c:legend><c:legendPos val="b"/><c:overlay val="0"/></c:legend><c:plotVisOnly val="1"/><c:dispBlanksAs val="gap"/></c:chart></c:chartSpace>'
  );
}

/** The place of a chart in the drawing of its sheet: the rows it covers over the first columns. */
export function chartAnchorXml(
  { name, chart, top, bottom }: ChartLayout,
  columns: number,
  shapeId: number,
  relation: string,
  namespaces: DrawingNamespaces,
): string {
  const corner = (element: string, column: number, row: number) =>
    `<xdr:${element}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${element}>`;
  return (
    `<xdr:twoCellAnchor xmlns:xdr="${namespaces.sheet}" xmlns:a="${namespaces.main}" editAs="oneCell">${corner("from", 0, top - 1)}${corner("to", columns, bottom)}` +
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${shapeId}" name="${xmlAttribute(name)}" descr="${xmlAttribute(chart.title)}"/>` +
    '<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>' +
    `<a:graphic><a:graphicData uri="${namespaces.chart}"><c:chart xmlns:c="${namespaces.chart}" xmlns:r="${namespaces.relations}" r:id="${relation}"/>` +
    "</a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>"
  );
}

/** A drawing with nothing in it. */
export function emptyDrawingXml(namespaces: DrawingNamespaces): string {
  return `${DECLARATION}<xdr:wsDr xmlns:xdr="${namespaces.sheet}" xmlns:a="${namespaces.main}"></xdr:wsDr>`;
}

function points(values: readonly OwnValue[]): string {
  const filled = values.map((value, index) =>
    value === null ? "" : `<c:pt idx="${index}"><c:v>${xmlText(String(value))}</c:v></c:pt>`,
  );
  return `<c:ptCount val="${values.length}"/>${filled.join("")}`;
}

/** @param size in hundredths of a point */
function titleXml(text: string, size: number, bold: boolean): string {
  const look = `sz="${size}" b="${bold ? 1 : 0}"`;
  return (
    `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr ${look}/></a:pPr><a:r><a:rPr ${look}/><a:t>${xmlText(text)}</a:t></a:r></a:p></c:rich></c:tx>` +
    '<c:overlay val="0"/></c:title>'
  );
}
