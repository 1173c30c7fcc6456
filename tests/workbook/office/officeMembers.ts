import path from "node:path";
import ts from "typescript";

/** A member of Office.js that the program uses. */
export interface OfficeMember {
  /** Class and member, such as "Range.values". */
  readonly name: string;
  /** What its own documentation comment says, such as "ExcelApi 1.1, 1.2" of a member that came in parts; "" for nothing. */
  readonly sets: string;
}

const TYPES = /[/\\]@types[/\\]office-js[/\\]/;
const SET = /\[\s*Api set:\s*([^\]]+?)\s*\]/gi;

/** Every member of Office.js's classes and interfaces that src reads, sets or calls, found with the type checker. */
export function officeMembersUsed(root = process.cwd()): OfficeMember[] {
  const { config } = ts.readConfigFile(path.join(root, "tsconfig.json"), (file) => ts.sys.readFile(file));
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const types = ["office-js", "custom-functions-runtime"];
  const files = ts.sys
    .readDirectory(path.join(root, "src"), [".ts"])
    .filter((file) => /\b(Excel|Office)\./.test(ts.sys.readFile(file) ?? ""));
  const program = ts.createProgram(files, { ...options, types, noEmit: true, skipLibCheck: true });
  const checker = program.getTypeChecker();
  const found = new Map<string, OfficeMember>();
  const note = (symbol: ts.Symbol | undefined) => {
    const byName = new Map<string, ts.Declaration[]>();
    for (const declaration of (symbol?.declarations ?? []).filter(isOffice)) {
      const name = `${(declaration.parent as ts.ClassDeclaration).name?.text}.${symbol!.name}`;
      byName.set(name, [...(byName.get(name) ?? []), declaration]);
    }
    for (const [name, declarations] of byName) found.set(name, { name, sets: setsOf(declarations) });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node)) note(checker.getSymbolAtLocation(node.name));
    if (ts.isObjectBindingPattern(node)) {
      const from = checker.getTypeAtLocation(node);
      for (const { propertyName, name } of node.elements)
        note(from.getProperty((propertyName ?? name).getText()));
    }
    ts.forEachChild(node, visit);
  };
  for (const file of files) visit(program.getSourceFile(file)!);
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
}

function isOffice(declaration: ts.Declaration): boolean {
  const { parent } = declaration;
  return (
    TYPES.test(declaration.getSourceFile().fileName) &&
    (ts.isClassDeclaration(parent) || ts.isInterfaceDeclaration(parent))
  );
}

/** The sets with their versions, each once: "[Api set: ExcelApi 1.1 / 1.3. ...]" is "ExcelApi 1.1, 1.3". */
function setsOf(declarations: readonly ts.Declaration[]): string {
  const versions = new Map<string, Set<string>>();
  for (const declaration of declarations)
    for (const comment of ts.getJSDocCommentsAndTags(declaration))
      for (const [, text] of comment.getText().matchAll(SET)) {
        const name = text.split(" ")[0];
        const known = versions.get(name) ?? new Set();
        versions.set(name, known);
        for (const [version] of text.matchAll(/\d+\.\d+/g)) known.add(version);
      }
  return [...versions].map(([name, known]) => `${name} ${[...known].sort().join(", ")}`).join("; ");
}
