import { inSlices } from "../../src/taskpane/inSlices";

function* count(to: number): Generator<number, string, void> {
  for (let i = 1; i <= to; i += 1) yield i;
  return "done";
}

test("hands on everything that is yielded, in order, and what is returned", async () => {
  const seen: number[] = [];
  expect(await inSlices(count(5), (n) => seen.push(n))).toBe("done");
  expect(seen).toEqual([1, 2, 3, 4, 5]);
});

test("lets others run between two slices", async () => {
  let others = 0;
  const timer = setInterval(() => (others += 1), 1);
  function* slow(): Generator<void, void, void> {
    const end = performance.now() + 80;
    while (performance.now() < end) yield;
  }
  await inSlices(slow(), () => undefined);
  clearInterval(timer);
  expect(others).toBeGreaterThan(0);
});

test("stops between two steps when told to", async () => {
  const stop = new AbortController();
  const seen: number[] = [];
  const run = inSlices(
    count(100),
    (n) => {
      seen.push(n);
      if (n === 3) stop.abort();
    },
    stop.signal,
  );
  await expect(run).rejects.toMatchObject({ name: "AbortError" });
  expect(seen).toEqual([1, 2, 3]);
});
