import { Desk, type DeskOptions, type DeskPage } from "./deskPage";

let started: Desk | undefined;
const opened: DeskPage[] = [];

/** The server and the browser that all tests of a file share. */
export function desk(): Desk {
  return started!;
}

/**
 * Opens the desk page with a sample workbook on it, or with the one that opens by itself. A test file that imports this
 * has one server and one browser for all its tests; after each test its pages are closed, and the test fails where one
 * of them threw, logged an error or asked for an address outside this machine.
 */
export async function openDesk(sample?: string, options?: DeskOptions): Promise<DeskPage> {
  const page = await desk().open(sample, options);
  opened.push(page);
  return page;
}

beforeAll(async () => {
  started = await Desk.start();
});

afterEach(async () => {
  const pages = opened.splice(0);
  const problems = pages.flatMap((page) => page.problems);
  const foreign = pages.flatMap((page) => page.foreign);
  for (const page of pages) await page.close();
  expect(problems).toEqual([]);
  expect(foreign).toEqual([]);
});

afterAll(() => started?.stop());
