/** What a test needed and did not find, by the mark at the end of its own or its suite's title. */
const needs = {
  "[browser]": "no browser found. Install Chromium, Chrome or Edge, or set OXYGEN_BROWSER.",
  "[nginx]": "nginx and openssl are not installed (apt-get install nginx-light openssl), or there is no browser.",
  "[validator]": "the Open XML validator comes for Linux on x64 only.",
};

/** Says in the last lines of a run how many tests could not run, so that a green run hides nothing. */
class SkippedTestReporter {
  constructor({ testNamePattern }) {
    this.skipped = {};
    this.isWholeRun = !testNamePattern;
  }

  onTestResult(_test, result) {
    if (!this.isWholeRun) return;
    for (const { status, ancestorTitles, title } of result.testResults) {
      if (status !== "pending") continue;
      const mark = Object.keys(needs).find((each) => [...ancestorTitles, title].some((words) => words.endsWith(each)));
      if (mark) this.skipped[mark] = (this.skipped[mark] ?? 0) + 1;
    }
  }

  onRunComplete() {
    for (const [mark, count] of Object.entries(this.skipped)) {
      process.stderr.write(`\n${count} ${mark.slice(1, -1)} tests skipped: ${needs[mark]}\n`);
    }
  }
}

module.exports = SkippedTestReporter;
