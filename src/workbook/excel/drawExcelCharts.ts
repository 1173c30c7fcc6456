import {
  CHART_COLUMNS,
  CHART_GAP,
  CHART_LINE,
  CHART_PART_FILLS,
  layOutCharts,
  OWN_CHART_NAME,
  type ChartLayout,
} from "../ownSheet";
import type { OwnSheet } from "../surveyWorkbook";

const CHART_TYPE = "BarStacked";

/**
 * Draws the charts of an own sheet below its table, in place of those that the last run drew; charts of other names
 * are a person's own and stay. When Excel refuses one, none of ours is left: a chart that shows rows of the last run
 * would mislead.
 *
 * @returns how many stand on the sheet now: all or none
 */
export async function drawExcelCharts(context: Excel.RequestContext, content: OwnSheet): Promise<number> {
  const worksheet = context.workbook.worksheets.getItem(content.sheet);
  const layouts = layOutCharts(content);
  let before: readonly Excel.Chart[] | undefined;
  try {
    worksheet.charts.load("items/id,items/name");
    await context.sync();
    before = worksheet.charts.items;
    for (const layout of layouts) drawChart(worksheet, layout);
    for (const chart of before) if (isOurs(chart)) chart.delete();
    await context.sync();
    return layouts.length;
  } catch {
    const known = before && new Set(before.map(({ id }) => id));
    const remove = () => removeOurs(context, content.sheet, known);
    await remove()
      .catch(remove)
      .catch(() => undefined);
    return 0;
  }
}

function isOurs({ name }: Excel.Chart): boolean {
  return name.startsWith(OWN_CHART_NAME);
}

function drawChart(worksheet: Excel.Worksheet, layout: ChartLayout): void {
  const { chart, name, labels, parts, firstRow, lastRow, top, bottom } = layout;
  const rows = lastRow - firstRow + 1;
  const column = (index: number) => worksheet.getRangeByIndexes(firstRow - 1, index, rows, 1);
  const low = worksheet.getRangeByIndexes(firstRow - 2, parts[0], rows + 1, 1);
  const made = worksheet.charts.add(CHART_TYPE, low, "Columns");
  made.name = name;
  made.title.text = chart.title;
  made.legend.position = "Bottom";
  made.setPosition(
    worksheet.getRangeByIndexes(top - 1, 0, 1, 1),
    worksheet.getRangeByIndexes(bottom - 1, CHART_COLUMNS - 1, 1, 1),
  );
  parts.forEach((index, part) => {
    const series = part === 0 ? made.series.getItemAt(0) : made.series.add(chart.parts[part]);
    series.setValues(column(index));
    series.setXAxisValues(column(labels));
    series.gapWidth = CHART_GAP;
    series.format.fill.setSolidColor(`#${CHART_PART_FILLS[part]}`);
    series.format.line.color = `#${CHART_LINE}`;
  });
  made.axes.categoryAxis.reversePlotOrder = true;
  made.axes.categoryAxis.position = "Maximum";
  made.axes.valueAxis.minimum = 0;
  made.axes.valueAxis.title.text = chart.axis;
}

/** Takes our charts off a sheet, with one that was added but not named yet: it is not among those known before. */
async function removeOurs(
  context: Excel.RequestContext,
  sheet: string,
  known: ReadonlySet<string> | undefined,
): Promise<void> {
  const { charts } = context.workbook.worksheets.getItem(sheet);
  charts.load("items/id,items/name,items/chartType");
  await context.sync();
  for (const chart of charts.items)
    if (isOurs(chart) || (known && !known.has(chart.id) && chart.chartType === CHART_TYPE)) chart.delete();
  await context.sync();
}
