/** Ends a test run with one plain line that a script can read: "N passed, N failed, N skipped". */
module.exports = class ClosingLine {
  onRunComplete(_contexts, results) {
    const failed = results.numFailedTests + results.numRuntimeErrorTestSuites;
    const skipped = results.numPendingTests + results.numTodoTests;
    process.stderr.write("\n");
    process.on("exit", () => {
      process.stdout.write(
        `${results.numPassedTests} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ""}\n`,
      );
    });
  }
};
