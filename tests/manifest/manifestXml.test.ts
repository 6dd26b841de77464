import { host as developmentHost } from "../../src/catalogue/developmentHost.json";
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { builtFiles, buildTimeout } from "../builtFiles";
import { perpetualManifest } from "../../src/tooling/perpetualManifest";
import { allElements, childAt, readXml, type XmlElement } from "./readXml";

const file = path.resolve(__dirname, "..", "..", "manifest", "manifest.xml");
const text = readFileSync(file, "utf8");

const host = `${developmentHost}/`;

/**
 * The order of children that Microsoft's schemas ask for, of the elements used here: "Office Add-in manifest XML schema"
 * (TaskPaneAppVersionOverridesV1_0.xsd, OfficeAppManifestV1.1.xsd) and the pages "How to find the proper order of
 * manifest elements" and "Icon", "Control (Button)", "ExtensionPoint" of the Office Add-ins reference.
 */
const order: Record<string, string[]> = {
  OfficeApp: [
    "Id",
    "AlternateId",
    "Version",
    "ProviderName",
    "DefaultLocale",
    "DisplayName",
    "Description",
    "IconUrl",
    "HighResolutionIconUrl",
    "SupportUrl",
    "AppDomains",
    "Hosts",
    "Requirements",
    "DefaultSettings",
    "Permissions",
    "VersionOverrides",
  ],
  VersionOverrides: ["Description", "Requirements", "Hosts", "Resources", "WebApplicationInfo"],
  AllFormFactors: ["ExtensionPoint"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
  GetStarted: ["Title", "Description", "LearnMoreUrl"],
  Group: ["Label", "Icon", "Control"],
  Control: ["Label", "Supertip", "Icon", "Action"],
  Supertip: ["Title", "Description"],
  Action: ["TaskpaneId", "SourceLocation"],
  Resources: ["bt:Images", "bt:Urls", "bt:ShortStrings", "bt:LongStrings"],
};

describe.each([
  ["Microsoft 365", text],
  ["perpetual Excel", perpetualManifest(text)],
])("the manifest for %s", (program, source) => {
  const manifest = readXml(source);
  const everything = allElements(manifest);
  const named = (name: string): XmlElement[] => everything.filter((element) => element.name === name);

  it.each(Object.entries(order))("%s has its children in the schema's order", (name, wanted) => {
    const found = named(name);
    expect(found.length).toBeGreaterThan(0);
    for (const element of found) {
      const places = element.children.map((child) => wanted.indexOf(child.name));
      expect(places).not.toContain(-1);
      expect(places).toEqual([...places].sort((one, other) => one - other));
    }
  });

  it("has the parts every add-in needs", () => {
    for (const name of [
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
      "DefaultSettings",
      "Permissions",
    ]) {
      expect(manifest.children.filter((child) => child.name === name)).toHaveLength(1);
    }
    expect(manifest.attributes["xsi:type"]).toBe("TaskPaneApp");
    expect(childAt(manifest, "Hosts", "Host").attributes.Name).toBe("Workbook");
  });

  it("has a GUID and a version of four numbers", () => {
    expect(childAt(manifest, "Id").text).toMatch(
      /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
    );
    expect(childAt(manifest, "Version").text).toMatch(/^\d+(\.\d+){3}$/);
  });

  it("gives the functions a runtime of their own, with script, page, metadata and namespace in that order", () => {
    const point = childAt(manifest, "VersionOverrides", "Hosts", "Host", "AllFormFactors", "ExtensionPoint");
    expect(point.attributes["xsi:type"]).toBe("CustomFunctions");
    expect(point.children.map((child) => child.name)).toEqual(["Script", "Page", "Metadata", "Namespace"]);
    expect(named("Runtimes")).toEqual([]);
  });

  describe("resources", () => {
    const resources = allElements(childAt(manifest, "VersionOverrides", "Resources")).filter(
      (element) => element.attributes.id,
    );
    const used = everything.flatMap((element) => element.attributes.resid ?? []);

    it("are each named once, with at most 32 characters", () => {
      const ids = resources.map((element) => element.attributes.id as string);
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids.filter((id) => id.length > 32)).toEqual([]);
    });

    it("exist for every resid, and are all used", () => {
      expect([...new Set(used)].sort()).toEqual(resources.map((element) => element.attributes.id).sort());
    });

    it("are of the kind their user wants", () => {
      const kindOf = (resid: string | undefined) => resources.find((element) => element.attributes.id === resid)?.name;
      const wanted = (element: XmlElement): string => {
        if (element.name === "bt:Image") return "bt:Image";
        return ["SourceLocation", "FunctionFile", "LearnMoreUrl"].includes(element.name) ? "bt:Url" : "bt:String";
      };
      const users = everything.filter((element) => element.attributes.resid);
      expect(
        users.filter((element) => kindOf(element.attributes.resid) !== wanted(element)).map((element) => element.name),
      ).toEqual([]);
    });

    it("keep the lengths of short (125) and long (250) strings", () => {
      const tooLong = (list: string, most: number) =>
        childAt(manifest, "VersionOverrides", "Resources", list).children.filter(
          (one) => (one.attributes.DefaultValue ?? "").length > most,
        );
      expect([...tooLong("bt:ShortStrings", 125), ...tooLong("bt:LongStrings", 250)]).toEqual([]);
    });

    it("name the namespace OXYGEN, within its 32 characters", () => {
      const resid = childAt(
        manifest,
        "VersionOverrides",
        "Hosts",
        "Host",
        "AllFormFactors",
        "ExtensionPoint",
        "Namespace",
      ).attributes.resid;
      expect(resources.find((element) => element.attributes.id === resid)?.attributes.DefaultValue).toBe("OXYGEN");
    });
  });

  it("gives each icon its 16, 32 and 80 pixel pictures", () => {
    for (const icon of named("Icon")) {
      const sizes = icon.children.map((image) => image.attributes.size);
      expect(sizes).toEqual(expect.arrayContaining(["16", "32", "80"]));
    }
    expect(named("Icon")).toHaveLength(2);
  });

  it(
    "names only addresses that exist on its own host",
    () => {
      const dist = builtFiles();
      const addresses = everything
        .flatMap((element) => element.attributes.DefaultValue ?? [])
        .filter((value) => /^[a-z]+:\/\//.test(value));
      expect(addresses.length).toBeGreaterThan(8);
      for (const address of addresses) {
        expect(address.startsWith(host)).toBe(true);
        expect([address, existsSync(path.join(dist, address.slice(host.length)))]).toEqual([address, true]);
      }
    },
    buildTimeout,
  );

  it("asks for what its build needs and no more, and for no other domain", () => {
    const [set] = named("Set");
    // Microsoft, Custom functions requirement sets: data types from 1.4, which perpetual Excel lacks; CustomFunctions.Error from 1.2.
    expect(set!.attributes).toEqual({
      Name: "CustomFunctionsRuntime",
      MinVersion: program === "Microsoft 365" ? "1.4" : "1.2",
    });
    expect(named("AppDomain")).toEqual([]);
  });
});

it("has an id and a name of its own for each build, and the same version and namespace", () => {
  const both = [text, perpetualManifest(text)].map(readXml);
  const of = (name: string) => both.map((each) => childAt(each, name));
  const [one, other] = of("Id").map((each) => each.text);
  expect(one).not.toBe(other);
  const names = of("DisplayName").map((each) => each.attributes.DefaultValue);
  expect(new Set(names).size).toBe(2);
  expect(new Set(of("Version").map((each) => each.text)).size).toBe(1);
  const namespaces = both.map(
    (each) =>
      allElements(each).find(({ attributes }) => attributes.id === "Functions.Namespace")?.attributes.DefaultValue,
  );
  expect(namespaces).toEqual(["OXYGEN", "OXYGEN"]);
});

it("is not made from a manifest in which a place is missing", () => {
  expect(() => perpetualManifest(text.replace("<Id>", "<ID>"))).toThrow("Id");
});
