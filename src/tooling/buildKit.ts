/**
 * `npm run kit -- --host https://tools.example.internal/oxygen/`: one .zip for a network without internet. It holds a site
 * for any static web server (both builds, Microsoft's library, the pane, the help page, the local sheet), the manifests,
 * what Windows and Mac need to find them, the samples with their values-only copies, licences, a bill of materials and
 * checksums, and a page of steps. `--share \\files\addins` is the folder of the manifests that Windows is told of.
 */
import { createHash } from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { strToU8, zipSync, type Zippable } from "fflate";
import { host as developmentHost } from "../catalogue/developmentHost.json";
import { withoutFormulas } from "../engine/file/writeWorkbook";
import { buildIfNeeded, distFolder, projectFolder } from "./build";
import { kitSteps } from "./kitSteps";

export class KitMisuse extends Error {}

export interface KitOptions {
  /** Where the site will stand: https, with a path if it has one. */
  host: string;
  /** The shared folder of the manifests, as Windows names it. */
  share: string;
}

const wantedHost = (host: string): string => {
  let address: URL;
  try {
    address = new URL(host);
  } catch {
    throw new KitMisuse(`--host wants an address such as https://tools.example.internal/oxygen/, not "${host}".`);
  }
  if (address.protocol !== "https:")
    throw new KitMisuse("--host must begin with https://, which Excel asks of add-ins.");
  if (address.search || address.hash) throw new KitMisuse("--host is an address without ? and #.");
  return address.href.replace(/\/+$/, "");
};

/** Files that name the host they are served from. */
const namesHost = /^(?:functions(?:-perpetual)?\.json|manifest(?:-perpetual)?\.xml|manifest\.json)$/;

const withHost = (text: string, host: string): string =>
  text
    .split(developmentHost)
    .join(host)
    // Domains that an add-in may show stand without protocol and path.
    .split(`"${new URL(developmentHost).host}"`)
    .join(`"${new URL(host).host}"`);

const filesBelow = (folder: string, inside = ""): string[] =>
  fs
    .readdirSync(path.join(folder, inside), { withFileTypes: true })
    .flatMap((entry) =>
      entry.isDirectory() ? filesBelow(folder, `${inside}${entry.name}/`) : [`${inside}${entry.name}`],
    )
    .sort();

interface Component {
  name: string;
  version: string;
  licence: string;
}

const purl = ({ name, version }: Component): string => `pkg:npm/${name.replace(/^@/, "%40")}@${version}`;

/** CycloneDX 1.5, without a date and with a serial number made from its content, so that one build gives one file. */
function billOfMaterials(components: readonly Component[], version: string): string {
  const bill = {
    bomFormat: "CycloneDX",
    specVersion: "1.5",
    version: 1,
    metadata: {
      component: {
        type: "application",
        name: "oxygen-supply-functions",
        version,
        licenses: [{ license: { id: "MIT" } }],
      },
    },
    components: components.map((each) => ({
      type: "library",
      "bom-ref": purl(each),
      name: each.name,
      version: each.version,
      purl: purl(each),
      licenses: /^[\w.-]+$/.test(each.licence)
        ? [{ license: /^[A-Z]/.test(each.licence) ? { id: each.licence } : { name: each.licence } }]
        : each.licence.includes(" AND ")
          ? [{ expression: each.licence }]
          : [{ license: { name: each.licence } }],
    })),
  };
  const hash = createHash("sha256").update(JSON.stringify(bill)).digest("hex");
  const serial = `${hash.slice(0, 8)}-${hash.slice(8, 12)}-5${hash.slice(13, 16)}-a${hash.slice(17, 20)}-${hash.slice(20, 32)}`;
  return `${JSON.stringify({ ...bill, serialNumber: `urn:uuid:${serial}` }, null, 2)}\n`;
}

const componentsOf = (dist: string): Component[] => {
  const lists = fs.readdirSync(dist).filter((file) => file.endsWith(".packages.json"));
  const read = lists.flatMap((file) => JSON.parse(fs.readFileSync(path.join(dist, file), "utf8")) as Component[]);
  const { dependencies } = JSON.parse(fs.readFileSync(path.join(projectFolder, "package.json"), "utf8")) as {
    dependencies: Record<string, string>;
  };
  read.push({
    name: "@microsoft/office-js",
    version: dependencies["@microsoft/office-js"]!,
    licence: "Microsoft's own terms (site/office/LICENSE.md)",
  });
  const byPurl = new Map(read.map((each) => [purl(each), each]));
  return [...byPurl.keys()].sort().map((key) => byPurl.get(key)!);
};

/** What tells Windows of a shared folder with manifests; for this user alone. */
const trustedCatalogue = (share: string): string => {
  const id = "{6f1c2b0e-3d57-4a86-9b1f-2c7e5d908a41}";
  return [
    "Windows Registry Editor Version 5.00",
    "",
    `[HKEY_CURRENT_USER\\Software\\Microsoft\\Office\\16.0\\WEF\\TrustedCatalogs\\${id}]`,
    `"Id"="${id}"`,
    `"Url"="${share.replace(/\\/g, "\\\\")}"`,
    '"Flags"=dword:00000001',
    "",
  ].join("\r\n");
};

const macNote = `Copy the manifest for your Excel (manifest.xml for Microsoft 365, manifest-perpetual.xml for Excel 2021 or 2024)
into this folder of each user, making it where it is missing:

  ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef

Restart Excel; Home > Add-ins (or Insert > My Add-ins, the small arrow) > Oxygen Supply Functions.
To remove it, take the file out again and restart Excel. This way is Microsoft's for trials.
`;

/** The kit's files by their paths in the .zip. */
export function kitFiles({ host: asked, share }: KitOptions, dist = distFolder): Map<string, Uint8Array> {
  const host = wantedHost(asked);
  const files = new Map<string, Uint8Array>();
  for (const file of filesBelow(dist)) {
    if (file.endsWith(".licences.txt")) files.set(`licences/${file}`, fs.readFileSync(path.join(dist, file)));
    else if (!file.endsWith(".packages.json")) {
      const bytes = new Uint8Array(fs.readFileSync(path.join(dist, file)));
      files.set(
        `site/${file}`,
        namesHost.test(file) ? strToU8(withHost(new TextDecoder().decode(bytes), host)) : bytes,
      );
    }
  }
  for (const manifest of ["manifest.xml", "manifest-perpetual.xml", "manifest.json"])
    files.set(`manifests/${manifest}`, files.get(`site/${manifest}`)!);
  files.set("windows/trusted-catalogue.reg", strToU8(trustedCatalogue(share)));
  files.set("mac/READ-ME.txt", strToU8(macNote));
  for (const [file, bytes] of [...files].filter(([name]) => /^site\/samples\/.*\.xlsx$/.test(name))) {
    const name = path.basename(file);
    files.set(`samples/${name}`, bytes);
    files.set(`samples/values-only/${name}`, withoutFormulas(bytes));
  }
  for (const page of ["help.html", "help.css", "palette.css", "help.js", "icons/icon-32.png"])
    files.set(`help/${page}`, files.get(`site/${page}`)!);
  files.set("licences/LICENSE.txt", fs.readFileSync(path.join(projectFolder, "LICENSE")));
  files.set("licences/office-LICENSE.md", files.get("site/office/LICENSE.md")!);
  const { version } = JSON.parse(fs.readFileSync(path.join(projectFolder, "package.json"), "utf8")) as {
    version: string;
  };
  files.set("bill-of-materials.cdx.json", strToU8(billOfMaterials(componentsOf(dist), version)));
  files.set("READ-ME-FIRST.html", strToU8(kitSteps({ host, share, version })));
  const sums = [...files]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([name, bytes]) => `${createHash("sha256").update(bytes).digest("hex")}  ${name}\n`);
  files.set("SHA256SUMS", strToU8(sums.join("")));
  return files;
}

export async function buildKit(options: KitOptions, out: string): Promise<number> {
  wantedHost(options.host);
  await buildIfNeeded(() => console.log("Building; this takes a minute or so."));
  const files = kitFiles(options);
  const zip: Zippable = Object.fromEntries(
    [...files].map(([name, bytes]) => [`oxygen-kit/${name}`, [bytes, { mtime: "1980-01-01T00:00:00" }]]),
  );
  const beside = `${out}.${process.pid}`;
  fs.mkdirSync(path.dirname(path.resolve(out)), { recursive: true });
  fs.writeFileSync(beside, zipSync(zip, { level: 6 }));
  fs.renameSync(beside, out);
  return files.size;
}

const usage =
  "npm run kit -- --host https://tools.example.internal/oxygen/ [--share \\\\files\\addins] [--out build/oxygen-kit.zip]";

const main = async (): Promise<void> => {
  const { values } = parseArgs({
    options: {
      host: { type: "string" },
      share: { type: "string", default: "\\\\SERVER\\SHARE" },
      out: { type: "string", default: path.join("build", "oxygen-kit.zip") },
    },
  });
  if (!values.host) throw new KitMisuse(`--host is missing.\n${usage}`);
  const count = await buildKit({ host: values.host, share: values.share }, values.out);
  const size = (fs.statSync(values.out).size / 1e6).toFixed(1);
  console.log(`${values.out}: ${count} files, ${size} MB. Unpack it and open READ-ME-FIRST.html.`);
};

if (require.main === module) {
  main().catch((fault: Error) => {
    console.error(fault.message);
    process.exitCode = fault instanceof KitMisuse ? 2 : 1;
  });
}
