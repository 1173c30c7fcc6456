import { SaxesParser } from "saxes";

/** An element of an XML file: local name, attributes by their written names, children, own text. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: XmlElement[];
  text: string;
}

/** Reads an XML file; a file that is not well formed throws with the place. */
export function xmlTree(text: string): XmlElement {
  const top: XmlElement = { name: "", attributes: {}, children: [], text: "" };
  const open = [top];
  const parser = new SaxesParser({ xmlns: true });
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ local, attributes }) => {
    const values = Object.entries(attributes).map(([name, attribute]) => [name, attribute.value]);
    const element: XmlElement = {
      name: local,
      attributes: Object.fromEntries(values),
      children: [],
      text: "",
    };
    open[open.length - 1].children.push(element);
    open.push(element);
  });
  parser.on("text", (part) => (open[open.length - 1].text += part));
  parser.on("closetag", () => open.pop());
  parser.write(text).close();
  return top.children[0];
}

/** All elements of that name below this one, in document order. */
export function elements(root: XmlElement, name: string): XmlElement[] {
  return root.children.flatMap((child) => [
    ...(child.name === name ? [child] : []),
    ...elements(child, name),
  ]);
}
