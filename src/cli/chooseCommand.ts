import { crewCards, type CrewCard } from "../survey/decide/cards/crewCards";
import { voidSentences } from "../survey/decide/cards/cardWords";
import { seasonStands } from "../survey/decide/plan/seasonStands";
import { CHANGED_TEXTS } from "../texts/cards";
import { findingsOf } from "./checkCommand";
import { sortInputFindings } from "./sortInputFindings";
import { trunksToRenew } from "../survey/decide/renewal/trunksToRenew";
import { youngVineSentences } from "../survey/decide/renewal/youngVineSentence";
import { reasonSentence } from "../survey/decide/choice/reasonSentence";
import { accountLines } from "../survey/season/accountSentences";
import { decideSeason, type DecidedVine } from "../survey/decide/decideSeason";
import { workPlan } from "../survey/decide/plan/workPlan";
import { workSentences } from "../survey/decide/plan/workSentences";
import { shootThinning } from "../survey/crop/vinesOfBlocks";
import { isoDay } from "../survey/reading/serialDate";
import type { Season } from "../survey/season/season";
import { namedPlace } from "../survey/season/vinePlaces";
import { COMMAND_LINE, OPTION_TEXTS } from "../texts/commandLine";
import { say, type Language } from "../texts/language";
import { saveNew } from "../workbook/file/saveFile";
import { cardsHtml, type CardsPrint, type Paper } from "../workbook/results/cardsHtml";
import { cardsSheet, vineCard } from "../workbook/results/cardsSheet";
import { choiceSheet } from "../workbook/results/choiceSheet";
import { jsonText } from "../workbook/withoutControls";
import type { Command, OptionValues } from "./command";
import { printCsv, printTable } from "./printTable";
import type { Inputs } from "./readInputs";
import type { SheetId } from "../survey/sheets/column";
import { mustHaveRows, readSeasonInputs } from "./readSurveyInputs";
import { isSaved, mustBeOneWorkbook, mustEnd, SAVE_OPTIONS, saveResult } from "./saveResult";
import { FORMAT_OPTION, formatOf, READING_OPTIONS } from "./sharedOptions";
import { accountOf, exitOf, readingData, tellAccount } from "./tellAccount";
import { printable, type Terminal } from "./terminal";
import { placeName } from "../texts/placeName";

/** Decides which cordon stays on each side of every vine: 0 nothing to ask, 1 somebody must look at a vine. */
export const CHOOSE_COMMAND: Command = {
  takes: "FILE...",
  summary: COMMAND_LINE.chooseSummary,
  examples: [
    "choose sample-workbooks/larkmoor-clean.xlsx",
    "choose season.xlsx --save",
    "choose season.xlsx --format json",
  ],
  options: { ...FORMAT_OPTION, ...SAVE_OPTIONS, ...READING_OPTIONS },
  least: 1,
  most: Infinity,
  async run(words, options, terminal) {
    const { inputs, season, vines } = await decided(words, options, terminal);
    const { language } = terminal;
    const sheet = choiceSheet(vines, language, season.unitSystem, isoDay(terminal.today));
    if (isSaved(options)) await saveResult(inputs, season, { sheets: [sheet] }, "choice", options, terminal);
    const format = formatOf(options);
    if (format === "csv") printCsv(sheet, season, inputs, terminal);
    else if (format === "json") printJson(season, vines, inputs, terminal);
    else {
      printTable(sheet, terminal, 10);
      tellAccount(season, inputs, terminal);
    }
    const asked = vines.some(({ decision }) => decision.cordons.some(({ verdict }) => verdict === "ask"));
    return exitOf(asked, season, inputs);
  },
};

/** What a crew does on every vine, row by row in walking order. */
export const CARDS_COMMAND: Command = {
  takes: "FILE...",
  summary: COMMAND_LINE.cardsSummary,
  examples: [
    "cards sample-workbooks/larkmoor-clean.xlsx --language es",
    "cards season.xlsx --html cards.html --paper A4",
    "cards season.xlsx --save",
    "cards season.xlsx --html changes.html --changed --in-place",
  ],
  options: {
    html: {
      type: "string",
      value: "FILE.html",
      meaning: OPTION_TEXTS.html,
      not: ["format", "save", "out"],
    },
    changed: { type: "boolean", meaning: OPTION_TEXTS.changed },
    paper: { type: "string", value: "Letter|A4", words: ["Letter", "A4"], meaning: OPTION_TEXTS.paper },
    ...FORMAT_OPTION,
    ...SAVE_OPTIONS,
    ...READING_OPTIONS,
  },
  least: 1,
  most: Infinity,
  async run(words, options, terminal) {
    const { inputs, season, vines } = await decided(words, options, terminal);
    const { language } = terminal;
    const trunks = trunksToRenew(season, vines);
    const all = crewCards(season, vines, trunks);
    const { cards: changed, voided } = inputs.printed.changed(all);
    const crew = options.changed ? changed : all;
    if (options.changed) {
      for (const sentence of voidSentences(voided, language)) terminal.tell(printable(sentence));
      if (crew.length === 0) terminal.tell(CHANGED_TEXTS.nothing[language]);
    }
    const work = workPlan(season, shootThinning(season), undefined, trunks.byAge);
    if (options.html !== undefined) {
      if (options["in-place"]) mustBeOneWorkbook(inputs);
      if (crew.length > 0 || !options.changed) {
        const wrong = sortInputFindings(findingsOf(season, terminal.today, terminal), inputs).open.filter(
          ({ severity }) => severity === "wrong",
        );
        const { blocks } = seasonStands(season, vines, wrong, { cards: all, work }, () => false);
        const said = options.changed ? { voided: voidSentences(voided, language) } : {};
        await writePage(
          String(options.html),
          crew,
          season,
          inputs,
          { ...said, stands: blocks },
          options,
          terminal,
        );
      }
      if (options["in-place"] && crew.length + voided.length > 0)
        await saveResult(
          inputs,
          season,
          { sheets: [], printed: { cards: crew, voided } },
          "cards",
          options,
          terminal,
        );
      return exitOf(false, season, inputs);
    }
    const sheet = cardsSheet(crew, {
      language,
      unitSystem: season.unitSystem,
      date: isoDay(terminal.today),
      work,
    });
    if (isSaved(options)) await saveResult(inputs, season, { sheets: [sheet] }, "cards", options, terminal);
    const format = formatOf(options);
    const isOn = new Set(
      crew.flatMap((card) => card.vines.map(({ vine }) => namedPlace(card.block, card.row, vine))),
    );
    const cards = [
      ...vines
        .filter((vine) => isOn.has(namedPlace(vine.block, vine.row, vine.vine)))
        .map((vine) => ({
          ...vineCard(vine, language, season.unitSystem),
          plan: planOn(crew, vine),
        })),
      ...youngCards(crew, vines, language),
    ];
    if (format === "csv") printCsv(sheet, season, inputs, terminal);
    else if (format === "json")
      terminal.print(
        jsonText({
          reading: readingData(season, inputs, terminal),
          rowsUsed: season.used.account(),
          cards,
          work,
        }),
      );
    else {
      let place = "";
      for (const { block, row, vine, stays, cuts, notes } of cards) {
        const [blockWord, rowWord, vineWord] = sheet.headers;
        const next = `${blockWord} ${block}, ${rowWord} ${row}`;
        if (next !== place) terminal.print(printable(place === "" ? next : `\n${next}`).replace(/^ /, "\n"));
        place = next;
        terminal.print(printable(`  ${vineWord} ${vine}: ${[...stays, ...cuts, ...notes].join(" ")}`));
      }
      terminal.print("");
      for (const sentence of workSentences(work, language)) terminal.print(printable(sentence));
      tellAccount(season, inputs, terminal);
    }
    return exitOf(false, season, inputs);
  },
};

/** Young vines on which no cordon was counted, so that nothing was to be decided. */
function youngCards(crew: readonly CrewCard[], vines: readonly DecidedVine[], language: Language) {
  const decided = new Set(vines.map((vine) => namedPlace(vine.block, vine.row, vine.vine)));
  return crew.flatMap(({ block, row, vines: lines }) =>
    lines.flatMap(({ vine, young, keeps, canes, cuts }) =>
      !young || decided.has(namedPlace(block, row, vine))
        ? []
        : [
            {
              ...{ block, row: placeName(row), vine: placeName(vine), stays: [], cuts: [] },
              notes: youngVineSentences(young, language),
              plan: { keeps, canes, cuts, young },
            },
          ],
    ),
  );
}

/** The plan of a vine as data: what stays, canes, cuts, and how the nodes fall over its spurs. */
function planOn(cards: readonly CrewCard[], { block, row, vine, plan }: DecidedVine) {
  const card = cards.find((one) => one.block === block && one.row === row);
  const line = card?.vines.find((one) => one.vine === vine);
  return { ...plan, ...(line?.nodes ? { nodes: line.nodes } : {}) };
}

/** Writes the cards as one page that a browser prints; never over another file. */
async function writePage(
  path: string,
  cards: readonly CrewCard[],
  season: Season,
  inputs: Inputs,
  said: Pick<CardsPrint, "stands" | "voided">,
  options: OptionValues,
  { language, today, print }: Terminal,
): Promise<void> {
  const { settings, unitSystem } = season;
  const page = cardsHtml(cards, {
    ...said,
    language,
    unitSystem,
    paper: (options.paper as Paper | undefined) ?? "Letter",
    date: isoDay(today),
    farm: "",
    ribbons: { stays: settings.ribbonStays, ask: settings.ribbonAsk },
    vinesAPage: Math.round(settings.vinesACardPage),
    account: accountLines(accountOf(season, inputs), language),
  });
  mustEnd(path, ".html");
  await saveNew(path, new TextEncoder().encode(page));
  print(say(COMMAND_LINE.saved, language, { file: path }));
}

/**
 * Reads the files and decides every vine.
 *
 * @param sheets of which one must hold a row; without any the files are refused
 */
export async function decided(
  words: readonly string[],
  options: OptionValues,
  terminal: Terminal,
  sheets: readonly SheetId[] = ["cordons"],
): Promise<{ inputs: Inputs; season: Season; vines: DecidedVine[] }> {
  const { inputs, season } = await readSeasonInputs(words, options, terminal);
  mustHaveRows(season, inputs, sheets);
  const rows = season.tables("cordons").reduce((sum, table) => sum + table.rowCount, 0);
  const vines: DecidedVine[] = [];
  let done = 0;
  for (const vine of decideSeason(season)) {
    vines.push(vine);
    done += vine.rows.length;
    if (vines.length % 500 === 0) terminal.progress(0.5 + done / rows / 2);
  }
  terminal.progress(1);
  return { inputs, season, vines };
}

function printJson(season: Season, vines: readonly DecidedVine[], inputs: Inputs, terminal: Terminal): void {
  const { language, print } = terminal;
  const choice = vines.map(({ block, row, vine, decision, plan, rows, recount }) => ({
    block,
    row: placeName(row),
    vine: placeName(vine),
    worth: decision.worth,
    lead: decision.lead ?? null,
    sides: decision.sides,
    plan,
    notes: decision.notes,
    recount,
    cordons: decision.cordons.map((cordon, at) => ({
      side: cordon.side,
      cordon: cordon.cordon,
      verdict: cordon.verdict,
      score: cordon.score.score,
      reason: cordon.reason,
      sentence: reasonSentence(cordon, language, season.unitSystem),
      sheet: rows[at].table.sheet,
      sheetRow: rows[at].table.sheetRow(rows[at].index),
    })),
  }));
  print(
    jsonText({
      reading: readingData(season, inputs, terminal),
      rowsUsed: season.used.account(),
      vines: choice,
    }),
  );
}
