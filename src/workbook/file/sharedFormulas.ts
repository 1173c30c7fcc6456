import { areasOfAddress, cellName } from "../address";
import { movableFormula } from "./movableFormula";
import { plainText, spliced, xmlSpans, xmlText } from "./xmlSpans";

/**
 * The part of a sheet in which cells that share one formula have each their own (ECMA-376 part 1, 18.3.1.40), so that a
 * cell can be changed or moved without the others.
 *
 * @param isMeant asked with the place of the cell that holds a formula for the others, "B2", and the formula; all where
 *   left out
 */
export function unshared(
  xml: string,
  isMeant: (place: string, formula: string) => boolean = () => true,
): string {
  if (!/\st\s*=\s*["']shared["']/.test(xml)) return xml;
  const { prefix: p, spans } = xmlSpans(
    xml,
    (path) => path[0] === "sheetData" && /^(?:row|c|f)$/.test(path[path.length - 1]),
  );
  const shared = new Map<
    string,
    { moved: (rows: number, columns: number) => string; row: number; column: number }
  >();
  let [row, column] = [0, 0];
  return spliced(
    xml,
    spans.flatMap(({ name, attributes, start, openEnd, closeStart, end }) => {
      if (name === "row") [row, column] = [attributes.r === undefined ? row + 1 : Number(attributes.r), 0];
      else if (name === "c") {
        const [place] = areasOfAddress(attributes.r ?? "");
        column = place?.firstColumn ?? column + 1;
      }
      const { t, si } = attributes;
      if (name !== "f" || t !== "shared" || si === undefined) return [];
      const text = plainText(xml.slice(openEnd, closeStart));
      if (text !== "" && isMeant(cellName(row, column), text))
        shared.set(si, { moved: movableFormula(text), row, column });
      else if (text !== "") shared.delete(si);
      const first = shared.get(si);
      if (!first) return [];
      const formula = first.moved(row - first.row, column - first.column);
      return [{ start, end, text: `<${p}f>${xmlText(formula)}</${p}f>` }];
    }),
  );
}
