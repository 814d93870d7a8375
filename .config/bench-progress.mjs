/** Reporter of the test runner for `npm run bench`: which file is at work, of how many, since when. */
export default class BenchProgress {
  #started = 0;
  #files = 0;
  #from = performance.now();

  onTestRunStart(specifications) {
    this.#files = specifications.length;
    this.#from = performance.now();
  }

  onTestModuleStart(module) {
    this.#started += 1;
    const minutes = ((performance.now() - this.#from) / 60_000).toFixed(1);
    const name = module.moduleId.split("/").at(-1);
    console.log(`\n[${this.#started} of ${this.#files}, ${minutes} min] ${name}`);
  }

  onTestCaseResult(test) {
    const result = test.result();
    if (result.state !== "failed") return;
    console.error(`FAILED ${test.fullName}`);
    for (const error of result.errors) console.error(error.stack ?? error.message);
  }

  onUserConsoleLog(log) {
    const out = log.type === "stderr" ? process.stderr : process.stdout;
    out.write(log.content);
  }

  onTestRunEnd(modules, unhandled) {
    for (const module of modules) {
      for (const error of module.errors()) {
        console.error(`FAILED ${module.moduleId}\n${error.stack ?? error.message}`);
      }
    }
    for (const error of unhandled) console.error(error.stack ?? error.message);
  }
}
