import { spawn, type ChildProcess } from "node:child_process";
import { createHash } from "node:crypto";
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import * as realDisk from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  besideSource,
  readForChange,
  saveInPlace,
  saveNew,
  type Disk,
} from "../../../src/workbook/file/saveFile";

const NOW = new Date(Date.UTC(2026, 2, 31, 10, 15, 0));
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "cordonbook-save-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

const bytes = (text: string) => new TextEncoder().encode(text);
const start = (text = "old"): string => {
  const path = join(folder, "season.xlsx");
  writeFileSync(path, text);
  return path;
};
const failure = (code: string): NodeJS.ErrnoException => Object.assign(new Error(code), { code });

/** The disk with one call that fails. */
function failing(call: "rename" | "copyFile" | "link", code: string): Disk {
  return { ...realDisk, [call]: () => Promise.reject(failure(code)) };
}

/** A disk that is full once so many bytes of a file are written. */
function fullAfter(count: number): Disk {
  return {
    ...realDisk,
    open: (async (path: string, flags: string, mode: number) => {
      const handle = await realDisk.open(path, flags, mode);
      handle.writeFile = async (data) => {
        await handle.write((data as Uint8Array).subarray(0, count));
        throw failure("ENOSPC");
      };
      return handle;
    }) as Disk["open"],
  };
}

test("puts new content in the file's place and the old one beside it", async () => {
  const path = start();
  chmodSync(path, 0o640);
  const backup = await saveInPlace(await readForChange(path), bytes("new"), NOW);
  expect(readFileSync(path, "utf8")).toBe("new");
  expect(backup).toBe(join(folder, "season.backup-20260331T101500Z.xlsx"));
  expect(readFileSync(backup, "utf8")).toBe("old");
  expect(statSync(path).mode & 0o777).toBe(0o640);
  const second = await saveInPlace(await readForChange(path), bytes("newer"), NOW);
  expect(readFileSync(second, "utf8")).toBe("new");
  expect(readdirSync(folder).sort()).toEqual([
    "season.backup-20260331T101500Z-2.xlsx",
    "season.backup-20260331T101500Z.xlsx",
    "season.xlsx",
  ]);
});

test("copies the old file where the disk knows no second names", async () => {
  const path = start();
  const backup = await saveInPlace(await readForChange(path), bytes("new"), NOW, failing("link", "ENOTSUP"));
  expect([readFileSync(path, "utf8"), readFileSync(backup, "utf8")]).toEqual(["new", "old"]);
});

test("follows a link to the file itself", async () => {
  const path = start();
  const link = join(folder, "link.xlsx");
  symlinkSync(path, link);
  await saveInPlace(await readForChange(link), bytes("new"), NOW);
  expect(readFileSync(path, "utf8")).toBe("new");
  expect(readFileSync(link, "utf8")).toBe("new");
});

test.each(["~$season.xlsx", "~$ason.xlsx", ".~lock.season.xlsx#"])(
  "leaves a file alone that another program has open (%s)",
  async (sign) => {
    const path = start();
    const state = await readForChange(path);
    writeFileSync(join(folder, sign), "");
    await expect(saveInPlace(state, bytes("new"), NOW)).rejects.toMatchObject({ code: "openElsewhere" });
    await expect(readForChange(path)).rejects.toMatchObject({ code: "openElsewhere" });
    expect(readFileSync(path, "utf8")).toBe("old");
    expect(readdirSync(folder).sort()).toEqual([sign, "season.xlsx"].sort());
  },
);

test("leaves a file alone that somebody saved meanwhile", async () => {
  const path = start();
  const state = await readForChange(path);
  writeFileSync(path, "colleague's");
  await expect(saveInPlace(state, bytes("new"), NOW)).rejects.toMatchObject({ code: "changedMeanwhile" });
  expect(readFileSync(path, "utf8")).toBe("colleague's");
  const again = await readForChange(path);
  utimesSync(path, new Date(), new Date(Date.now() + 5000));
  await expect(saveInPlace(again, bytes("new"), NOW)).rejects.toMatchObject({ code: "changedMeanwhile" });
});

test.each([
  [
    "the disk is full while the backup is made",
    { ...failing("copyFile", "ENOSPC"), link: failing("link", "ENOTSUP").link },
    "diskFull",
  ],
  ["the disk is full halfway through", fullAfter(1), "diskFull"],
  ["the disk is full before the first byte", fullAfter(0), "diskFull"],
  ["the rename is not allowed", failing("rename", "EPERM"), "mayNotWrite"],
  ["another program holds the file", failing("rename", "EBUSY"), "openElsewhere"],
])("leaves file and folder as they were when %s", async (_why, disk, code) => {
  const path = start();
  await expect(saveInPlace(await readForChange(path), bytes("new"), NOW, disk)).rejects.toMatchObject({
    code,
  });
  expect(readFileSync(path, "utf8")).toBe("old");
  expect(readdirSync(folder)).toEqual(["season.xlsx"]);
});

test("writes a new file whole or not at all, and never over another", async () => {
  const path = join(folder, "result.xlsx");
  await expect(saveNew(path, bytes("new"), fullAfter(1))).rejects.toMatchObject({ code: "diskFull" });
  expect(readdirSync(folder)).toEqual([]);
  await saveNew(path, bytes("new"));
  await expect(saveNew(path, bytes("newer"))).rejects.toMatchObject({ code: "fileExists" });
  expect(readFileSync(path, "utf8")).toBe("new");
  const copied = join(folder, "copied.xlsx");
  await saveNew(copied, bytes("new"), failing("link", "ENOTSUP"));
  expect(readFileSync(copied, "utf8")).toBe("new");
  expect(readdirSync(folder).sort()).toEqual(["copied.xlsx", "result.xlsx"]);
  await expect(saveNew(join(folder, "none", "x.xlsx"), bytes("new"))).rejects.toMatchObject({
    code: "noFile",
  });
});

test("a result stands beside its source", () => {
  expect(besideSource("/a/season 1.xlsx", "findings")).toBe("/a/season 1-findings.xlsx");
  expect(besideSource("/a/counts.csv", "findings", ".xlsx")).toBe("/a/counts-findings.xlsx");
});

describe("what a killed process left behind", () => {
  const children: ChildProcess[] = [];
  afterEach(() => {
    for (const child of children.splice(0)) child.kill("SIGKILL");
  });

  /** Starts a process that saves and, just before the rename, runs a statement; gives the name of its new content. */
  async function stoppedBeforeRename(path: string, statement: string): Promise<string> {
    const before = readdirSync(folder);
    const script = join(folder, "save.mts");
    writeFileSync(
      script,
      `import { readForChange, saveInPlace } from ${JSON.stringify(join(__dirname, "../../../src/workbook/file/saveFile.ts"))};
       import * as disk from "node:fs/promises";
       const rename = () => { process.stdout.write("written\\n"); ${statement} };
       const state = await readForChange(${JSON.stringify(path)});
       await saveInPlace(state, new TextEncoder().encode("new"), new Date(0), { ...disk, rename });`,
    );
    const child = spawn(process.execPath, ["--import", "tsx", script], {
      cwd: join(__dirname, "../../.."),
      stdio: ["ignore", "pipe", "inherit"],
    });
    children.push(child);
    await new Promise((resolve) => child.stdout.once("data", resolve));
    if (statement.includes("SIGKILL"))
      await new Promise((resolve) =>
        (child.exitCode ?? child.signalCode) ? resolve(0) : child.once("exit", resolve),
      );
    rmSync(script);
    const made = readdirSync(folder).filter((name) => !before.includes(name) && name.endsWith(".waiting"));
    expect(made).toHaveLength(1);
    return made[0];
  }

  const KILLED =
    'process.kill(process.pid, "SIGKILL"); return new Promise(() => setInterval(() => 0, 1000));';
  const SLOW = "return new Promise(() => setInterval(() => 0, 1000));";
  const hidden = () => readdirSync(folder).filter((name) => name.startsWith("."));

  test.each([
    ["in place", async (path: string) => saveInPlace(await readForChange(path), bytes("newer"), NOW)],
    ["as a new file", async () => saveNew(join(folder, "result.xlsx"), bytes("newer"))],
  ])("goes with the next save %s", async (_how, save) => {
    const path = start();
    expect(await stoppedBeforeRename(path, KILLED)).toMatch(/^\.season\.xlsx\.\d+-/);
    expect(readFileSync(path, "utf8")).toBe("old");
    await save(path);
    expect(hidden()).toEqual([]);
  });

  test("stays while its process runs, and where it is another machine's or no file of ours", async () => {
    const path = start();
    const other = join(folder, "slow.xlsx");
    writeFileSync(other, "old");
    const slow = await stoppedBeforeRename(other, SLOW);
    await expect(saveInPlace(await readForChange(other), bytes("newer"), NOW)).rejects.toMatchObject({
      code: "savedElsewhere",
    });
    const left = await stoppedBeforeRename(path, KILLED);
    const own = /^(\.season\.xlsx\.)(\d+)-([0-9a-f]+)(\.waiting)$/.exec(left)!;
    const [, name, dead, machine, ending] = own;
    const others = [
      `${name}${dead}-${"0".repeat(machine.length)}${ending}`,
      `${name}${dead}${ending}`,
      `${name}${dead}-${machine}${ending}.xlsx`,
      `season.xlsx.${dead}-${machine}${ending}`,
      `${name}${process.ppid}-${machine}${ending}`,
    ];
    for (const each of others) writeFileSync(join(folder, each), "somebody's");
    mkdirSync(join(folder, `.folder.${dead}-${machine}${ending}`));
    const state = await readForChange(path);
    await saveInPlace(state, bytes("newer"), NOW);
    const names = readdirSync(folder);
    expect(names).not.toContain(left);
    expect(names).toEqual(expect.arrayContaining([slow, ...others, `.folder.${dead}-${machine}${ending}`]));
    for (const each of others) expect(readFileSync(join(folder, each), "utf8")).toBe("somebody's");
  });

  test("under this process's own number goes too, but not what it is writing", async () => {
    const path = start();
    const [, name, , machine] = /^(.*\.)(\d+)-([0-9a-f]+)\.waiting$/.exec(
      await stoppedBeforeRename(path, KILLED),
    )!;
    const mine = `${name}${process.pid}-${machine}.waiting`;
    writeFileSync(join(folder, mine), "of a process that had this number before");
    let during: string[] = [];
    const disk: Disk = {
      ...realDisk,
      rename: async (from, to) => {
        await saveNew(join(folder, "other.xlsx"), bytes("other"));
        during = hidden().filter((each) => each.endsWith(".waiting"));
        await realDisk.rename(from, to);
      },
    };
    await saveInPlace(await readForChange(path), bytes("newer"), NOW, disk);
    expect(during).toEqual([mine]);
    expect(readFileSync(path, "utf8")).toBe("newer");
    expect(hidden()).toEqual([]);
  });

  test("is no reason not to save where the folder cannot be listed", async () => {
    const path = start();
    const left = await stoppedBeforeRename(path, KILLED);
    const readdir = (() => Promise.reject(failure("EACCES"))) as unknown as Disk["readdir"];
    await saveInPlace(await readForChange(path), bytes("newer"), NOW, { ...realDisk, readdir });
    expect(readFileSync(path, "utf8")).toBe("newer");
    expect(hidden()).toEqual([left]);
  });
});

test("a file is whole whenever the program is killed", async () => {
  const versions = ["a", "b"].map((letter) => letter.repeat(3_000_000));
  const path = start(versions[0]);
  const hashes = new Set(versions.map((text) => createHash("sha256").update(text).digest("hex")));
  const script = join(folder, "save.mts");
  writeFileSync(
    script,
    `import { readForChange, saveInPlace } from ${JSON.stringify(join(__dirname, "../../../src/workbook/file/saveFile.ts"))};
     import { unlinkSync } from "node:fs";
     process.stdout.write("started\\n");
     for (let i = 0; ; i++) {
       const state = await readForChange(${JSON.stringify(path)});
       const backup = await saveInPlace(state, new TextEncoder().encode((i % 2 ? "a" : "b").repeat(3_000_000)), new Date());
       unlinkSync(backup);
     }`,
  );
  const seen = new Set<string>();
  for (let run = 0; run < 12; run++) {
    const child = spawn(process.execPath, ["--import", "tsx", script], {
      cwd: join(__dirname, "../../.."),
      stdio: ["ignore", "pipe", "inherit"],
    });
    await new Promise((resolve) => child.stdout.once("data", resolve));
    await new Promise((resolve) => setTimeout(resolve, 7 + run * 13));
    child.kill("SIGKILL");
    await new Promise((resolve) => child.once("exit", resolve));
    const hash = createHash("sha256").update(readFileSync(path)).digest("hex");
    expect(hashes).toContain(hash);
    seen.add(hash);
    for (const left of readdirSync(folder).filter((name) => name.includes("backup")))
      expect(readFileSync(join(folder, left)).length).toBe(3_000_000);
  }
  expect(seen.size).toBeGreaterThan(0);
  await saveInPlace(await readForChange(path), bytes("last"), NOW);
  expect(readdirSync(folder).filter((name) => name.startsWith("."))).toEqual([]);
}, 120000);
