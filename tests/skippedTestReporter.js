const { seed } = require("./fixedSeed.js");

/** What a test needed and did not find, by the mark at the end of its own or its suite's title. */
const needs = {
  "[browser]": "no browser found. Install Chromium, Chrome or Edge, or set OXYGEN_BROWSER.",
  "[validator]": "the Open XML validator comes for Linux on x64 only.",
  "[nginx]": "they need a browser, nginx and openssl.",
  "[not on Windows]": "they put a stand-in for npm first in the path, which Windows starts otherwise.",
};

/** Fewer tests than this in a whole run mean that a file was lost or not found. Raise it as tests are added. */
const fewestTests = 8400;

const markOf = (titles) => Object.keys(needs).find((mark) => titles.some((words) => words.endsWith(mark)));

/** A run of every test, not of chosen files or names. */
const isWhole = ({ testNamePattern, testPathPatterns, onlyChanged, findRelatedTests, shard, onlyFailures }) =>
  !testNamePattern &&
  !testPathPatterns?.isSet() &&
  !onlyChanged &&
  !findRelatedTests &&
  !shard &&
  !onlyFailures &&
  !process.env.OXYGEN_MUTATIONS;

/**
 * Says in the last lines of a run how many tests could not run, so that a green run hides nothing. A test that was skipped,
 * put off or left aside by a focused one without such a need makes the run fail, and so does a whole run of too few tests.
 */
class SkippedTestReporter {
  constructor(config) {
    this.skipped = {};
    this.unneeded = [];
    this.countsSkipped = !config.testNamePattern;
    this.isWhole = isWhole(config);
  }

  onRunStart() {
    process.stderr.write(`Properties draw with seed ${seed}.\n`);
  }

  onTestResult(test, result) {
    if (!this.countsSkipped) return;
    for (const { status, ancestorTitles, title } of result.testResults) {
      if (status !== "pending" && status !== "todo") continue;
      const titles = [...ancestorTitles, title];
      const mark = status === "pending" && markOf(titles);
      if (mark) this.skipped[mark] = (this.skipped[mark] ?? 0) + 1;
      else this.unneeded.push(`${test.path}: ${titles.join(" › ")}`);
    }
  }

  onRunComplete(_tests, { numPassedTests }) {
    for (const [mark, count] of Object.entries(this.skipped)) {
      process.stderr.write(`\n${count} ${mark.slice(1, -1)} tests skipped: ${needs[mark]}\n`);
    }
    const marked = Object.values(this.skipped).reduce((sum, count) => sum + count, 0);
    const faults = [];
    if (this.unneeded.length > 0) {
      const shown = this.unneeded.slice(0, 5).join("\n  ");
      faults.push(`${this.unneeded.length} tests did not run because of a skip, a todo or a focused test:\n  ${shown}`);
    }
    if (this.isWhole && numPassedTests + marked < fewestTests)
      faults.push(`${numPassedTests} tests passed; a whole run has at least ${fewestTests}. Was a test file lost?`);
    if (faults.length === 0) return;
    this.fault = new Error(faults.join("\n"));
    process.stderr.write(`\n${this.fault.message}\n`);
  }

  /** Jest fails the run on it, without its words. */
  getLastError() {
    return this.fault;
  }
}

module.exports = SkippedTestReporter;
