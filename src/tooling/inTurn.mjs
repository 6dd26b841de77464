import { mkdirSync, rmSync, statSync } from "node:fs";
import path from "node:path";
import { setTimeout } from "node:timers";

const longestTurn = 5 * 60_000;

/** @param {string} lock */
const take = (lock) => {
  mkdirSync(path.dirname(lock), { recursive: true });
  try {
    mkdirSync(lock);
    return true;
  } catch (fault) {
    // Anything but another's lock, such as a folder that can't be written, will not get better by waiting.
    if (fault.code !== "EEXIST") throw fault;
  }
  try {
    if (Date.now() - statSync(lock).mtimeMs > longestTurn) rmSync(lock, { recursive: true, force: true });
  } catch {
    // The other one has just finished.
  }
  return false;
};

/**
 * Does work that only one process may do at a time; the others wait for their turn. A lock left behind by a process that
 * was killed is taken over after five minutes.
 * @template Result
 * @param {string} lock a folder that is made and removed
 * @param {() => Promise<Result>} work
 * @returns {Promise<Result>}
 * @throws the system's error where the folder can't be written
 */
export const inTurn = async (lock, work) => {
  while (!take(lock)) await new Promise((resolve) => setTimeout(resolve, 200));
  try {
    return await work();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
};

/** @param {NodeJS.ErrnoException} fault */
export const isReadOnly = (fault) => ["EACCES", "EPERM", "EROFS"].includes(fault.code ?? "");
