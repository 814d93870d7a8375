/**
 * `npm run wideberth -- ...`: builds the command line if it is missing or older than its sources,
 * then runs it. Only the command itself writes to stdout.
 */
import { mkdirSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { installPackages } from "./installed-packages.mjs";
import { repository } from "./repository.mjs";

const program = `${repository}.build/cli/wideberth.mjs`;
const sources = ["src/core", "src/cli", "vite.config.ts", "package-lock.json"];

if (changedAt(program) <= Math.max(...sources.map((path) => changedAt(`${repository}${path}`)))) {
  if (!installPackages()) process.exit(2);
  await buildProgram();
}
process.argv[1] = program;
await import(pathToFileURL(program).href);

/** Built aside and moved into place, so that two runs at once never read half a file. */
async function buildProgram() {
  const { build } = await import("vite");
  const aside = `${repository}.build/cli-${process.pid}`;
  try {
    await build({
      configFile: `${repository}vite.config.ts`,
      logLevel: "warn",
      build: { ssr: true, outDir: aside },
    });
    mkdirSync(`${repository}.build/cli`, { recursive: true });
    renameSync(`${aside}/wideberth.mjs`, program);
  } catch (error) {
    console.error(`The command line could not be built: ${error.message}`);
    process.exit(2);
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
}

/** Newest change of a file or of anything in a folder, in ms; 0 when it is not there. */
function changedAt(path) {
  const stats = statSync(path, { throwIfNoEntry: false });
  if (!stats) return 0;
  if (!stats.isDirectory()) return stats.mtimeMs;
  // A folder's own time tells of files removed.
  return Math.max(stats.mtimeMs, ...readdirSync(path).map((name) => changedAt(`${path}/${name}`)));
}
