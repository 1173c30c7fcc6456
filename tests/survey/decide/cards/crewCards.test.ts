import { crewCards } from "../../../../src/survey/decide/cards/crewCards";
import { cardLegend, cardLine, openSentence } from "../../../../src/survey/decide/cards/cardWords";
import { cutSentence, keepSentence } from "../../../../src/survey/decide/choice/vineSentences";
import { decideSeason } from "../../../../src/survey/decide/decideSeason";
import { trunksToRenew } from "../../../../src/survey/decide/renewal/trunksToRenew";
import { readSeason } from "../../../../src/survey/reading/readSeason";
import type { Season } from "../../../../src/survey/season/season";
import type { CellValue } from "../../../../src/survey/sheets/cell";
import { LANGUAGES, type Language } from "../../../../src/texts/language";
import { cardsHtml, escaped } from "../../../../src/workbook/results/cardsHtml";
import { cardsSheet, vineCard } from "../../../../src/workbook/results/cardsSheet";
import { choiceSheet } from "../../../../src/workbook/results/choiceSheet";
import { randomSource } from "../../../../sample-workbooks/make/randomSource";
import { areaOf } from "../../area";
import { plausibleSeason } from "../../quality/plausibleSeason";
import { seasonAreas } from "../../quality/seasonAreas";
import { inventedSeason, seasonOfFarm } from "./season";
import { cordonHeads } from "../../cordonHeads";

const CORDONS = [...cordonHeads("in"), "Longest gap", "Condition", "Trunk condition", "Note"];
const rows: CellValue[][] = [
  ["North Bench", 1, 2, "left", "A", 1, 40, 10, 8, 0, "sound", "sound", ""],
  ["North Bench", 1, 2, "left", "B", 2, 40, 12, 9, 3, "sound", "sound", "split at the head"],
  ["North Bench", 1, 2, "right", "C", 2, 40, 10, 8, 1, "sound", "sound", ""],
  ["North Bench", 1, 3, "left", "A", 1, 40, 10, 0, 10, "dead", "dead", ""],
];
const bench = () => {
  const season = readSeason([
    areaOf("Cordons", [CORDONS, ...rows]),
    areaOf("Vines", [
      ["Block", "Row", "Vine", "Status", "Live trunks", "Pruned on", "Note"],
      ["North Bench", 1, 1, "missing", "", "", ""],
      ["North Bench", 1, 2, "bearing", 2, 46060, ""],
      ["North Bench", 1, 3, "bearing", 1, "", "frost crack"],
    ]),
    areaOf("Blocks", [
      ["Block", "Vine spacing (ft)", "Training system", "Node rule"],
      ["North Bench", 7, "high wire", "40"],
    ]),
  ]);
  const decided = [...decideSeason(season)];
  const [card] = crewCards(season, decided);
  return { decided, card };
};
const OPTIONS = { language: "en" as const, date: "2 February 2026", unitSystem: "US" as const };

describe("a crew card", () => {
  test("has every vine of the row, the missing one too, in walk order", () => {
    expect(bench().card.vines.map(({ vine, status }) => [vine, status])).toEqual([
      [1, "missing"],
      [2, "bearing"],
      [3, "bearing"],
    ]);
  });

  test("says what stays, what is cut and how the nodes fall, worked by hand", () => {
    // 40 nodes fixed over 8 + 8 spurs: eight of three and eight of two
    const { card } = bench();
    const line = cardLine(card.vines[1], "en", "US");
    expect(line.keep).toEqual([
      { side: "left", words: "A · T1", ask: false },
      { side: "right", words: "C · T2", ask: false },
    ]);
    expect(line.cut).toEqual([{ side: "left", words: "B", ask: false }]);
    expect(line.nodes).toEqual(["40: 8×3", "8×2"]);
    expect(line.notes).toEqual(["B: split at the head"]);
    expect(card.vines[1].prunedOn).toBe(46060);
  });

  test("says where a cane is laid, which dead trunk comes out and how many trunks to bring up", () => {
    const line = cardLine(bench().card.vines[2], "en", "US");
    expect(line.cut).toEqual([{ side: "left", words: "A+T1", ask: false }]);
    expect(line.lay).toEqual([
      { side: "left", words: "cane: bare trunk", ask: false },
      { side: "right", words: "cane: bare trunk", ask: false },
    ]);
    expect(line.notes).toEqual(["new trunks: 1", "frost crack"]);
    expect(line.nodes).toEqual([]);
  });

  test("brings up the trunks that the list of trunks to renew names, on every vine of the register", () => {
    const invented = seasonOfFarm(inventedSeason());
    const named = (lines: readonly (readonly [string, number, number, number])[]) =>
      lines
        .filter(([, , , trunks]) => trunks > 0)
        .map((line) => line.join(" "))
        .sort();
    const onCards = crewCards(invented, [...decideSeason(invented)]).flatMap(({ block, row, vines }) =>
      vines.map(({ vine, trunksToBringUp }) => [block, row, vine, trunksToBringUp] as const),
    );
    const listed = trunksToRenew(invented).vines.map(
      ({ block, row, vine, renewal }) => [block, row, vine, renewal.bringUp] as const,
    );
    expect(named(onCards)).toEqual(named(listed));
    expect(named(onCards).length).toBeGreaterThan(20);
    const bare = readSeason([
      areaOf("Vines", [
        ["Block", "Row", "Vine", "Status", "Live trunks"],
        ["North Bench", 1, 1, "bearing", 1],
        ["North Bench", 1, 2, "bearing", 120],
      ]),
    ]);
    expect(crewCards(bare, [])[0].vines.map(({ trunksToBringUp }) => trunksToBringUp)).toEqual([1, 0]);
  });

  test("is whole in every language, on paper and on the sheet", () => {
    const season = seasonOfFarm(inventedSeason());
    const answers = [...decideSeason(season)];
    const cards = crewCards(season, answers);
    for (const language of LANGUAGES) {
      const print = {
        paper: "A4" as const,
        farm: "",
        ribbons: { stays: "orange", ask: "blue" },
        vinesAPage: 25,
      };
      expect(cardsHtml(cards, { ...OPTIONS, ...print, language })).not.toMatch(/\{\w+\}|undefined|NaN/);
      for (const sheet of [
        cardsSheet(cards, { ...OPTIONS, language }),
        choiceSheet(answers, language, "US", "2 February 2026"),
      ]) {
        expect(JSON.stringify(sheet)).not.toMatch(/\{\w+\}|undefined|NaN/);
        for (const row of sheet.rows) expect(row).toHaveLength(sheet.headers.length);
        expect(sheet.columns).toHaveLength(sheet.headers.length);
      }
    }
  });

  test("a block whose spurs do not hold the budget says so once, and a card says only what can be done", () => {
    // 60 nodes fixed over 8 + 8 spurs of three nodes at most: 48 are left, 12 fewer than the budget
    const short = readSeason([
      areaOf("Cordons", [CORDONS, ...rows.slice(0, 3)]),
      areaOf("Blocks", [
        ["Block", "Vine spacing (ft)", "Training system", "Node rule"],
        ["North Bench", 7, "high wire", "60"],
      ]),
    ]);
    const cards = crewCards(short, decideSeason(short));
    expect(cardLine(cards[0].vines[0], "en", "US").nodes).toEqual(["48: 3"]);
    const sentence =
      "North Bench: on 1 of 1 vines the spurs, each as long as it may be, hold 12 nodes fewer than the budgets.";
    expect(cardsSheet(cards, OPTIONS).title).toContain(sentence);
    const print = {
      paper: "A4" as const,
      farm: "",
      ribbons: { stays: "orange", ask: "blue" },
      vinesAPage: 25,
    };
    expect(
      cardsHtml([...cards, { ...cards[0], row: 2 }], { ...OPTIONS, ...print }).split("fewer than"),
    ).toHaveLength(2);
  });

  test("text from a sheet is escaped wherever it stands", () => {
    expect(escaped(`<b a="1" c='2'>&`)).toBe("&lt;b a=&quot;1&quot; c=&#39;2&#39;&gt;&amp;");
  });
});

describe("what stands on which card", () => {
  const HEADS = [...cordonHeads("in"), "Note"];
  const pair = (block: string, row: number, vine: number, note: CellValue = "") => [
    [block, row, vine, "left", "A", 1, 40, 10, 9, note],
    [block, row, vine, "right", "B", 2, 40, 10, 9, ""],
  ];
  const cardsOf = (cordons: readonly CellValue[][], vines: readonly CellValue[][] = []) => {
    const read = readSeason([
      areaOf("Cordons", [HEADS, ...cordons]),
      areaOf("Vines", [["Block", "Row", "Vine", "Status", "Pruned on", "Note"], ...vines]),
    ]);
    return crewCards(read, decideSeason(read));
  };

  test("rows come by number within blocks, blocks as they first appear, vines by number, whichever sheet names them", () => {
    const cards = cardsOf(
      [...pair("South", 3, 2), ...pair("North", 10, 4), ...pair("North", 2, 6), ...pair("North", 2, 1)],
      [
        ["North", 10, 5, "bearing"],
        ["North", 10, 11, "bearing"],
        ["East", 1, 1, "bearing"],
        ["North", 2, 3, "missing"],
      ],
    );
    expect(cards.map(({ block, row, vines }) => [block, row, vines.map(({ vine }) => vine)])).toEqual([
      ["North", 2, [1, 3, 6]],
      ["North", 10, [4, 5, 11]],
      ["East", 1, [1]],
      ["South", 3, [2]],
    ]);
  });

  test("remarks of the vine come before those of its cordons, which carry their letter; each is said once", () => {
    const [{ vines }] = cardsOf(
      [...pair("North", 1, 1, " split "), ...pair("North", 1, 2, 7), ...pair("North", 1, 4, "  ")],
      [
        ["North", 1, 1, "bearing", "", " frost crack "],
        ["North", 1, 2, "bearing", "", 12],
        ["North", 1, 3, "bearing", "", " look first "],
        ["North", 1, 4, "bearing", "", "A: split"],
        ["North", 1, 5, "bearing", "", "  "],
        ["North", 1, 6, "bearing", "", 12],
      ],
    );
    expect(vines.map(({ remarks }) => remarks)).toEqual([
      ["frost crack", "A: split"],
      [],
      ["look first"],
      ["A: split"],
      [],
      [],
    ]);
    const [twice] = cardsOf(pair("North", 1, 1, "split"), [["North", 1, 1, "bearing", "", "A: split"]]);
    expect(twice.vines[0].remarks).toEqual(["A: split"]);
  });

  test("the day of pruning stands on the line of a vine that has one, with cordons or without", () => {
    const [{ vines }] = cardsOf(pair("North", 1, 1), [
      ["North", 1, 1, "bearing", 46060],
      ["North", 1, 2, "bearing", 46061],
      ["North", 1, 3, "bearing", ""],
    ]);
    expect(vines.map(({ prunedOn }) => prunedOn)).toEqual([46060, 46061, undefined]);
    expect(vines[2]).not.toHaveProperty("prunedOn");
  });

  test("a vine that nobody has counted is to be counted; beside a row without a vine it may be that one, and is counted again", () => {
    const laidOut = (vine: CellValue) => [
      ["North", 1, vine, "left", "A"],
      ["North", 1, vine, "right", "B"],
    ];
    const [{ vines }] = cardsOf([
      ...pair("North", 1, 1),
      ...laidOut(2),
      ...laidOut(3),
      ["North", 1, "", "left", "A", 1, 40, 10, 9],
    ]);
    expect(vines.map(({ toCount }) => toCount)).toEqual([undefined, "toCount", "recount"]);
    expect(vines[0]).not.toHaveProperty("toCount");
  });

  test("a vine of whose cordons neither spurs nor gaps are known is to be counted", () => {
    const season = readSeason([
      areaOf("Cordons", [
        ["Block", "Row", "Vine", "Side", "Cordon", "Trunk"],
        ["North", 1, 1, "left", "A", 1],
        ["North", 1, 1, "right", "B", 2],
      ]),
    ]);
    const [{ vines }] = crewCards(season, decideSeason(season));
    expect(vines.map(({ toCount, keeps }) => [toCount, keeps])).toEqual([["toCount", []]]);
  });
});

/** What is shown of a season's vines in each place. */
function shownOf(farm: Season) {
  const answers = [...decideSeason(farm)];
  const cards = crewCards(farm, answers);
  return {
    answers,
    cards,
    sheet: cardsSheet(cards, OPTIONS),
    choice: choiceSheet(answers, "en", "US", OPTIONS.date),
  };
}

const vineKey = (block: unknown, row: unknown, vine: unknown) => JSON.stringify([block, row, vine]);

/** Every vine's card, the sheet of cards and the printed card carry its plan. */
function expectCardsOfPlan({ answers, cards, sheet }: ReturnType<typeof shownOf>): void {
  const page = cardsHtml(cards, {
    ...OPTIONS,
    paper: "A4",
    farm: "",
    ribbons: { stays: "orange", ask: "blue" },
    vinesAPage: 25,
  });
  const printed = page.replaceAll("\u00a0", " ").match(/<tr[^>]*style=.*?<\/tr>/gs)!;
  const answerOf = new Map(answers.map((one) => [vineKey(one.block, one.row, one.vine), one]));
  const rowOf = new Map(sheet.rows.map((cells) => [vineKey(cells[0], cells[1], cells[2]), cells]));
  const notes = sheet.headers.indexOf("Look out for");
  let at = 0;
  for (const { block, row, vines } of cards)
    for (const vine of vines) {
      const shown = printed[at++];
      expect(shown).toContain(`<td class="vine">${vine.vine}</td>`);
      const key = vineKey(block, row, vine.vine);
      const answer = answerOf.get(key);
      if (!answer) continue;
      const { keeps, canes, cuts } = answer.plan;
      expect([vine.keeps, vine.canes, vine.cuts]).toEqual([keeps, canes, cuts]);
      const line = cardLine(vine, "en", "US");
      const cells = rowOf.get(key)!;
      for (const { words } of [...line.keep, ...line.lay, ...line.cut]) {
        expect(shown).toContain(escaped(words));
        expect(cells.join("\n")).toContain(words);
      }
      for (const note of line.notes) expect(shown).toContain(escaped(note));
      expect(cells[notes] ?? "").toBe(line.notes.join("; "));
    }
  expect(at).toBe(printed.length);
}

/** The sheet with the choice has each cordon's part of the plan, and the sentences of the pane are the same. */
function expectChoiceOfPlan({ answers, choice }: ReturnType<typeof shownOf>): void {
  const work = choice.headers.indexOf("What is done");
  let at = 0;
  for (const answer of answers) {
    const { plan, decision } = answer;
    const pane = [
      ...plan.cuts.map((cut) => cutSentence(cut, "en")),
      ...plan.keeps.map((keep) => keepSentence(keep, "en")),
    ];
    const written = decision.cordons.map(() => choice.rows[at++][work]);
    expect(written.filter((words) => words !== null).sort()).toEqual(pane.sort());
    expect(vineCard(answer, "en", "US").cuts).toEqual(plan.cuts.map((cut) => cutSentence(cut, "en")));
  }
  expect(at).toBe(choice.rows.length);
}

/** No card cuts away the cordon that a cane is laid from; answers how many canes are laid from one. */
function expectSourcesKept({ answers }: ReturnType<typeof shownOf>): number {
  const laid = answers.flatMap(({ plan }) => plan.canes.map((cane) => ({ cane, plan })));
  for (const { cane, plan } of laid) {
    const cut = plan.cuts.find(
      ({ side, cordon }) => side === cane.source?.side && cordon === cane.source.cordon,
    );
    expect(cut?.backTo ?? "cane").toBe("cane");
  }
  return laid.length;
}

describe("one plan, wherever it is shown", () => {
  let made: ReturnType<typeof shownOf> | undefined;
  const invented = () => (made ??= shownOf(seasonOfFarm(inventedSeason())));

  test("on the card, on the sheet of cards and on the printed card", () => expectCardsOfPlan(invented()));

  test("on the sheet with the choice and in the pane", () => expectChoiceOfPlan(invented()));

  test("a cane is laid from a cordon that is kept", () =>
    expect(expectSourcesKept(invented())).toBeGreaterThan(0));

  test("on 10,000 vines of seasons drawn at random", () => {
    let vines = 0;
    let laid = 0;
    for (let seed = 1; vines < 10_000; seed++) {
      const shown = shownOf(readSeason(seasonAreas(plausibleSeason(randomSource(seed)))));
      expectCardsOfPlan(shown);
      expectChoiceOfPlan(shown);
      laid += expectSourcesKept(shown);
      vines += shown.answers.length;
    }
    expect(laid).toBeGreaterThan(50);
  }, 300_000);
});

describe("the sheet with the choice", () => {
  test("has a row for each candidate with its place in the counts", () => {
    const { headers, rows: written } = choiceSheet(bench().decided, "en", "US", "2 February 2026");
    const at = (name: string) => headers.indexOf(name);
    expect(written.map((row) => [row[at("Cordon")], row[at("Decision")], row[at("Sheet row")]])).toEqual([
      ["A", "stays", 2],
      ["B", "goes", 3],
      ["C", "stays", 4],
      ["A", "goes", 5],
    ]);
  });
});

describe("where the gap lies, what grows near the head and how high the spurs stand", () => {
  // Vine 1: A is bare from place 4 to 7 of 10, with spurs on both sides of it. Vine 2: the only cordon of the right
  // is dead, and no cane was counted on the other. Vine 3: two places bare after the fourth, spurs 5 in high.
  const COUNTED = [...CORDONS.slice(0, 11), "Gap from head", "Canes near head", "Spur height (in)"];
  const counted = () => {
    const read = readSeason([
      areaOf("Cordons", [
        COUNTED,
        ["North Bench", 1, 1, "left", "A", 1, 40, 10, 6, 4, "sound", 3, 1, 1],
        ["North Bench", 1, 1, "right", "B", 2, 40, 10, 10, 0, "sound", "", "", ""],
        ["North Bench", 1, 2, "left", "A", 1, 40, 10, 10, 0, "sound", "", 0, ""],
        ["North Bench", 1, 2, "right", "B", 1, 40, 10, 0, 10, "dead", "", "", ""],
        ["North Bench", 1, 3, "left", "A", 1, 40, 10, 8, 2, "sound", 4, "", 5],
        ["North Bench", 1, 3, "right", "B", 2, 40, 10, 10, 0, "sound", "", "", ""],
      ]),
    ]);
    const vines = [...decideSeason(read)];
    const [{ vines: lines }] = crewCards(read, vines);
    return { vines, lines };
  };

  test("the card says it in a few words", () => {
    const words = counted().lines.map((line) => cardLine(line, "en", "US"));
    expect(words[0].notes).toContain("A: cane over gap after 3");
    expect(words[1].lay).toEqual([{ side: "right", words: "next winter: T1", ask: false }]);
    expect(words[2].notes).toEqual(["A: longer spurs at 4", "A: spurs back to the cordon"]);
  });

  test("pane, sheet and command line say it in sentences", () => {
    const cards = counted().vines.map((vine) => vineCard(vine, "en", "US"));
    expect(cards[0].notes).toContain(
      "A has a dead area of 4 places: lay a cane over it, from the last spur before it, 3 places from the head.",
    );
    expect(cards[1].stays).toContain(
      "No cane on the right can be laid this winter: none was counted near the head on A. Keep a renewal spur at the head of A and lay its cane next winter.",
    );
    expect(cards[2].notes).toEqual(
      expect.arrayContaining([
        "A: leave the spur on either side of its gap of 2 places (4 places from the head) a node longer, within the nodes of the vine.",
        "A: its spurs stand 5 in above it; cut each back to a shoot near the cordon.",
      ]),
    );
  });

  test("one place is a place", () => {
    const early = readSeason([
      areaOf("Cordons", [
        COUNTED.slice(0, 12),
        ["North Bench", 1, 1, "left", "A", 1, 40, 10, 8, 2, "sound", 1],
        ["North Bench", 1, 1, "right", "B", 2, 40, 10, 10, 0, "sound", ""],
      ]),
    ]);
    const notes = LANGUAGES.map((language) => vineCard([...decideSeason(early)][0], language, "US").notes[0]);
    expect(notes).toEqual([
      expect.stringContaining("its gap of 2 places (1 place from the head)"),
      expect.stringContaining("su hueco de 2 posiciones (a 1 posición de la cabeza)"),
      expect.stringContaining("son vide de 2 places (à 1 place de la tête)"),
    ]);
  });

  test("without these counts the sentence says which of them would decide", () => {
    const uncounted = readSeason([
      areaOf("Cordons", [
        COUNTED.slice(0, 11),
        ["North Bench", 1, 1, "left", "A", 1, 40, 10, 6, 4, "sound"],
        ["North Bench", 1, 1, "right", "B", 2, 40, 10, 10, 0, "sound"],
      ]),
    ]);
    // 4 of 10 places in one stretch: worth no more than a new cane, so somebody is asked, and told what would tell
    expect(vineCard([...decideSeason(uncounted)][0], "en", "US").notes).toContain(
      "Whether A can be kept depends on what was not counted: how far its longest gap lies from the head. A cane from living wood nearer the head could be laid over its dead area.",
    );
  });

  test.each(LANGUAGES)("no placeholder is left in %s", (language) => {
    const { vines, lines } = counted();
    const texts = vines.flatMap((vine, at) => [
      ...vineCard(vine, language, "metric").notes,
      ...vineCard(vine, language, "metric").stays,
      ...cardLine(lines[at], language, "metric").notes,
      ...cardLine(lines[at], language, "metric").lay.map(({ words }) => words),
    ]);
    expect(texts.length).toBeGreaterThan(6);
    for (const text of texts) expect(text).not.toMatch(/[{}]/);
  });
});

describe("at the head of the printed page", () => {
  const printIn = (language: Language, ask: string) =>
    cardsHtml([bench().card], {
      ...OPTIONS,
      language,
      paper: "Letter",
      farm: "",
      ribbons: { stays: "red", ask },
      vinesAPage: 25,
    });

  test("a ribbon's colour is said in the language of the print, a word that nobody knows as it is", () => {
    expect(printIn("fr", "azul")).toContain("ruban bleu");
    expect(printIn("es", "blue")).toContain("cinta azul: mirar antes");
    expect(printIn("es", "blue")).toContain("cinta roja: queda");
    expect(printIn("en", "tartan")).toContain("tartan ribbon: look first");
  });

  test("signs are explained that stand on the lines, in its language", () => {
    // vine 2 keeps A on trunk 1 and leaves 8 spurs of 3 and 8 of 2; vine 3 has its dead trunk taken out with A
    const { card } = bench();
    expect(cardLegend(card.vines, "en")).toEqual([
      "A · T1: A stays, on trunk 1",
      "A+T1: cut A, take dead trunk 1 out",
      "30: 4×3 9×2 = 30 nodes: 4 spurs of 3, 9 of 2",
    ]);
    expect(cardLegend(card.vines.slice(0, 1), "fr")).toEqual([]);
    expect(cardLegend(card.vines.slice(2), "es")).toEqual(["A+T1: cortar A, sacar el tronco muerto 1"]);
  });

  test("what is open is counted in words, one and many", () => {
    const open = { asked: 1, recount: 0, uncounted: 2, wrong: 1, toAccept: 1 };
    expect(openSentence(open, "en")).toBe(
      "Still open: 1 cell that cannot be right; 1 vine to answer for; 2 vines not counted; 1 vine decided but not accepted.",
    );
    expect(openSentence({ ...open, wrong: 2, asked: 3, recount: 1 }, "fr", "Nord")).toBe(
      "Reste à faire dans Nord : 2 cellules qui ne peuvent être justes; 3 ceps à trancher, dont 1 à recompter; 2 ceps sans compte; 1 cep décidé, pas accepté.",
    );
    const none = { asked: 0, recount: 0, uncounted: 0, wrong: 0, toAccept: 0 };
    expect(openSentence(none, "es", "Norte")).toBe(
      "Nada pendiente en Norte: cada planta está contada, decidida y aceptada.",
    );
  });
});
