import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, extname, join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { withoutFormulas } from "../engine/file/writeWorkbook";

const run = (command: string, parameters: readonly string[]): void => {
  const { error, status, stderr } = spawnSync(command, parameters, { encoding: "utf8" });
  if (error) {
    const isMissing = (error as NodeJS.ErrnoException).code === "ENOENT";
    throw isMissing
      ? new Error(`${command} is not installed. Rendering is for development only: it needs LibreOffice and poppler.`)
      : error;
  }
  if (status !== 0) throw new Error(`${command} failed: ${stderr}`);
};

/** Draws every printed page of a workbook as a picture; returns the pictures' paths in page order. */
const renderWorkbook = (file: string, folder: string, dotsPerInch = 80): string[] => {
  const name = basename(file, extname(file));
  const work = mkdtempSync(join(tmpdir(), "render-"));
  try {
    const copy = join(work, `${name}.xlsx`);
    // LibreOffice knows no add-in function and shows #NAME? for each, whatever its recalculation setting.
    writeFileSync(copy, withoutFormulas(readFileSync(file)));
    const profile = pathToFileURL(join(work, "profile")).href;
    run("soffice", [`-env:UserInstallation=${profile}`, "--headless", "--convert-to", "pdf", "--outdir", work, copy]);
    const pdf = join(work, `${name}.pdf`);
    if (!existsSync(pdf)) throw new Error(`LibreOffice made no PDF of ${file}`);
    mkdirSync(folder, { recursive: true });
    const isPage = (picture: string): boolean => picture.startsWith(`${name}-`) && picture.endsWith(".png");
    for (const old of readdirSync(folder).filter(isPage)) rmSync(join(folder, old));
    run("pdftoppm", ["-png", "-r", String(dotsPerInch), pdf, join(folder, name)]);
    return readdirSync(folder)
      .filter(isPage)
      .sort()
      .map((picture) => join(folder, picture));
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
};

if (require.main === module) {
  const [file, folder, dotsPerInch] = process.argv.slice(2);
  if (!file || !folder) {
    console.error("npm run render -- samples/<workbook>.xlsx <folder> [dots per inch]");
    process.exitCode = 2;
  } else {
    try {
      const pictures = renderWorkbook(resolve(file), resolve(folder), dotsPerInch ? Number(dotsPerInch) : undefined);
      for (const picture of pictures) console.log(picture);
    } catch (problem) {
      console.error(problem instanceof Error ? problem.message : problem);
      process.exitCode = 1;
    }
  }
}
