import { mkdtempSync, mkdirSync, rmSync, writeFileSync, statSync } from "node:fs";
import { get } from "node:https";
import type { IncomingHttpHeaders } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { addinFile } from "../../src/taskpane/server/addinFile";
import { untrustedCertificate, type CertificateMaker } from "../../src/taskpane/server/certificate";
import { optionalPackage } from "../../src/taskpane/server/optionalPackage";
import { serveAddin } from "../../src/taskpane/server/serveAddin";

describe("the file that an address asks for", () => {
  test.each([
    ["/", "taskpane.html", "no-cache", "the page itself when no file is named"],
    ["/taskpane.html?_host_Info=Excel$Web", "taskpane.html", "no-cache", "Office adds a query of its own"],
    [
      "/taskpane.js?0a1b2c",
      "taskpane.js",
      "public, max-age=31536000, immutable",
      "its address changes with it",
    ],
    ["/taskpane.js", "taskpane.js", "no-cache", "without a fingerprint it may be an old one"],
    ["/functions.json", "functions.json", "no-cache", "new functions must be seen"],
    [
      "/sample-workbooks/empty-season-es.xlsx",
      "sample-workbooks/empty-season-es.xlsx",
      "no-cache",
      "an empty season",
    ],
    ["/functions.es.json", "functions.es.json", "no-cache", "in every language"],
    [
      "/icons/icon-32.png",
      "icons/icon-32.png",
      "public, max-age=86400",
      "Office refuses icons it may not keep",
    ],
  ])("%s is %s, %s: %s", (address, file, caching) => {
    const answer = addinFile(address);
    expect(answer?.file).toBe(file);
    expect(answer?.headers["Cache-Control"]).toBe(caching);
    expect(Object.keys(answer?.headers ?? {})).not.toContain("X-Frame-Options");
  });

  test.each([
    ["/../package.json", "above the folder"],
    ["/%2e%2e/package.json", "above the folder, written otherwise"],
    ["/icons/../../x.js", "above the folder from within"],
    ["/icons//icon-32.png", "an empty part"],
    ["/%E0%A4%A", "no text at all"],
    ["/.env", "no kind of file of ours"],
    ["/a.exe", "no kind of file of ours"],
    ["/..\\..\\x.js", "backslashes"],
  ])("%s is no file of ours: %s", (address) => {
    expect(addinFile(address)).toBeUndefined();
  });
});

describe("the trial server", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "cordonbook-"));
  afterAll(() => rmSync(folder, { recursive: true }));

  function fetched(
    port: number,
    address: string,
  ): Promise<{ status: number; headers: IncomingHttpHeaders; text: string }> {
    return new Promise((resolve, reject) => {
      get({ host: "localhost", port, path: address, rejectUnauthorized: false }, (answer) => {
        let text = "";
        answer.on("data", (part) => (text += part));
        answer.on("end", () => resolve({ status: answer.statusCode ?? 0, headers: answer.headers, text }));
      }).on("error", reject);
    });
  }

  test("serves the folder over HTTPS and nothing above it", async () => {
    jest.spyOn(console, "log").mockImplementation(() => undefined);
    const maker = (await optionalPackage<CertificateMaker>("office-addin-dev-certs")) as CertificateMaker;
    mkdirSync(path.join(folder, "dist"));
    writeFileSync(path.join(folder, "dist/taskpane.html"), "<p>pane</p>");
    writeFileSync(path.join(folder, "secret.html"), "no");
    const certificate = await untrustedCertificate(maker, path.join(folder, "certificates"));
    expect(statSync(path.join(folder, "certificates/localhost.key")).mode & 0o777).toBe(0o600);
    const server = await serveAddin(path.join(folder, "dist"), certificate, 0);
    try {
      const { port } = server.address() as AddressInfo;
      const page = await fetched(port, "/taskpane.html");
      expect([page.status, page.text]).toEqual([200, "<p>pane</p>"]);
      expect(page.headers["content-type"]).toBe("text/html; charset=utf-8");
      expect((await fetched(port, "/functions.json")).status).toBe(404);
      expect((await fetched(port, "/..%2fsecret.html")).status).toBe(404);
    } finally {
      server.close();
      jest.restoreAllMocks();
    }
  });

  test("a package that is missing is undefined, not a crash", async () => {
    expect(await optionalPackage("office-addin-that-is-nowhere")).toBeUndefined();
  });
});
