import { execFile } from "node:child_process";
import { once } from "node:events";
import { cpSync, existsSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { Readable } from "node:stream";
import { promisify } from "node:util";

const PROJECT = resolve(__dirname, "../..");
const FORMULA = '=CORDON.NODEBUDGET(3,"30+10")';

describe("starting the command line", () => {
  let folder: string;

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "cordonbook-start-"));
    for (const part of ["src", "package.json", "tsconfig.json"])
      cpSync(join(PROJECT, part), join(folder, part), { recursive: true });
    symlinkSync(join(PROJECT, "node_modules"), join(folder, "node_modules"), "junction");
  });

  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  const start = async () => {
    const { stdout } = await promisify(execFile)(
      process.execPath,
      ["src/cli/start.mjs", "formula", FORMULA],
      {
        cwd: folder,
        env: { ...process.env, NODE_OPTIONS: "", LC_ALL: "C" },
      },
    );
    return stdout.trim();
  };

  test("makes one file of the sources, and again as soon as one of them changes", async () => {
    expect(await start()).toBe("50");
    expect(existsSync(join(folder, ".cache/cli/cordonbook.mjs"))).toBe(true);
    writeFileSync(join(folder, "src/cli/main.ts"), 'console.log("changed");\n');
    expect(await start()).toBe("changed");
  });

  test("goes without that file where the folder takes none", async () => {
    writeFileSync(join(folder, ".cache"), "a file in the place of the folder");
    expect(await start()).toBe("50");
  });

  test("refuses more on standard input than memory holds, in one sentence", async () => {
    const child = execFile(process.execPath, ["src/cli/start.mjs", "check", "-"], {
      cwd: folder,
      env: { ...process.env, NODE_OPTIONS: "", LC_ALL: "en_US.UTF-8" },
    });
    let told = "";
    child.stderr!.on("data", (data: string) => (told += data));
    const closed = once(child, "close");
    child.stdin!.on("error", () => undefined);
    Readable.from(Array(21).fill(Buffer.alloc(2 ** 20, "Block,Row\n"))).pipe(child.stdin!);
    const [exitCode] = (await closed) as [number];
    expect([exitCode, told.trim()]).toEqual([
      2,
      'What came in as "-" was not read: it is larger than 20 MB. Save it as a file and name that.',
    ]);
  });
});
