const { default: Sequencer } = require("@jest/test-sequencer");

/** Suites of more than a minute, slowest first. */
const SLOW = [
  "browser/pane.look",
  "browser/newcomer",
  "browser/desk.check",
  "browser/desk.pane",
  "workbook/file/foreignWorkbooks",
  "browser/desk.kept",
  "browser/desk.formulas",
  "taskpane/everyActionInExcel",
  "domain/outlook/coverage",
  "survey/decide/cards/crewCards",
  "browser/desk.copies",
  "browser/desk.start",
  "browser/builtAddin",
  "workbook/excel/faults",
  "cli/foldersAndSaving",
  "browser/pane.check",
];

/** Where no earlier run tells how long a suite takes, the slow ones come first, so that all workers end together. */
module.exports = class SlowestFirst extends Sequencer {
  time(test) {
    const known = super.time(test);
    if (known !== undefined) return known;
    const place = SLOW.findIndex((name) => test.path.endsWith(`/tests/${name}.test.ts`));
    return place < 0 ? test.context.hasteFS.getSize(test.path) : 60_000 + 1000 * (SLOW.length - place);
  }
};
