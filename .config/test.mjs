/**
 * `npm test`: installs what is missing, runs every step even when one before it failed, and ends
 * with one line `N passed, N failed`. A step is one check; a step of tests is as many as its tests.
 *
 * `npm test -- --only unit,lint` runs some steps only.
 */
import { spawnSync } from "node:child_process";
import { readFileSync, rmSync } from "node:fs";
import { relative } from "node:path";
import { installPackages } from "./installed-packages.mjs";
import { installPrograms } from "./installed-programs.mjs";
import { repository, tool } from "./repository.mjs";

const steps = [
  { name: "types", title: "Types", run: () => npmScript("types") },
  { name: "lint", title: "Lint", run: () => npmScript("lint") },
  { name: "format", title: "Format", run: () => npmScript("format:check") },
  { name: "layering", title: "Layering and house rules", run: () => vitest("architecture") },
  { name: "dead", title: "Dead code", run: () => npmScript("dead") },
  {
    name: "unit",
    title: "Unit, property and golden tests",
    programs: ["pdftoppm"],
    run: () => vitest("unit"),
  },
  {
    name: "browser",
    title: "Browser tests",
    programs: ["chromium", "pdftoppm"],
    run: () => vitest("browser", { triesAgain: true }),
  },
];

const chosen = chooseSteps(process.argv.slice(2));
let passed = 0;
let failed = 0;
if (installPackages()) {
  const programs = [...new Set(chosen.flatMap((step) => step.programs ?? []))];
  if (programs.length > 0)
    runStep({ title: "Programs", run: () => oneCheck(installPrograms(programs)) });
  for (const step of chosen) runStep(step);
} else {
  console.error("The packages could not be installed; see npm's message above.");
  failed += 1;
}
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;

function chooseSteps(args) {
  if (args.length === 0) return steps;
  const names = args[0] === "--only" ? args.slice(1).flatMap((arg) => arg.split(",")) : [];
  const known = steps.map((step) => step.name);
  if (names.length === 0 || names.some((name) => !known.includes(name))) {
    console.error(`Usage: npm test -- --only ${known.join("|")}[,...]; got ${args.join(" ")}`);
    process.exit(2);
  }
  return steps.filter((step) => names.includes(step.name));
}

function runStep(step) {
  console.log(`\n== ${step.title}`);
  const start = performance.now();
  const counts = step.run();
  passed += counts.passed;
  failed += counts.failed;
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`-- ${step.title}: ${counts.passed} passed, ${counts.failed} failed, ${seconds} s`);
}

function npmScript(name) {
  return oneCheck(run("npm", ["run", "--silent", name]));
}

function oneCheck(isPassed) {
  return isPassed ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

function run(program, args) {
  const { status, error } = spawnSync(program, args, { cwd: repository, stdio: "inherit" });
  if (error) console.error(error.message);
  return status === 0;
}

/**
 * Runs one project of the tests and counts them from its report, never from its words.
 *
 * @param triesAgain Files with a failure run once more, in a browser of their own, and what they
 * say then counts: on a machine under load a page may answer too late, and a test that is tried
 * again within its file meets what the failed one left behind. A fault fails both times.
 */
function vitest(project, { triesAgain = false } = {}) {
  const report = `${repository}.build/test-results/${project}.json`;
  const isPassed = runProject(project, report);
  const first = resultsOf(report);
  // An error outside every test fails the run without failing a test.
  const failedOutside = (results, isWell) => !isWell && countTests(results).failed === 0;
  if (first === null || failedOutside(first, isPassed)) return withOneMore(first);
  const again = first.filter(({ status }) => status === "failed").map(({ name }) => name);
  // More than a few are no matter of load.
  if (!triesAgain || again.length === 0 || again.length > 4) return countTests(first);
  console.log(`\n== Tried again: ${again.map((name) => relative(repository, name)).join(", ")}`);
  const isWell = runProject(project, report, again);
  const second = resultsOf(report);
  if (second === null || failedOutside(second, isWell)) return countTests(first);
  return countTests([...first.filter(({ name }) => !again.includes(name)), ...second]);
}

function runProject(project, report, files = []) {
  rmSync(report, { force: true });
  return run(tool("vitest"), [
    "run",
    `--project=${project}`,
    // All cores: the runner itself has little to do. Browser tests take their files one by one.
    ...(project === "browser" ? [] : ["--maxWorkers=100%"]),
    "--allowOnly=false",
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${report}`,
    ...files,
  ]);
}

/** What the report says of each file; null without a report. */
function resultsOf(report) {
  try {
    return JSON.parse(readFileSync(report, "utf8")).testResults;
  } catch {
    return null;
  }
}

function withOneMore(files) {
  const { passed: passedTests, failed: failedTests } = countTests(files ?? []);
  return { passed: passedTests, failed: failedTests + 1 };
}

function countTests(files) {
  const results = files.flatMap((file) => file.assertionResults.map((test) => test.status));
  const notLoaded = files.filter(
    (file) => file.status === "failed" && file.assertionResults.length === 0,
  );
  const passedTests = results.filter((status) => status === "passed").length;
  // What did not run did not pass: a skipped test counts as failed.
  return { passed: passedTests, failed: results.length - passedTests + notLoaded.length };
}
