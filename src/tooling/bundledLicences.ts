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

export interface BundledPackage {
  name: string;
  version: string;
  licence: string;
  text: string;
}

/** The open licences' own words (opensource.org), for packages that name the licence and bring no text of it. */
const standardTexts: Readonly<Record<string, (holder: string) => string>> = {
  MIT: (holder) => `MIT License

Copyright (c) ${holder}

Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation files (the "Software"), to deal in the Software without restriction, including without limitation the rights to use, copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit persons to whom the Software is furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`,
  ISC: (holder) => `ISC License

Copyright (c) ${holder}

Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted, provided that the above copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT, INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.`,
  // The licence is the same for every holder, so another package's copy of it does.
  "Apache-2.0": () =>
    readFileSync(path.join(packageFolder(require.resolve("@univerjs/core"))!, "LICENSE"), "utf8").trim(),
};

const readPackage = (folder: string): BundledPackage => {
  const { name, version, license, author } = JSON.parse(readFileSync(path.join(folder, "package.json"), "utf8")) as {
    name: string;
    version: string;
    license?: string;
    author?: string | { name: string };
  };
  const text = readdirSync(folder)
    .filter((entry) => /^(?:licen[cs]e|copying|notice)(?:[.-]|$)/i.test(entry))
    .map((entry) => readFileSync(path.join(folder, entry), "utf8").trim())
    .join("\n\n");
  const told = /^\s*Apache License\s+Version 2\.0/.test(text) ? "Apache-2.0" : "unknown";
  const licence = license ?? told;
  const holder =
    (typeof author === "string" ? author.replace(/\s*<.*$/, "") : author?.name) || `the authors of ${name}`;
  return { name, version, licence, text: text || (standardTexts[licence]?.(holder) ?? "") };
};

/** The packages by name, each text once. */
const licenceList = (packages: readonly BundledPackage[]): string => {
  const namesByText = new Map<string, string[]>();
  for (const { name, version, licence, text } of packages) {
    if (text === "") throw new Error(`${name} brings no text of its licence, ${licence}`);
    namesByText.set(text, [...(namesByText.get(text) ?? []), `${name} ${version} (${licence})`]);
  }
  return [...namesByText].map(([text, names]) => `${names.join("\n")}\n\n${text}\n`).join(`\n${"-".repeat(72)}\n\n`);
};

const filesOf = (module: Module & { resource?: string; modules?: Module[] }): string[] => [
  ...(module.resource ? [module.resource] : []),
  ...(module.modules ?? []).flatMap(filesOf),
];

/** Writes <bundle>.licences.txt and <bundle>.packages.json, and fails the build when a package's licence is not known to be permissive. */
export class BundledLicences {
  apply(compiler: Compiler): void {
    compiler.hooks.thisCompilation.tap("BundledLicences", (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tap({ name: "BundledLicences", stage }, () => {
        const folders = [...compilation.modules].flatMap(filesOf).flatMap((file) => packageFolder(file) ?? []);
        const packages = [...new Set(folders)]
          .map(readPackage)
          .sort((one, other) => (`${one.name} ${one.version}` < `${other.name} ${other.version}` ? -1 : 1));
        for (const { name, licence } of packages.filter((each) => !isPermissive(each.licence)))
          compilation.errors.push(new Error(`${name} is under ${licence}, which is not known to be permissive`));
        const asset = (ending: string, text: string): void =>
          compilation.emitAsset(`${compiler.options.name}.${ending}`, new sources.RawSource(text));
        asset("licences.txt", licenceList(packages));
        const list = packages.map(({ name, version, licence }) => ({ name, version, licence }));
        asset("packages.json", `${JSON.stringify(list, null, 1)}\n`);
      });
    });
  }
}
