/* global jest */
// A page of its own for every test, on a machine that may be doing other work: only what hangs comes to this end.
jest.setTimeout(300_000);
