import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import { functionFiles } from "../../src/functions/functionFiles";
import { EXCEL_FLOOR } from "../../src/workbook/excel/excelFloor";
import { drawIcon, ICON_SIZES } from "../../src/taskpane/icons/drawIcons";
import { elements, xmlTree, type XmlElement } from "./xmlTree";

/** What the schema and the usual validators do not catch: https://learn.microsoft.com/office/dev/add-ins/develop */
const manifest = xmlTree(readFileSync("manifest.xml", "utf8"));
const overrides = elements(manifest, "VersionOverrides")[0];
const resources = elements(overrides, "Resources")[0];

const named = (name: string) => elements(manifest, name);
const resid = (element: XmlElement) => element.attributes.resid;

function definedResids(): XmlElement[] {
  return resources.children.flatMap((group) => group.children);
}

function usedResids(root: XmlElement): string[] {
  return root.children
    .filter((child) => child.name !== "Resources")
    .flatMap((child) => [...(resid(child) ? [resid(child)] : []), ...usedResids(child)]);
}

function valuesOf(element: XmlElement): string[] {
  const own = element.attributes.DefaultValue;
  const others = elements(element, "Override").map((override) => override.attributes.Value);
  return [...(own === undefined ? [] : [own]), ...others];
}

describe("resource ids", () => {
  const defined = definedResids().map((element) => element.attributes.id);

  test("every one that is used is defined", () => {
    expect(usedResids(overrides).filter((id) => !defined.includes(id))).toEqual([]);
  });

  test("every one that is defined is used, once, and at most 32 characters long", () => {
    const used = usedResids(overrides);
    expect(defined.filter((id) => !used.includes(id))).toEqual([]);
    expect(new Set(defined).size).toBe(defined.length);
    expect(defined.filter((id) => id.length > 32)).toEqual([]);
  });

  test("the shared runtime is one page under one id, with a long lifetime", () => {
    const runtime = named("Runtime")[0];
    const page = elements(named("Page")[0], "SourceLocation")[0];
    const pane = elements(named("Action")[0], "SourceLocation")[0];
    const functionFile = named("FunctionFile")[0];
    expect([page, pane, functionFile].map(resid)).toEqual(new Array(3).fill(resid(runtime)));
    expect(runtime.attributes.lifetime).toBe("long");
  });

  test("the page of the runtime is the one of DefaultSettings", () => {
    const page = definedResids().find((element) => element.attributes.id === resid(named("Runtime")[0]));
    const settings = elements(named("DefaultSettings")[0], "SourceLocation")[0];
    expect(page?.attributes.DefaultValue).toBe(settings.attributes.DefaultValue);
  });
});

describe("lengths and addresses", () => {
  test.each([
    ["ShortStrings", 125],
    ["LongStrings", 250],
    ["Urls", 2048],
    ["Images", 2048],
  ])("every text of %s has at most %i characters and none is empty", (group, most) => {
    const texts = elements(resources, group)[0].children.flatMap(valuesOf);
    expect(texts.length).toBeGreaterThan(0);
    expect(texts.filter((text) => text.length > most || text.trim() === "")).toEqual([]);
  });

  test("display name and description fit in every language", () => {
    expect(valuesOf(named("DisplayName")[0]).filter((text) => text.length > 125)).toEqual([]);
    expect(valuesOf(named("Description")[0]).filter((text) => text.length > 250)).toEqual([]);
  });

  test("every address is https and has the trial address that a build replaces", () => {
    const addresses = JSON.stringify(manifest).match(/[a-z]+:\/\/[^"\s]+/g) ?? [];
    const files = addresses.filter((address) => !/schemas\.microsoft\.com|www\.w3\.org/.test(address));
    expect(files.length).toBeGreaterThan(10);
    expect(files.filter((address) => !address.startsWith("https://localhost:3000/"))).toEqual([]);
  });

  /** A locale stands for itself alone: https://learn.microsoft.com/javascript/api/manifest/override */
  test("what can be said in Spanish and French is, in every locale of vineyards that this is for", () => {
    const spoken = [
      named("DisplayName")[0],
      named("Description")[0],
      ...elements(resources, "LongStrings")[0].children,
      definedResids().find((element) => element.attributes.id === "Functions.Url")!,
    ];
    for (const element of spoken) {
      const overrides = elements(element, "Override").map(({ attributes }) => attributes);
      expect(overrides.map(({ Locale }) => Locale)).toEqual([
        "es-ES",
        "es-MX",
        "es-US",
        "es-419",
        "fr-FR",
        "fr-CA",
      ]);
      for (const language of ["es", "fr"])
        expect(
          new Set(overrides.filter(({ Locale }) => Locale.startsWith(language)).map(({ Value }) => Value))
            .size,
        ).toBe(1);
    }
  });
});

describe("icons", () => {
  test("sizes in the manifest are 16, 32 and 80 for the ribbon, 32 and 64 for the add-in", () => {
    for (const icon of elements(overrides, "Icon"))
      expect(icon.children.map((image) => image.attributes.size)).toEqual(["16", "32", "80"]);
    expect(named("IconUrl")[0].attributes.DefaultValue).toMatch(/icon-32\.png$/);
    expect(named("HighResolutionIconUrl")[0].attributes.DefaultValue).toMatch(/icon-64\.png$/);
  });

  test("each image of the manifest shows the size that it is used for", () => {
    for (const image of elements(overrides, "Image").filter((element) => resid(element))) {
      const resource = definedResids().find((element) => element.attributes.id === resid(image));
      expect(resource?.attributes.DefaultValue).toMatch(new RegExp(`icon-${image.attributes.size}\\.png$`));
    }
  });

  test.each(ICON_SIZES)("icon-%i.png has that many pixels and is what the drawing makes", (size) => {
    const png = readFileSync(`src/taskpane/icons/icon-${size}.png`);
    expect(png.subarray(0, 8)).toEqual(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([size, size]);
    const length = png.readUInt32BE(33);
    const lines = inflateSync(png.subarray(41, 41 + length));
    const drawn = drawIcon(size);
    for (let y = 0; y < size; y++)
      expect(
        Buffer.compare(
          lines.subarray(y * (size * 4 + 1) + 1, (y + 1) * (size * 4 + 1)),
          drawn.subarray(y * size * 4, (y + 1) * size * 4),
        ),
      ).toBe(0);
    expect(drawn.filter((_, i) => i % 4 === 3 && drawn[i] > 200).length).toBeGreaterThan((size * size) / 20);
  });
});

describe("order and version", () => {
  test("the parts of OfficeApp stand in the order that the schema asks for", () => {
    expect(manifest.children.map((child) => child.name)).toEqual([
      "Id",
      "Version",
      "ProviderName",
      "DefaultLocale",
      "DisplayName",
      "Description",
      "IconUrl",
      "HighResolutionIconUrl",
      "SupportUrl",
      "Hosts",
      "Requirements",
      "DefaultSettings",
      "Permissions",
      "VersionOverrides",
    ]);
  });

  test("the parts of the host stand in their order", () => {
    const host = elements(overrides, "Host")[0];
    expect(host.attributes["xsi:type"]).toBe("Workbook");
    expect(host.children.map((child) => child.name)).toEqual([
      "Runtimes",
      "AllFormFactors",
      "DesktopFormFactor",
    ]);
    const point = elements(host.children[1], "ExtensionPoint")[0];
    expect(point.children.map((child) => child.name)).toEqual(["Script", "Page", "Metadata", "Namespace"]);
    expect(host.children[2].children.map((child) => child.name)).toEqual([
      "GetStarted",
      "FunctionFile",
      "ExtensionPoint",
    ]);
    expect(resources.children.map((child) => child.name)).toEqual([
      "Images",
      "Urls",
      "ShortStrings",
      "LongStrings",
    ]);
  });

  test("the version is the package's", () => {
    const { version } = JSON.parse(readFileSync("package.json", "utf8"));
    expect(named("Version")[0].text).toBe(`${version}.0`);
  });

  test("at most six commands on the Home tab, each with a label and a tip", () => {
    const controls = named("Control");
    expect(controls.length).toBeLessThanOrEqual(6);
    for (const control of controls)
      expect(control.children.map((child) => child.name)).toEqual(["Label", "Supertip", "Icon", "Action"]);
    expect(named("OfficeTab")[0].attributes.id).toBe("TabHome");
  });
});

describe("functions and requirements", () => {
  test("the namespace is CORDON in every language", () => {
    const namespace = definedResids().find(
      (element) => element.attributes.id === resid(named("Namespace")[0]),
    );
    expect(valuesOf(namespace!)).toEqual(["CORDON"]);
  });

  test("the functions' file of each language is one that a build makes", () => {
    const metadata = definedResids().find(
      (element) => element.attributes.id === resid(elements(named("Metadata")[0], "SourceLocation")[0]),
    );
    const built = new Map(functionFiles());
    for (const address of valuesOf(metadata!)) {
      const file = built.get(address.replace("https://localhost:3000/", ""));
      expect(JSON.parse(file!).functions.length).toBeGreaterThan(10);
    }
  });

  test("only what the page itself needs is required, so that an older Excel gets a sentence and not silence", () => {
    const sets = named("Set").map(({ attributes }) => ({
      set: attributes.Name,
      version: attributes.MinVersion,
    }));
    expect(sets).toEqual([{ set: "SharedRuntime", version: "1.1" }]);
    for (const required of sets) expect(EXCEL_FLOOR).toContainEqual(required);
    expect(named("Permissions")[0].text).toBe("ReadWriteDocument");
  });
});
