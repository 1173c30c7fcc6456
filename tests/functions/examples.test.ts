import { evaluateFormula } from "../../src/functions/evaluateFormula";
import { FUNCTIONS } from "../../src/functions/registry";
import { LANGUAGES } from "../../src/texts/language";

const EXAMPLES = FUNCTIONS.flatMap(({ id, examples }) => examples.map((example) => ({ id, ...example })));

describe("worked examples of the functions", () => {
  test.each(FUNCTIONS.map(({ id, examples }) => ({ id, examples })))("$id has one", ({ examples }) => {
    expect(examples.length).toBeGreaterThan(0);
  });

  test.each(EXAMPLES)("$formula ($source.work)", ({ formula, gives, within }) => {
    const outcome = evaluateFormula(formula);
    if ("error" in outcome) throw new Error(outcome.sentence);
    expect(outcome.values.length).toBe(gives.length);
    gives.forEach((row, rowIndex) => {
      expect(outcome.values[rowIndex].length).toBe(row.length);
      row.forEach((expected, column) => {
        const cell = outcome.values[rowIndex][column];
        if (typeof expected !== "number") expect(cell).toBe(expected);
        else {
          expect(typeof cell).toBe("number");
          expect(Math.abs((cell as number) - expected)).toBeLessThanOrEqual(within + 1e-12);
        }
      });
    });
  });

  test.each(EXAMPLES)("$formula gives the same cells in every language but for headings", ({ formula }) => {
    const numbers = LANGUAGES.map((language) => {
      const outcome = evaluateFormula(formula, language);
      if ("error" in outcome) throw new Error(outcome.sentence);
      return outcome.values.map((row) => row.filter((cell) => typeof cell === "number"));
    });
    expect(numbers[1]).toEqual(numbers[0]);
    expect(numbers[2]).toEqual(numbers[0]);
  });
});

describe("check values by formula", () => {
  const value = (formula: string) => {
    const outcome = evaluateFormula(formula);
    if ("error" in outcome) throw new Error(outcome.sentence);
    return outcome.values[0];
  };

  test.each([
    {
      formula: '=CORDON.NODEBUDGET(3,"30+10")',
      gives: 50,
      why: "Growing Grapes in WV, West Virginia Department of Agriculture: 3 lb at 30+10 is 50 buds",
    },
    {
      formula: '=CORDON.NODEBUDGET(4,"30+10")',
      gives: 60,
      why: "a gardening site's example: 4 lb at 30+10 is 60 buds",
    },
    {
      formula: '=CORDON.NODEBUDGET(1.5,"20+20")',
      gives: 30,
      why: "Finger Lakes grape column, Auburn Citizen 2021: 1.5 lb at 20+20 is 30 buds",
    },
    {
      formula: '=CORDON.NODEBUDGET(3*0.45359237,"30+10","metric")',
      gives: 50,
      why: "the same 3 lb in kilograms: a pound is 0.45359237 kg, NIST SP 811",
    },
  ])("$formula is exactly $gives: $why", ({ formula, gives }) => {
    expect(value(formula)).toEqual([gives]);
  });

  test.each([
    {
      formula: "=CORDON.VINEDENSITY(9,6)",
      gives: [806.67],
      digits: 2,
      why: "43,560 / 54; printed as 807 by Dami, Ohio State University",
    },
    {
      formula: "=CORDON.VINEDENSITY(8,4)",
      gives: [1361.25],
      digits: 2,
      why: "43,560 / 32; a Texas consultant prints 1,361",
    },
    {
      formula: '=CORDON.VINEDENSITY(8*0.3048,4*0.3048,"metric")',
      gives: [3363.7],
      digits: 1,
      why: "43,560 / 32 x 2.471054: British Columbia Wine Grape Council prints 3,364 a hectare for 4 x 8 ft",
    },
    {
      formula: "=CORDON.BUDINJURY(15,148,95%)",
      gives: [0.1014, 0.0624, 0.1605],
      digits: 4,
      why: "Wilson interval computed with @stdlib's normal quantile",
    },
    {
      formula: "=CORDON.BUDINJURY(15,148)",
      gives: [0.1014, 0.0674, 0.1496],
      digits: 4,
      why: "0.9 by itself, as Settings: z = 1.644854, (0.101351 + 0.009140) / 1.018281 = 0.108508, 0.041065 either way",
    },
    {
      formula: "=CORDON.PRUNINGHOURS(807,1)",
      gives: [13.45],
      digits: 2,
      why: "Cornell slides: 1 minute a vine is 13.5 hours an acre of 807 vines",
    },
    {
      formula: "=CORDON.CLUSTERSTOREMOVE(4,605,0.25,70)",
      gives: [18, 52],
      digits: 6,
      why: "52.89 clusters a vine by hand; staying under keeps 52 of 70",
    },
    {
      formula: "=CORDON.VINECROP(CORDON.CLUSTERS(CORDON.SHOOTS(12,2,80%),2),0.25)",
      gives: [9.6],
      digits: 6,
      why: "Missouri grower 2009: 24 buds, 80 % develop, 2 clusters of 0.25 lb; printed as 9 lb, exactly 9.6",
    },
  ])("$formula: $why", ({ formula, gives, digits }) => {
    gives.forEach((expected, column) =>
      expect(value(formula)[column] as number).toBeCloseTo(expected, digits),
    );
  });
});
