/**
 * `npm test`: installs what is missing, runs every step even when one before it failed, and ends
 * with one line `N passed, N failed`. A step is one check; a step of tests is as many as its tests.
 * Browser tests wait much: they run beside the other steps, and are told of after them.
 *
 * `npm test -- --only unit,lint` runs some steps only.
 */
import { spawn } from "node:child_process";
import { readFileSync, rmSync } from "node:fs";
import { relative } from "node:path";
import { installPackages } from "./installed-packages.mjs";
import { installPrograms } from "./installed-programs.mjs";
import { repository, tool } from "./repository.mjs";

const steps = [
  { name: "types", title: "Types", run: (say) => npmScript("types", say) },
  { name: "lint", title: "Lint", run: (say) => npmScript("lint", say) },
  { name: "format", title: "Format", run: (say) => npmScript("format:check", say) },
  {
    name: "layering",
    title: "Layering and house rules",
    run: (say) => vitest("architecture", say),
  },
  { name: "dead", title: "Dead code", run: (say) => npmScript("dead", say) },
  {
    name: "unit",
    title: "Unit, property and golden tests",
    programs: ["pdftoppm"],
    run: (say) => vitest("unit", say),
  },
  {
    name: "browser",
    title: "Browser tests",
    programs: ["chromium", "pdftoppm"],
    isBeside: true,
    run: (say) => vitest("browser", say, { triesAgain: true }),
  },
];

const chosen = chooseSteps(process.argv.slice(2));
let passed = 0;
let failed = 0;
if (installPackages()) {
  const programs = [...new Set(chosen.flatMap((step) => step.programs ?? []))];
  const install = { title: "Programs", run: () => oneCheck(installPrograms(programs)) };
  if (programs.length > 0) await runSteps([install], print);
  const first = chosen.filter((step) => !step.isBeside);
  const beside = chosen.filter((step) => step.isBeside);
  const held = [];
  let isFirstOver = false;
  const afterFirst = (text) => (isFirstOver ? print(text) : held.push(text));
  const besides = runSteps(beside, afterFirst);
  await runSteps(first, print);
  isFirstOver = true;
  print(held.join(""));
  await besides;
} else {
  console.error("The packages could not be installed; see npm's message above.");
  failed += 1;
}
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;

function print(text) {
  process.stdout.write(text);
}

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

/** One after the other. @param say takes what they print, piece by piece */
async function runSteps(some, say) {
  for (const step of some) {
    say(`\n== ${step.title}\n`);
    const start = performance.now();
    const counts = await step.run(say);
    passed += counts.passed;
    failed += counts.failed;
    const seconds = ((performance.now() - start) / 1000).toFixed(1);
    say(`-- ${step.title}: ${counts.passed} passed, ${counts.failed} failed, ${seconds} s\n`);
  }
}

async function npmScript(name, say) {
  return oneCheck(await run("npm", ["run", "--silent", name], say));
}

function oneCheck(isPassed) {
  return isPassed ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

function run(program, args, say) {
  return new Promise((resolve) => {
    const child = spawn(program, args, { cwd: repository, stdio: ["ignore", "pipe", "pipe"] });
    for (const stream of [child.stdout, child.stderr]) stream.setEncoding("utf8").on("data", say);
    child.on("error", ({ message }) => {
      say(`${message}\n`);
      resolve(false);
    });
    child.on("close", (status) => resolve(status === 0));
  });
}

/**
 * Runs one project of the tests and counts them from its report, never from its words.
 *
 * @param triesAgain Files with a failure run once more, in a browser of their own, and what they
 * say then counts: on a machine under load a page may answer too late, and a test that is tried
 * again within its file meets what the failed one left behind. A fault fails both times.
 */
async function vitest(project, say, { triesAgain = false } = {}) {
  const report = `${repository}.build/test-results/${project}.json`;
  const isPassed = await runProject(project, report, say);
  const first = resultsOf(report);
  // An error outside every test fails the run without failing a test.
  const failedOutside = (results, isWell) => !isWell && countTests(results).failed === 0;
  if (first === null || failedOutside(first, isPassed)) return withOneMore(first);
  const again = first.filter(({ status }) => status === "failed").map(({ name }) => name);
  // More than a few are no matter of load.
  if (!triesAgain || again.length === 0 || again.length > 4) return countTests(first);
  say(`\n== Tried again: ${again.map((name) => relative(repository, name)).join(", ")}\n`);
  const isWell = await runProject(project, report, say, again);
  const second = resultsOf(report);
  if (second === null || failedOutside(second, isWell)) return countTests(first);
  return countTests([...first.filter(({ name }) => !again.includes(name)), ...second]);
}

function runProject(project, report, say, files = []) {
  rmSync(report, { force: true });
  const args = [
    "run",
    `--project=${project}`,
    "--allowOnly=false",
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${report}`,
    ...files,
  ];
  return run(tool("vitest"), args, say);
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
