import { CHART_COLUMNS, layOutCharts, OWN_CHART_NAME } from "../ownSheet";
import type { OwnSheet } from "../surveyWorkbook";
import {
  addContentType,
  addRelation,
  freePart,
  insertedAtEnd,
  PART_TYPES,
  relationsOf,
  removePart,
  removeRelationTo,
  removeRelations,
  type WorkbookNamespaces,
} from "./editWorkbook";
import type { PackageEditor } from "./packageEditor";
import { chartAnchorXml, emptyDrawingXml, rangeChartXml, type DrawingNamespaces } from "./rangeChartXml";
import { spliced, xmlSpans, type XmlSpan } from "./xmlSpans";

/** The drawing of a sheet: the part with its charts and pictures, a person's and ours. */
export async function drawingOf(editor: PackageEditor, sheetPart: string): Promise<string | undefined> {
  return (await relationsOf(editor, sheetPart)).find(({ kind }) => kind === "drawing")?.part;
}

/**
 * Puts the charts of a sheet of ours into its drawing, in place of those that stand there under our names; everything
 * else in the drawing keeps its bytes.
 *
 * @param former drawing of the sheet, if it has one
 * @param sheet name under which the sheet stands in the file
 * @returns the drawing and how many charts are ours; no drawing when nothing is left in it
 */
export async function putOwnCharts(
  editor: PackageEditor,
  namespaces: WorkbookNamespaces,
  former: string | undefined,
  content: OwnSheet,
  sheet: string,
): Promise<{ drawing: string | undefined; charts: number }> {
  const layouts = layOutCharts(content);
  const others = former ? await removeOurs(editor, former) : 0;
  if (layouts.length === 0 && others === 0) {
    if (former) await removeDrawing(editor, former);
    return { drawing: undefined, charts: 0 };
  }
  const names = drawingNamespaces(namespaces);
  const drawing = former ?? freePart(editor, "xl/drawings/cordonbook{n}.xml");
  if (!former) {
    editor.put(drawing, emptyDrawingXml(names));
    await addContentType(editor, drawing, PART_TYPES.drawing);
  }
  const anchors: string[] = [];
  const firstId = nextShapeId(await editor.text(drawing));
  for (const layout of layouts) {
    const part = freePart(editor, "xl/charts/cordonbook{n}.xml");
    editor.put(part, rangeChartXml(content, sheet, layout, names));
    await addContentType(editor, part, PART_TYPES.chart);
    const relation = await addRelation(editor, drawing, `${namespaces.relations}/chart`, part);
    anchors.push(chartAnchorXml(layout, CHART_COLUMNS, firstId + anchors.length, relation, names));
  }
  if (anchors.length > 0) {
    const xml = await editor.text(drawing);
    editor.put(
      drawing,
      insertedAtEnd(
        xml,
        xmlSpans(xml, () => false),
        anchors.join(""),
      ),
    );
  }
  return { drawing, charts: layouts.length };
}

/** Takes a drawing away with its charts. */
export async function removeDrawing(editor: PackageEditor, drawing: string): Promise<void> {
  for (const { kind, part } of await relationsOf(editor, drawing))
    if (kind === "chart") await removeChart(editor, part);
  removeRelations(editor, drawing);
  await removePart(editor, drawing);
}

/** Takes our charts out of a drawing and answers how many other things stay in it. */
async function removeOurs(editor: PackageEditor, drawing: string): Promise<number> {
  const xml = await editor.text(drawing);
  const anchors = xmlSpans(xml, (path) => path.length === 1).spans;
  const inside = xmlSpans(xml, (path) => /^(cNvPr|chart)$/.test(path[path.length - 1])).spans;
  const within = (anchor: XmlSpan, name: string) =>
    inside.filter((span) => span.name === name && span.start > anchor.start && span.end < anchor.end);
  const ours = anchors.filter((anchor) =>
    within(anchor, "cNvPr").some(({ attributes }) => attributes.name?.startsWith(OWN_CHART_NAME)),
  );
  const ids = ours
    .flatMap((anchor) => within(anchor, "chart"))
    .map(({ attributes }) => Object.entries(attributes).find(([name]) => name.endsWith(":id"))?.[1]);
  for (const { id, part } of await relationsOf(editor, drawing))
    if (ids.includes(id)) {
      await removeRelationTo(editor, drawing, part);
      await removeChart(editor, part);
    }
  if (ours.length > 0)
    editor.put(
      drawing,
      spliced(
        xml,
        ours.map(({ start, end }) => ({ start, end, text: "" })),
      ),
    );
  return anchors.length - ours.length;
}

/** Takes a chart away with the parts that only it has: its style and its colours, as Excel writes them. */
async function removeChart(editor: PackageEditor, chart: string): Promise<void> {
  for (const { kind, part } of await relationsOf(editor, chart))
    if (/^chart(Style|ColorStyle|UserShapes)$/.test(kind)) await removePart(editor, part);
  removeRelations(editor, chart);
  await removePart(editor, chart);
}

function nextShapeId(drawing: string): number {
  const { spans } = xmlSpans(drawing, (path) => path[path.length - 1] === "cNvPr");
  return spans.reduce((next, { attributes }) => Math.max(next, Number(attributes.id) + 1), 2);
}

function drawingNamespaces({ main, relations }: WorkbookNamespaces): DrawingNamespaces {
  const base = main.includes("purl.oclc.org")
    ? "http://purl.oclc.org/ooxml/drawingml"
    : "http://schemas.openxmlformats.org/drawingml/2006";
  return {
    sheet: `${base}/spreadsheetDrawing`,
    main: `${base}/main`,
    chart: `${base}/chart`,
    relations,
  };
}
