/** `npm run bench -- NAME`: runs one benchmark of this folder; without a name it lists them. */
const BENCHMARKS: Readonly<Record<string, () => Promise<{ run(): void | Promise<void> }>>> = {
  bound: () => import("./bound"),
  check: () => import("./check"),
  choice: () => import("./choice"),
  desk: () => import("./desk"),
  questions: () => import("./questions"),
  outlook: () => import("./outlook"),
  reading: () => import("./reading"),
  refusing: () => import("./refusing"),
  season: () => import("./season"),
};

const wanted = process.argv[2] ?? "";
const load = Object.hasOwn(BENCHMARKS, wanted) ? BENCHMARKS[wanted] : undefined;
if (load) void load().then((benchmark) => benchmark.run());
else {
  console.log(`Benchmarks: ${Object.keys(BENCHMARKS).join(", ")}. Run one with: npm run bench -- NAME`);
  if (wanted !== "") process.exitCode = 2;
}

export {};
