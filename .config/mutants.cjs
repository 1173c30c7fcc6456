const { bind } = require("jest-each");
const { expect } = require("expect");
const fc = require("fast-check");

/**
 * What the tests take from Jest, for Mocha: under Stryker Mocha keeps the program loaded from one change to the next, where
 * Jest loads it anew for every file of tests.
 */
let describeOfMocha;
const describe = Object.assign((...block) => describeOfMocha(...block), {
  each: bind((...block) => describeOfMocha(...block), false),
});
Object.defineProperty(globalThis, "describe", {
  get: () => describe,
  set(mochas) {
    describeOfMocha = mochas;
  },
});
const test = (name, body) => globalThis.it(name, body);
Object.assign(globalThis, {
  expect,
  test: Object.assign(test, { each: bind(test) }),
  jest: { requireActual: require },
  beforeAll: (work) => globalThis.before(work),
  afterAll: (work) => globalThis.after(work),
});

/**
 * A property draws the same few hundred cases every time and shrinks none: whether a change is noticed is all that Stryker
 * asks, and what is drawn anew each time would call a sound line killed.
 */
const { assert } = fc.default;
fc.default.assert = (property, { numRuns = 100 } = {}) =>
  assert(property, { numRuns: Math.min(numRuns, 100), seed: 20261126, endOnFailure: true });
