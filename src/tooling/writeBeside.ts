import {
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import path from "node:path";

const isSameFile = (one: string, other: string): boolean => {
  if (!existsSync(one) || !existsSync(other)) return path.resolve(one) === path.resolve(other);
  const [a, b] = [statSync(one), statSync(other)];
  return realpathSync(one) === realpathSync(other) || (a.ino !== 0 && a.ino === b.ino && a.dev === b.dev);
};

/** Why a file may not be written where it is asked for, "" if it may. Overwriting what was read is never allowed. */
export const refusalToWrite = (file: string, input: string, mayOverwrite: boolean): string => {
  if (isSameFile(file, input)) return `${file} is the workbook that is read; give the copy another name`;
  if (!/\.xlsx$/i.test(file)) return `${file}: a copy's name ends with .xlsx`;
  const folder = path.dirname(path.resolve(file));
  if (!existsSync(folder)) return `${file}: there is no folder ${folder}`;
  if (existsSync(file) && statSync(file).isDirectory()) return `${file} is a folder`;
  if (existsSync(file) && !mayOverwrite) return `${file} exists; --force overwrites it`;
  return "";
};

/**
 * Writes a file under another name beside it, and gives it its name when it is complete: a full disk or a broken-off run
 * leaves an older file of that name whole.
 * @throws the system's error; nothing is left beside the file then.
 */
export const writeBeside = (file: string, bytes: Uint8Array, mayOverwrite: boolean): void => {
  const beside = path.join(path.dirname(file), `.${path.basename(file)}.${process.pid}.part`);
  try {
    const handle = openSync(beside, "wx");
    try {
      for (let at = 0; at < bytes.length;) {
        const written = writeSync(handle, bytes, at);
        if (written === 0) throw new Error("the disk takes no more");
        at += written;
      }
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    if (mayOverwrite) renameSync(beside, file);
    else giveName(beside, file);
  } catch (thrown) {
    rmSync(beside, { force: true });
    throw thrown;
  }
};

/** A link, unlike a new name, fails where a file of that name came in between. */
const giveName = (beside: string, file: string): void => {
  try {
    linkSync(beside, file);
  } catch (thrown) {
    const { code } = thrown as NodeJS.ErrnoException;
    if (code === "EEXIST" || existsSync(file)) throw thrown;
    // Some places, such as shares and memory sticks, know no links.
    renameSync(beside, file);
    return;
  }
  rmSync(beside);
};
