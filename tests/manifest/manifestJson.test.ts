import { host as developmentHost } from "../../src/catalogue/developmentHost.json";
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { AppManifestUtils, type TeamsManifest } from "@microsoft/app-manifest";
import { builtFiles, buildTimeout } from "../builtFiles";
import { allElements, childAt, readXml } from "./readXml";

// A package of Microsoft's validator is of a kind Jest can't load; our file has no byte-order mark to strip.
jest.mock("strip-bom", () => ({ __esModule: true, default: (content: string) => content }));

const folder = path.resolve(__dirname, "..", "..", "manifest");
const text = readFileSync(path.join(folder, "manifest.json"), "utf8");
const manifest = JSON.parse(text);
const xml = readXml(readFileSync(path.join(folder, "manifest.xml"), "utf8"));
const host = `${developmentHost}/`;

interface FunctionsJson {
  functions: { id: string; helpUrl: string; options: unknown; description: string; parameters: object[] }[];
  [flag: string]: unknown;
}
const readFunctionsJson = (name = "functions"): FunctionsJson => {
  const generated = path.join(folder, "..", "src", "catalogue", "generated", `${name}.json`);
  return JSON.parse(readFileSync(generated, "utf8")) as FunctionsJson;
};

it("tells Excel of data types in the build for Microsoft 365 alone, and of nothing that crashes an older one", () => {
  const { functions, ...flags } = readFunctionsJson();
  expect(flags).toEqual({ allowCustomDataForDataTypeAny: true });
  const { functions: perpetual, ...none } = readFunctionsJson("functions-perpetual");
  expect(none).toEqual({});
  expect(perpetual).toEqual(functions);
  expect(JSON.stringify(functions)).not.toContain("customEnumId");
});

// Desktop Excel loads no function at all from a file above 1 MB: OfficeDev/office-js 4808, Excel-Custom-Functions 422.
it.each(["functions", "functions-perpetual"])("keeps %s.json well below 1 MB", (name) => {
  const bytes = Buffer.byteLength(JSON.stringify(readFunctionsJson(name), null, 1));
  expect(bytes).toBeGreaterThan(100_000);
  expect(bytes).toBeLessThan(800_000);
});

const validate = (changed: unknown): Promise<string[]> =>
  AppManifestUtils.validateAgainstSchema(changed as TeamsManifest);

describe("against Microsoft's schema (@microsoft/app-manifest)", () => {
  const network = jest.spyOn(globalThis, "fetch").mockRejectedValue(new Error("no network in this test"));
  afterAll(() => network.mockRestore());

  it("is valid, without asking the network", async () => {
    expect(await validate(manifest)).toEqual([]);
    expect(network).not.toHaveBeenCalled();
  });

  it("is valid with all functions written into it, whose descriptions it takes whole", async () => {
    const whole = structuredClone(manifest);
    const { customFunctions } = whole.extensions[0].runtimes[0];
    delete customFunctions.metadataUrl;
    const { functions } = readFunctionsJson();
    customFunctions.functions = functions.map(({ helpUrl: _helpUrl, options: _options, ...each }) => each);
    expect(functions.length).toBeGreaterThan(180);
    expect(await validate(whole)).toEqual([]);
    const longer = structuredClone(whole);
    longer.extensions[0].runtimes[0].customFunctions.functions[0].description = "x".repeat(2000);
    expect(await validate(longer)).not.toEqual([]);
  });

  it("would not be with a namespace that begins with a digit, or functions in the wrong place", async () => {
    const wrong = structuredClone(manifest);
    wrong.extensions[0].runtimes[0].customFunctions.namespace.id = "2OXYGEN";
    expect(await validate(wrong)).not.toEqual([]);
    const misplaced = structuredClone(manifest);
    misplaced.extensions[0].customFunctions = misplaced.extensions[0].runtimes[0].customFunctions;
    expect(await validate(misplaced)).not.toEqual([]);
  });
});

/** What Microsoft's tool reads in a manifest, in a process of its own since Jest can't load all of its packages. */
const readByTool = (name: string): Record<string, unknown> => {
  const script = `require("office-addin-manifest").OfficeAddinManifest.readManifestFile(${JSON.stringify(path.resolve(folder, name))})
    .then(({ id, version, displayName, officeAppType }) => console.log(JSON.stringify({ id, version, displayName, officeAppType })))`;
  const { stdout, stderr } = spawnSync(process.execPath, [require.resolve("tsx/cli"), "-e", script], {
    cwd: __dirname,
    encoding: "utf8",
  });
  if (!stdout.trim()) throw new Error(`office-addin-manifest could not read ${name}: ${stderr}`);
  return JSON.parse(stdout);
};

it("is read by Microsoft's tool (office-addin-manifest) as the same add-in as the XML manifest", () => {
  const fromXml = readByTool("manifest.xml");
  expect(fromXml).toMatchObject({ displayName: "Oxygen Supply Functions", officeAppType: "TaskPaneApp" });
  expect(readByTool("manifest.json")).toMatchObject({
    id: fromXml.id,
    version: String(fromXml.version).replace(/\.0$/, ""),
  });
}, 30_000);

it(
  "reads the built manifest for perpetual Excel as another add-in of the same version",
  () => {
    const [one, other] = ["manifest.xml", path.join(builtFiles(), "manifest-perpetual.xml")].map(readByTool);
    expect(other).toMatchObject({ officeAppType: "TaskPaneApp", version: one!.version });
    expect(other!.id).not.toBe(one!.id);
    expect(other!.displayName).not.toBe(one!.displayName);
  },
  buildTimeout,
);

it("says the same as the XML manifest", () => {
  expect(manifest.id).toBe(childAt(xml, "Id").text);
  expect(`${manifest.version}.0`).toBe(childAt(xml, "Version").text);
  const ofXml = allElements(childAt(xml, "VersionOverrides", "Resources")).map(
    (element) => element.attributes.DefaultValue,
  );
  const [functions, pane] = manifest.extensions[0].runtimes;
  for (const value of [
    functions.code.script,
    functions.code.page,
    functions.customFunctions.metadataUrl,
    functions.customFunctions.namespace.id,
    pane.code.page,
  ]) {
    expect(ofXml).toContain(value);
  }
});

it(
  "names only files and addresses that exist",
  () => {
    const dist = builtFiles();
    const addresses = [...text.matchAll(/"(https:\/\/localhost[^"]*)"/g)].map(([, address]) => address as string);
    const files = [
      manifest.icons.color,
      manifest.icons.outline,
      ...addresses.map((address) => address.slice(host.length)),
    ];
    expect(files.filter((file) => !existsSync(path.join(dist, file)))).toEqual([]);
  },
  buildTimeout,
);
