import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import { Compilation, sources, type Compiler, type Module } from "webpack";

/** SPDX ids of the licences a bundled package may carry. */
const permissive = new Set(["MIT", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "BSL-1.0"]);

/** Of licences joined by AND, each must be permissive. */
export const isPermissive = (licence: string): boolean => licence.split(" AND ").every((id) => permissive.has(id));

/** The folder of the package a file belongs to; undefined for our own files. */
export const packageFolder = (file: string): string | undefined =>
  /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/.exec(file)?.[0];

interface BundledPackage {
  /** With its version: "zod 4.6.7". */
  name: string;
  licence: string;
  text: string;
}

const readPackage = (folder: string): BundledPackage => {
  const { name, version, license } = JSON.parse(readFileSync(path.join(folder, "package.json"), "utf8")) as {
    name: string;
    version: string;
    license?: string;
  };
  const text = readdirSync(folder)
    .filter((entry) => /^(?:licen[cs]e|copying|notice)(?:[.-]|$)/i.test(entry))
    .map((entry) => readFileSync(path.join(folder, entry), "utf8").trim())
    .join("\n\n");
  const told = /^\s*Apache License\s+Version 2\.0/.test(text) ? "Apache-2.0" : "unknown";
  return { name: `${name} ${version}`, licence: license ?? told, text };
};

/** The packages by name, each text once. */
const licenceList = (packages: readonly BundledPackage[]): string => {
  const namesByText = new Map<string, string[]>();
  for (const { name, licence, text } of [...packages].sort((one, other) => (one.name < other.name ? -1 : 1))) {
    const words = text || `Licence: ${licence}. The package brings no text of it.`;
    namesByText.set(words, [...(namesByText.get(words) ?? []), `${name} (${licence})`]);
  }
  return [...namesByText].map(([text, names]) => `${names.join("\n")}\n\n${text}\n`).join(`\n${"-".repeat(72)}\n\n`);
};

const filesOf = (module: Module & { resource?: string; modules?: Module[] }): string[] => [
  ...(module.resource ? [module.resource] : []),
  ...(module.modules ?? []).flatMap(filesOf),
];

/** Writes <bundle>.licences.txt, and fails the build when a package's licence is not known to be permissive. */
export class BundledLicences {
  apply(compiler: Compiler): void {
    compiler.hooks.thisCompilation.tap("BundledLicences", (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tap({ name: "BundledLicences", stage }, () => {
        const folders = [...compilation.modules].flatMap(filesOf).flatMap((file) => packageFolder(file) ?? []);
        const packages = [...new Set(folders)].map(readPackage);
        for (const { name, licence } of packages.filter((each) => !isPermissive(each.licence)))
          compilation.errors.push(new Error(`${name} is under ${licence}, which is not known to be permissive`));
        compilation.emitAsset(`${compiler.options.name}.licences.txt`, new sources.RawSource(licenceList(packages)));
      });
    });
  }
}
