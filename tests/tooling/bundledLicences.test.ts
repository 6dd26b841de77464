import { readFileSync } from "node:fs";
import path from "node:path";
import { projectFolder } from "../../src/tooling/build";
import { isPermissive, packageFolder } from "../../src/tooling/bundledLicences";
import { buildTimeout, builtFiles } from "../builtFiles";

/** What each script imports by name, as its own source files say. */
const imported: [bundle: string, packages: string[]][] = [
  ["functions", ["zod", "yalps"]],
  ["sheet", ["@univerjs/core", "@univerjs/ui", "react", "react-dom", "rxjs", "fflate"]],
];

/** Words of the MIT licence and of the Apache License 2.0, as the Open Source Initiative has them. */
const mit = "Permission is hereby granted, free of charge, to any person obtaining a copy";
const apache = "TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION";

test.each(imported)(
  "%s comes with the licences of what it holds",
  (bundle, packages) => {
    const words = readFileSync(path.join(builtFiles(), `${bundle}.licences.txt`), "utf8");
    for (const name of packages) {
      const file = path.join(projectFolder, "node_modules", name, "package.json");
      const { version } = JSON.parse(readFileSync(file, "utf8")) as { version: string };
      expect(words).toContain(`${name} ${version} (`);
    }
    expect(words).toContain(mit);
    // Univer's packages are under it.
    if (bundle === "sheet") expect(words).toContain(apache);
  },
  buildTimeout,
);

test.each([
  ["MIT", true],
  ["Apache-2.0 AND BSL-1.0", true],
  ["GPL-3.0-only", false],
  ["MIT AND GPL-2.0", false],
  ["unknown", false],
])("the licence %s is permissive: %s", (licence, expected) => {
  expect(isPermissive(licence)).toBe(expected);
});

test("the innermost package holds a file", () => {
  expect(packageFolder("/a/node_modules/b/node_modules/@c/d/lib/e.js")).toBe("/a/node_modules/b/node_modules/@c/d");
  expect(packageFolder("/a/src/b.js")).toBeUndefined();
});
