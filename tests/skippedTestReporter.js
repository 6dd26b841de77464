/** Says in the last lines of a run how many browser tests could not run, so that a green run hides nothing. */
class SkippedBrowserReporter {
  constructor() {
    this.skipped = 0;
  }

  onTestResult(_test, result) {
    for (const { status, ancestorTitles } of result.testResults) {
      if (status === "pending" && ancestorTitles.some((title) => title.endsWith("[browser]"))) this.skipped += 1;
    }
  }

  onRunComplete() {
    if (this.skipped > 0) {
      process.stderr.write(
        `\n${this.skipped} browser tests skipped: no browser found. Install Chromium, Chrome or Edge, or set OXYGEN_BROWSER.\n`,
      );
    }
  }
}

module.exports = SkippedBrowserReporter;
