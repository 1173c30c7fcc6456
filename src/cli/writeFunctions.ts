import { readFileSync, writeFileSync } from "node:fs";
import { format } from "prettier";
import { withFunctionTable } from "../functions/functionTable";
import { functionsMetadata, metadataFile } from "../functions/metadata";
import { brokenSignatures, presentSignatures, type Signatures } from "../functions/releasedSignatures";
import { LANGUAGES } from "../texts/language";

const RELEASED = "src/functions/released.json";
const EXPECTED = "tests/functions/expected";
const README = "README.md";

/** npm run functions:write, from the project's folder: writes everything that is made from the registry. */
async function writeFunctions(): Promise<void> {
  const broken = brokenSignatures(JSON.parse(readFileSync(RELEASED, "utf8")) as Signatures);
  if (broken.length > 0)
    throw new Error(`these signatures are released and frozen: ${JSON.stringify(broken)}`);
  await writeJson(RELEASED, presentSignatures());
  for (const language of LANGUAGES)
    await writeJson(`${EXPECTED}/${metadataFile(language)}`, functionsMetadata(language));
  writeFileSync(README, withFunctionTable(readFileSync(README, "utf8")));
}

async function writeJson(file: string, content: unknown): Promise<void> {
  writeFileSync(file, await format(JSON.stringify(content), { parser: "json", printWidth: 110 }));
}

void writeFunctions();
