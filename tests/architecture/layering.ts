/**
 * Which way imports may point:
 * app -> panel, canvas -> store -> exports -> arrange, checks; imports -> edits -> crops, calendar
 * -> geometry -> model; cli -> core. Each may import what stands further right; of two that stand
 * together neither may import the other, except that arrange imports checks.
 */
import { builtinModules } from "node:module";
import { posix } from "node:path";
import { importsOf } from "./imports.ts";

const RANKS: Readonly<Record<string, number>> = {
  app: 11,
  panel: 10,
  canvas: 10,
  store: 9,
  "core/exports": 8,
  "core/imports": 6,
  "core/arrange": 7,
  "core/checks": 6,
  "core/edits": 5,
  "core/calendar": 4,
  "core/crops": 3,
  "core/geometry": 2,
  "core/model": 1,
};

/** Packages that only some modules may import, and which; a folder stands for all inside it. */
const PACKAGE_HOMES: Readonly<Record<string, readonly string[]>> = {
  pdfkit: ["core/exports"],
  idb: ["store"],
  "browser-fs-access": ["store"],
  konva: ["canvas"],
  "react-konva": ["canvas"],
  react: ["app", "panel", "canvas", "store"],
  "react-dom": ["app", "panel"],
  zustand: ["app", "panel", "canvas", "store"],
};

/** Files outside src that may be imported, and from where. */
const OUTSIDE_HOMES: Readonly<Record<string, readonly string[]>> = {
  "sample-plots": ["app", "store"],
};

/** Faults in the imports of these files (path from the repository's top -> text), in words. */
export function layeringFaults(files: ReadonlyMap<string, string>): readonly string[] {
  const graph = new Map<string, readonly string[]>();
  const faults: string[] = [];
  for (const [path, text] of files) {
    const imports = importsOf(path, text);
    graph.set(
      path,
      imports.map((name) => resolve(path, name, files)).filter((to) => to !== null),
    );
    if (moduleOf(path) === null) faults.push(`${path}: stands in no module; see the design's map`);
    else faults.push(...imports.flatMap((name) => importFault(path, name, files) ?? []));
  }
  return [...faults, ...cycles(graph)];
}

/** The module a file belongs to, e.g. `core/checks` or `panel`; null when it is in none. */
function moduleOf(path: string): string | null {
  const [, first = "", second = ""] = path.split("/");
  const name = first === "core" ? `core/${second}` : first;
  return path.startsWith("src/") && (name in RANKS || name === "cli") ? name : null;
}

function importFault(
  path: string,
  name: string,
  files: ReadonlyMap<string, string>,
): string | null {
  const from = moduleOf(path) ?? "";
  const fault = (reason: string) => `${path} imports ${name}: ${reason}`;
  if (!name.startsWith(".")) {
    const reason = packageFault(from, name);
    return reason === null ? null : fault(reason);
  }
  const target = targetOf(path, name);
  if (!target.startsWith("src/")) {
    const homes = OUTSIDE_HOMES[target.split("/")[0] ?? ""] ?? [];
    return isAt(from, homes) ? null : fault(`${from} may not import files outside src`);
  }
  const isCode = /\.tsx?$/.test(target) || posix.extname(target) === "";
  if (isCode && resolve(path, name, files) === null) return fault("there is no such file");
  const to = moduleOf(target);
  if (to === null) return fault("the target stands in no module");
  return mayImport(from, to) ? null : fault(`${from} may not import ${to}, imports point one way`);
}

function mayImport(from: string, to: string): boolean {
  if (from === to) return true;
  if (from === "cli") return to.startsWith("core/");
  return (RANKS[from] ?? 0) > (RANKS[to] ?? Infinity);
}

function packageFault(from: string, name: string): string | null {
  const isNode = name.startsWith("node:") || builtinModules.includes(name.split("/")[0] ?? "");
  if (isNode) return from === "cli" ? null : "only cli may use Node's own modules";
  const parts = name.split("/");
  const homes = PACKAGE_HOMES[parts.slice(0, name.startsWith("@") ? 2 : 1).join("/")];
  if (homes === undefined || isAt(from, homes)) return null;
  return `only ${homes.join(", ")} may import it`;
}

function isAt(from: string, homes: readonly string[]): boolean {
  return homes.some((home) => from === home || from.startsWith(`${home}/`));
}

/** Path from the repository's top that a relative import names, without a `?raw` or the like. */
function targetOf(path: string, name: string): string {
  return posix.join(posix.dirname(path), name.replace(/\?.*$/, ""));
}

/** The one of these files an import leads to; null for packages and everything not among them. */
function resolve(path: string, name: string, files: ReadonlyMap<string, string>): string | null {
  if (!name.startsWith(".")) return null;
  const target = targetOf(path, name);
  return [target, `${target}.ts`, `${target}.tsx`].find((each) => files.has(each)) ?? null;
}

/** One line for each circle of imports met on a walk through all files. */
function cycles(graph: ReadonlyMap<string, readonly string[]>): readonly string[] {
  const found: string[] = [];
  const done = new Set<string>();
  const walk = (path: string, trail: readonly string[]) => {
    const start = trail.indexOf(path);
    if (start >= 0) found.push(`import circle: ${[...trail.slice(start), path].join(" -> ")}`);
    if (start >= 0 || done.has(path)) return;
    for (const next of graph.get(path) ?? []) walk(next, [...trail, path]);
    done.add(path);
  };
  for (const path of graph.keys()) walk(path, []);
  return found;
}
