/** Weighs the built script and fails the build when a part is heavier than it may be. */
import { gzipSync } from "node:zlib";
import type { Plugin, Rolldown } from "vite";

/** What of a built file is weighed; the bundler's own chunks have all of it. */
export interface Weighed {
  readonly fileName: string;
  readonly name: string;
  readonly code: string;
  readonly isEntry: boolean;
  /** Files it cannot run without. */
  readonly imports: readonly string[];
}

export interface Budgets {
  /** Of the page's entry and all that it cannot run without, KiB gzipped. */
  readonly firstLoadKib: number;
  /** Name of the page's entry. */
  readonly entry: string;
  /** Name of what the entry asks for at once, if it does. */
  readonly opened?: string;
  /** Of single files by name, KiB gzipped. */
  readonly filesKib: Readonly<Record<string, number>>;
  /** Of every file that is not named, KiB gzipped. */
  readonly otherKib: number;
}

/** The site's. A part that is named is wanted late, and large for a reason. */
export const SITE_BUDGETS: Budgets = {
  entry: "index",
  opened: "main",
  firstLoadKib: 238,
  otherKib: 20,
  filesKib: {
    index: 2,
    // What plans are read by: the schema library, the schemas and the reader.
    schemas: 28,
    // All that the page cannot run without, and what later parts stand on.
    libraries: 78,
    base: 158,
    "pdf-writer": 230,
    // Exact union and difference of outlines.
    dist: 30,
    "prove-worker": 130,
    "arrange-worker": 110,
    "lay-out-worker": 125,
    "clear-worker": 168,
    "clear-ground-worker": 32,
    "years-worker": 40,
    "read-camera": 48,
    "plot-map": 24,
    // All that paper and files are made of, off the window's thread; of that, the checks with kinds.
    "paper-worker": 50,
    isolation: 52,
    // All checks of a plan, off the window's thread.
    "run-checks": 24,
    "bloom-window": 24,
    // The schemas and kinds, by which a plan is read.
    "write-worker": 60,
  },
};

/** Faults in words, each with name and numbers; none when all is light enough. */
export function weightFaults(files: readonly Weighed[], budgets: Budgets): readonly string[] {
  const weights = new Map(files.map((file) => [file.fileName, kibOf(file.code)]));
  const faults: string[] = [];
  for (const { name, fileName } of files) {
    const most = budgets.filesKib[name] ?? budgets.otherKib;
    const kib = weights.get(fileName) ?? 0;
    if (kib > most) faults.push(`${name} weighs ${kib.toFixed(1)} KiB gzipped, at most ${most}`);
  }
  const entry = files.find((file) => file.isEntry && file.name === budgets.entry);
  if (!entry) return [...faults, `there is no entry ${budgets.entry} to weigh`];
  const opened = files.filter((file) => file.name === budgets.opened);
  if (budgets.opened !== undefined && opened.length !== 1) {
    return [...faults, `there are ${opened.length} files ${budgets.opened} to weigh, not one`];
  }
  const needed = neededBy([entry, ...opened], files);
  const first = needed.reduce((sum, fileName) => sum + (weights.get(fileName) ?? 0), 0);
  if (first > budgets.firstLoadKib) {
    faults.push(
      `the first load weighs ${first.toFixed(1)} KiB gzipped in ${needed.length} files, ` +
        `at most ${budgets.firstLoadKib}`,
    );
  }
  return faults;
}

/** The files and all that they cannot run without. */
function neededBy(first: readonly Weighed[], files: readonly Weighed[]): readonly string[] {
  const byName = new Map(files.map((file) => [file.fileName, file]));
  const needed = new Set(first.map(({ fileName }) => fileName));
  for (const fileName of needed) {
    for (const imported of byName.get(fileName)?.imports ?? []) needed.add(imported);
  }
  return [...needed];
}

function kibOf(code: string): number {
  return gzipSync(code, { level: 9 }).length / 1024;
}

/** A file of the bundle, when it is script; workers come as files already finished. */
function weighed(file: Rolldown.OutputChunk | Rolldown.OutputAsset): readonly Weighed[] {
  if (file.type === "chunk") return [file];
  const { fileName, source } = file;
  if (!fileName.endsWith(".js")) return [];
  const name = fileName.replace(/^.*\//, "").replace(/-.{8}\.js$/, "");
  const code = typeof source === "string" ? source : new TextDecoder().decode(source);
  return [{ fileName, name, code, isEntry: false, imports: [] }];
}

/** The plugin: weighs what is about to be written. */
export function chunkBudget(budgets: Budgets): Plugin {
  let isSite = false;
  return {
    name: "wideberth-chunk-budget",
    apply: "build",
    configResolved: ({ build }) => {
      isSite = !build.ssr && build.minify !== false;
    },
    generateBundle: {
      order: "post",
      handler(_options, bundle) {
        if (!isSite) return;
        const faults = weightFaults(Object.values(bundle).flatMap(weighed), budgets);
        if (faults.length > 0) this.error(`Too heavy: ${faults.join("; ")}.`);
      },
    },
  };
}
