/**
 * `npm run rename -- OLD_NAME NEW_NAME`: renames a function everywhere: its file, its export, its test, the calls in other
 * functions' examples, tests and sample builders, related functions, search words, README and DEVELOPERS.md.
 */
import fs from "node:fs";
import path from "node:path";

const camelOf = (id: string): string =>
  id.toLowerCase().replace(/_([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());

const isText = (file: string): boolean => /\.(?:ts|tsx|md|json|js|cjs|mjs|html|css)$/.test(file);

function textFiles(folder: string): string[] {
  return fs.readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const full = path.join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === "generated" ? [] : textFiles(full);
    return isText(entry.name) ? [full] : [];
  });
}

/** Renames a function below `root` and gives the paths that changed; refuses names that can't be. */
export function renameFunction(root: string, oldId: string, newId: string): string[] {
  if (!/^[A-Z][A-Z0-9_]{2,63}$/.test(newId) || /^[A-Z]{1,3}\d{1,7}$/.test(newId))
    throw new Error(`"${newId}" is not 3 to 64 of A–Z, 0–9 and _, or looks like a cell address`);
  const [oldName, newName] = [camelOf(oldId), camelOf(newId)];
  const functionsFolder = path.join(root, "src", "functions");
  const groups = fs.readdirSync(functionsFolder);
  const fileOf = (name: string): string | undefined =>
    groups.map((group) => path.join(functionsFolder, group, `${name}.ts`)).find((file) => fs.existsSync(file));
  const file = fileOf(oldName);
  if (!file) throw new Error(`there is no function ${oldId}`);
  if (fileOf(newName)) throw new Error(`there is a function ${newId} already`);

  const id = new RegExp(`(?<![A-Z0-9_])${oldId}(?![A-Z0-9_])`, "g");
  /** Not "hoursToFill as fillTime", which is a model's name. */
  const called = new RegExp(`\\b${oldName}\\b(?! as )`, "g");
  const importsIt = new RegExp(`from "[^"]*functions/\\w+/${oldName}"`);
  const changed: string[] = [];
  const files = [...["src", "tests"].flatMap((folder) => textFiles(path.join(root, folder)))];
  for (const page of ["README.md", "DEVELOPERS.md"])
    if (fs.existsSync(path.join(root, page))) files.push(path.join(root, page));
  for (const each of files) {
    const before = fs.readFileSync(each, "utf8");
    let text = before.replace(id, newId);
    if (each === file) text = text.replace(new RegExp(`export function ${oldName}\\b`), `export function ${newName}`);
    else if (importsIt.test(text)) {
      text = text
        .split("\n")
        .map((line) =>
          /^\s*(?:import|export) .* from "/.test(line) && !importsIt.test(line) ? line : line.replace(called, newName),
        )
        .join("\n");
    }
    if (text === before) continue;
    fs.writeFileSync(each, text);
    changed.push(path.relative(root, each));
  }
  const moved = [
    [file, file.replace(`${oldName}.ts`, `${newName}.ts`)],
    ...groups.map((group) =>
      [oldName, newName].map((name) => path.join(root, "tests", "functions", group, `${name}.test.ts`)),
    ),
  ] as [string, string][];
  for (const [from, to] of moved) if (fs.existsSync(from)) fs.renameSync(from, to);
  return changed;
}

if (require.main === module) {
  const [oldId, newId] = process.argv.slice(2).map((word) => word.toUpperCase());
  try {
    if (!oldId || !newId) throw new Error("usage: npm run rename -- OLD_NAME NEW_NAME");
    const changed = renameFunction(path.join(__dirname, "..", ".."), oldId, newId);
    console.log(`${oldId} → ${newId} in ${changed.length} files.`);
    console.log(`Now npm run generate, npm run format, npm run samples, and npx jest everyFunction -t "^${newId} ".`);
  } catch (fault) {
    console.error((fault as Error).message);
    process.exitCode = 2;
  }
}
