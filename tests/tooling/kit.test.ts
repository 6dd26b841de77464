/**
 * The kit for closed networks, used as its page of steps says: unpacked, its sums checked, served by nginx below a path
 * under TLS with a certificate of an authority of its own, and opened in Chromium, which finds that host alone.
 */
import { createHash, X509Certificate } from "node:crypto";
import { execFileSync, spawn, spawnSync, type ChildProcess } from "node:child_process";
import fs from "node:fs";
import https from "node:https";
import net from "node:net";
import os from "node:os";
import path from "node:path";
import { unzipSync } from "fflate";
import { chromium, type Browser, type Page } from "playwright-core";
import { AppManifestUtils, type TeamsManifest } from "@microsoft/app-manifest";
import { argumentCells, firstExample } from "../../src/catalogue/constantFormula";
import { readCatalogue } from "../../src/catalogue/readCatalogue";
import { readWorkbook } from "../../src/engine/file/readWorkbook";
import { findBrowser } from "../../src/tooling/browser";
import { buildKit, KitMisuse } from "../../src/tooling/buildKit";
import { installHostBridge, type HostBridge } from "../../src/tooling/hostBridge";
import { builtFiles, buildTimeout } from "../builtFiles";
import { exampleDifference } from "../exampleDifference";
import { allElements, readXml } from "../manifest/readXml";

// A package of Microsoft's validator is of a kind Jest can't load; our file has no byte-order mark to strip.
jest.mock("strip-bom", () => ({ __esModule: true, default: (content: string) => content }));

const name = "tools.example.internal";
let folder: string;
let port: number;
let host: string;
const kit = (file: string): string => path.join(folder, "oxygen-kit", file);
const text = (file: string): string => fs.readFileSync(kit(file), "utf8");

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const server = net.createServer().listen(0, "127.0.0.1", () => {
      const address = server.address() as net.AddressInfo;
      server.close(() => resolve(address.port));
    });
  });

beforeAll(async () => {
  builtFiles();
  folder = fs.mkdtempSync(path.join(os.tmpdir(), "kit-"));
  port = await freePort();
  host = `https://${name}:${port}/oxygen`;
  const file = path.join(folder, "kit.zip");
  await buildKit({ host: `${host}/`, share: "\\\\files\\addins" }, file);
  for (const [entry, bytes] of Object.entries(unzipSync(fs.readFileSync(file)))) {
    fs.mkdirSync(path.dirname(path.join(folder, entry)), { recursive: true });
    fs.writeFileSync(path.join(folder, entry), bytes);
  }
}, buildTimeout);

afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

it("holds what its sums say, and nothing else", () => {
  const lines = text("SHA256SUMS").trim().split("\n");
  for (const line of lines) {
    const [sum, file] = line.split("  ");
    expect([
      file,
      createHash("sha256")
        .update(fs.readFileSync(kit(file!)))
        .digest("hex"),
    ]).toEqual([file, sum]);
  }
  const files = fs.readdirSync(kit("."), { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  expect(files).toHaveLength(lines.length + 1);
});

it("names its own host and never the development host", async () => {
  for (const file of ["manifests/manifest.xml", "manifests/manifest-perpetual.xml"]) {
    const addresses = allElements(readXml(text(file)))
      .flatMap(({ attributes }) => attributes.DefaultValue ?? [])
      .filter((value) => value.startsWith("https:"));
    expect(addresses.length).toBeGreaterThan(8);
    for (const address of addresses) {
      expect(address.startsWith(`${host}/`)).toBe(true);
      expect([address, fs.existsSync(kit(`site/${address.slice(host.length + 1)}`))]).toEqual([address, true]);
    }
  }
  const manifest = JSON.parse(text("manifests/manifest.json")) as TeamsManifest & { validDomains: string[] };
  expect(manifest.validDomains).toEqual([`${name}:${port}`]);
  expect(await AppManifestUtils.validateAgainstSchema(manifest)).toEqual([]);
  for (const file of [
    "manifests/manifest.xml",
    "manifests/manifest.json",
    "site/functions.json",
    "site/functions-perpetual.json",
  ])
    expect(text(file)).not.toContain("localhost");
  expect(text("windows/trusted-catalogue.reg")).toContain('"Url"="\\\\\\\\files\\\\addins"\r\n');
});

it("brings copies of the samples without a formula, that show what the samples show", () => {
  const samples = fs.readdirSync(kit("samples")).filter((file) => file.endsWith(".xlsx"));
  expect(samples).toHaveLength(6);
  const ids = readCatalogue().map(({ record }) => record.id);
  for (const sample of samples) {
    const [live, plain] = ["samples", "samples/values-only"].map((place) =>
      readWorkbook(new Uint8Array(fs.readFileSync(kit(`${place}/${sample}`))), ids),
    );
    for (const [index, sheet] of plain!.sheets.entries()) {
      expect(Object.values(sheet.cells).filter(({ formula }) => formula !== undefined)).toEqual([]);
      const shown = (cells: typeof sheet.saved) =>
        [...cells].map(([at, { value }]) => [at, value] as const).filter(([, value]) => value !== undefined);
      expect(shown(sheet.saved)).toEqual(shown(live!.sheets[index]!.saved));
    }
  }
});

it("lists every package with its licence (CycloneDX 1.5), and every text", () => {
  const bill = JSON.parse(text("bill-of-materials.cdx.json")) as {
    bomFormat: string;
    specVersion: string;
    components: { name: string; version: string; purl: string; licenses: unknown[] }[];
  };
  expect([bill.bomFormat, bill.specVersion]).toEqual(["CycloneDX", "1.5"]);
  const names = bill.components.map((each) => each.name);
  expect(names).toEqual(
    expect.arrayContaining(["zod", "yalps", "@univerjs/core", "react", "fflate", "@microsoft/office-js"]),
  );
  for (const { purl, licenses } of bill.components) expect([purl, licenses.length]).toEqual([purl, 1]);
  const texts = fs
    .readdirSync(kit("licences"))
    .map((file) => text(`licences/${file}`))
    .join("\n");
  for (const { name: package_, version } of bill.components)
    if (package_ !== "@microsoft/office-js") expect(texts).toContain(`${package_} ${version} (`);
  expect(texts).not.toContain("brings no text");
});

it("refuses a host that Excel would", async () => {
  for (const wrong of ["http://tools.example.internal/", "tools.example.internal", "https://a.example/?x"])
    await expect(buildKit({ host: wrong, share: "" }, path.join(folder, "no.zip"))).rejects.toThrow(KitMisuse);
  expect(fs.existsSync(path.join(folder, "no.zip"))).toBe(false);
});

const has = (command: string): boolean => spawnSync(command, ["-v"]).error === undefined;
const canServe = findBrowser() !== undefined && has("nginx") && has("openssl");
const suite = canServe ? describe : describe.skip;

suite("served by nginx [nginx]", () => {
  let nginx: ChildProcess;
  let browser: Browser;
  let authority: string;
  const foreign: string[] = [];

  const open = async (page: string, before?: string): Promise<Page> => {
    const opened = await browser.newPage();
    opened.on("request", (request) => {
      if (!request.url().startsWith(`${host}/`) && !/^(?:data|blob):/.test(request.url())) foreign.push(request.url());
    });
    if (before) await opened.addInitScript(before);
    await opened.goto(`${host}/${page}`);
    return opened;
  };

  beforeAll(async () => {
    const at = (file: string) => path.join(folder, file);
    const openssl = (...words: string[]) => execFileSync("openssl", words, { cwd: folder, stdio: "pipe" });
    authority = at("ca.crt");
    openssl(
      "req",
      "-x509",
      "-newkey",
      "rsa:2048",
      "-nodes",
      "-days",
      "2",
      "-subj",
      "/CN=Test authority",
      "-keyout",
      "ca.key",
      "-out",
      "ca.crt",
    );
    openssl("req", "-newkey", "rsa:2048", "-nodes", "-subj", `/CN=${name}`, "-keyout", "site.key", "-out", "site.csr");
    fs.writeFileSync(at("names"), `subjectAltName=DNS:${name}\n`);
    openssl(
      "x509",
      "-req",
      "-in",
      "site.csr",
      "-CA",
      "ca.crt",
      "-CAkey",
      "ca.key",
      "-CAcreateserial",
      "-days",
      "2",
      "-extfile",
      "names",
      "-out",
      "site.crt",
    );
    // The location block is the one that the page of steps gives.
    const steps = text("READ-ME-FIRST.html");
    const location = /<pre>(location [^]*?)<\/pre>/
      .exec(steps)![1]!
      .replace(/&quot;/g, '"')
      .replace("/srv/oxygen/site/", `${kit("site")}/`);
    const temporary = ["client_body", "proxy", "fastcgi", "uwsgi", "scgi"].map(
      (each) => `${each}_temp_path ${at(each)};`,
    );
    fs.writeFileSync(
      at("nginx.conf"),
      `daemon off; pid ${at("nginx.pid")}; error_log ${at("error.log")}; ${process.getuid?.() === 0 ? "user root;" : ""}
       events {}
       http { access_log off; ${temporary.join(" ")}
         server { listen 127.0.0.1:${port} ssl; server_name ${name};
           ssl_certificate ${at("site.crt")}; ssl_certificate_key ${at("site.key")};
           ${location} } }`,
    );
    nginx = spawn("nginx", ["-p", folder, "-c", at("nginx.conf")], { stdio: "ignore" });
    for (let tries = 0; tries < 100; tries++) {
      const up = await new Promise<boolean>((resolve) => {
        const socket = net
          .connect(port, "127.0.0.1", () => (socket.destroy(), resolve(true)))
          .on("error", () => resolve(false));
      });
      if (up) break;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    const leaf = new X509Certificate(fs.readFileSync(at("site.crt")));
    const key = createHash("sha256")
      .update(leaf.publicKey.export({ type: "spki", format: "der" }))
      .digest("base64");
    browser = await chromium.launch({
      executablePath: findBrowser()!,
      args: [
        "--no-sandbox",
        "--disable-background-networking",
        `--ignore-certificate-errors-spki-list=${key}`,
        `--host-resolver-rules=MAP ${name} 127.0.0.1, MAP * ~NOTFOUND`,
      ],
    });
  }, 120_000);

  afterAll(async () => {
    await browser?.close();
    nginx?.kill();
  });

  it("shows its authority's certificate for its name, and the types that Excel wants", async () => {
    const head = (file: string) =>
      new Promise<Record<string, unknown>>((resolve, reject) => {
        const options = {
          host: "127.0.0.1",
          port,
          servername: name,
          headers: { host: name },
          path: `/oxygen/${file}`,
          ca: fs.readFileSync(authority),
        };
        https
          .get(options, (answer) => {
            answer.resume();
            resolve({ status: answer.statusCode, ...answer.headers });
          })
          .on("error", reject);
      });
    for (const [file, type] of [
      ["functions.js", "javascript"],
      ["functions.json", "json"],
      ["pane.html", "html"],
      ["manifest.xml", "xml"],
    ])
      expect(await head(file!)).toMatchObject({
        status: 200,
        "content-type": expect.stringContaining(type!),
        "access-control-allow-origin": "*",
      });
  });

  it.each(["functions", "functions-perpetual"])(
    "answers every function from %s.html in Microsoft's runtime",
    async (page) => {
      const runtime = await open(`${page}.html`, `(${installHostBridge.toString()})()`);
      const found = readCatalogue();
      const byId = new Map(found.map((each) => [each.record.id, each.call]));
      const asked = found
        .filter(({ record }) => !record.examples[0]!.localOnly)
        .map(({ record }) => {
          const cells = argumentCells(firstExample(record), (id) => byId.get(id));
          return {
            id: record.id,
            example: record.examples[0]!,
            given: record.arguments.map((_, at) => cells[at] ?? null),
          };
        });
      const answers = await runtime.evaluate(
        (calls) =>
          Promise.all(
            calls.map(({ id, given }) =>
              (window as unknown as { _richApiNativeBridge: HostBridge })._richApiNativeBridge.call(id, given, 0),
            ),
          ),
        asked.map(({ id, given }) => ({ id, given })),
      );
      expect(asked.length).toBeGreaterThan(175);
      expect(
        asked.flatMap(({ example }, index) => {
          const answer = answers[index]!;
          return answer.ok ? (exampleDifference(example, answer.value as never) ?? []) : [answer.message];
        }),
      ).toEqual([]);
      await runtime.close();
    },
    60_000,
  );

  it("shows the pane, the help page and the local sheet, which calculates a sample", async () => {
    const pane = await open("pane.html");
    await pane.waitForSelector("[role=option]");
    const help = await open("help.html#HOURS_TO_FILL");
    expect(await help.locator('article[id="HOURS_TO_FILL"]').isVisible()).toBe(true);
    const sheet = await open("sheet.html?open=this-excel.xlsx");
    await sheet.waitForSelector('#grid[aria-busy="false"]', { timeout: 60_000 });
    await sheet.getByRole("tab", { name: "This Excel" }).waitFor();
  }, 90_000);

  it("asked nothing of any other host", () => {
    // Microsoft's runtime tries to frame its usage statistics; the page's policy refuses that before anything is sent.
    expect(foreign.filter((url) => !url.startsWith("https://telemetryservice.firstpartyapps.oaspapps.com/"))).toEqual(
      [],
    );
  });
});
