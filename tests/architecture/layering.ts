/**
 * Which way imports may point. Between layers: app -> panel, canvas -> store -> core; cli -> core.
 * Inside a layer folders stand on levels, and each may import what stands on a lower one; of two
 * that stand together neither may import the other.
 */
import { builtinModules } from "node:module";
import { posix } from "node:path";
import { importsOf } from "./imports.ts";

/** What each layer may import besides itself. */
const LAYERS: Readonly<Record<string, readonly string[]>> = {
  app: ["panel", "canvas", "store", "core"],
  panel: ["store", "core"],
  canvas: ["store", "core"],
  store: ["core"],
  cli: ["core"],
  core: [],
};

/** Folders of the layers that have folders, lowest level first. */
const LEVELS: Readonly<Record<string, readonly string[]>> = {
  core: [
    "lists words",
    "formats model",
    "geometry kinds solving",
    "calendar distances lots page",
    "practice",
    "beds generations nearness",
    "checks edits",
    "crossing-share ground outlines record remedies shelf",
    "clearing fieldwork",
    "arrange map seasons",
    "renewal",
    "exchange labels paper-set",
    "compare",
    "files",
  ],
  store: ["window", "plan", "keeping", "files", "threads"],
  canvas: ["scene", "draw snap", "ground tools", "input", "compare sheet"],
  panel: [
    "state",
    "form",
    "commands csv",
    "generations record",
    "copies grown",
    "arrange beds clearing clipboard find keeping kinds outlines paper picture scan season storage years",
    "bloom earlier-crops figures layouts walk",
    "compare findings lots seed-list",
    "shelf",
    "particulars tables",
    "site",
    "window",
  ],
};

const RANKS: ReadonlyMap<string, number> = new Map(
  Object.entries(LEVELS).flatMap(([layer, levels]) =>
    levels.flatMap((names, rank) =>
      names.split(" ").map((name) => [`${layer}/${name}`, rank] as const),
    ),
  ),
);

/** Every folder of the source that holds code, e.g. `core/checks` or `app`. */
export const FOLDERS: readonly string[] = [...RANKS.keys(), "app", "cli"];

/** What every feature of the panel may import. The window puts the features together. */
const PANEL_KIT: readonly string[] = ["panel/state", "panel/form", "panel/commands", "panel/csv"];

/** The only imports that join one feature of the panel to another. A new one is a decision. */
const PANEL_EDGES: Readonly<Record<string, readonly string[]>> = {
  "panel/bloom": ["panel/season"],
  "panel/compare": ["panel/layouts"],
  "panel/earlier-crops": ["panel/kinds"],
  "panel/figures": ["panel/kinds"],
  "panel/findings": ["panel/clearing", "panel/figures", "panel/grown"],
  "panel/grown": ["panel/record"],
  "panel/paper": ["panel/grown"],
  "panel/layouts": ["panel/arrange", "panel/clearing"],
  "panel/lots": ["panel/generations", "panel/grown", "panel/storage"],
  "panel/particulars": [
    "panel/beds",
    "panel/bloom",
    "panel/earlier-crops",
    "panel/findings",
    "panel/grown",
    "panel/kinds",
    "panel/record",
    "panel/seed-list",
    "panel/shelf",
    "panel/walk",
  ],
  "panel/scan": ["panel/generations"],
  "panel/season": ["panel/record"],
  "panel/seed-list": [
    "panel/arrange",
    "panel/beds",
    "panel/bloom",
    "panel/figures",
    "panel/generations",
    "panel/kinds",
  ],
  "panel/shelf": ["panel/grown", "panel/lots", "panel/scan", "panel/storage", "panel/years"],
  "panel/site": ["panel/outlines", "panel/particulars", "panel/season"],
  "panel/walk": ["panel/grown", "panel/kinds", "panel/record", "panel/scan"],
  "panel/tables": ["panel/beds", "panel/seed-list"],
};

/** Packages that only some modules may import, and which; a folder stands for all inside it. */
const PACKAGE_HOMES: Readonly<Record<string, readonly string[]>> = {
  pdfkit: ["core/page"],
  idb: ["store"],
  jsqr: ["panel/scan"],
  "browser-fs-access": ["store"],
  konva: ["canvas"],
  react: ["app", "panel", "canvas", "store"],
  "react-dom": ["app", "panel"],
  zustand: ["app", "panel", "canvas", "store"],
};

/** Files outside src that may be imported, and from where. */
const OUTSIDE_HOMES: Readonly<Record<string, readonly string[]>> = {
  "sample-plots": ["panel/window", "store"],
};

/** Faults in the imports of these files (path from the repository's top -> text), in words. */
export function layeringFaults(files: ReadonlyMap<string, string>): readonly string[] {
  const graph = new Map<string, readonly string[]>();
  const faults: string[] = [];
  for (const [path, text] of files) {
    const imports = importsOf(path, text);
    graph.set(
      path,
      imports.atStart.map((name) => resolve(path, name, files)).filter((to) => to !== null),
    );
    if (moduleOf(path) === null) faults.push(`${path}: stands in no module; see the design's map`);
    else faults.push(...imports.all.flatMap((name) => importFault(path, name, files) ?? []));
  }
  return [...faults, ...cycles(graph)];
}

/** The folder a file belongs to, e.g. `core/checks` or `app`; null when it is in none. */
function moduleOf(path: string): string | null {
  const [, first = "", second = ""] = path.split("/");
  const name = first in LEVELS ? `${first}/${second}` : first;
  return path.startsWith("src/") && FOLDERS.includes(name) ? name : null;
}

const layerOf = (module: string) => module.split("/")[0] ?? "";

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
  if (!mayImport(from, to)) return fault(`${from} may not import ${to}, imports point one way`);
  return joinsFeatures(from, to) ? fault(`${from} and ${to} are joined by no written edge`) : null;
}

function mayImport(from: string, to: string): boolean {
  if (from === to) return true;
  if (layerOf(from) !== layerOf(to)) return LAYERS[layerOf(from)]?.includes(layerOf(to)) ?? false;
  return (RANKS.get(from) ?? 0) > (RANKS.get(to) ?? Infinity);
}

/** Whether an import goes from one feature of the panel to another without being listed. */
function joinsFeatures(from: string, to: string): boolean {
  if (from === to || layerOf(from) !== "panel" || layerOf(to) !== "panel") return false;
  if (from === "panel/window" || PANEL_KIT.includes(from) || PANEL_KIT.includes(to)) return false;
  return !PANEL_EDGES[from]?.includes(to);
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

/**
 * One line for each circle of imports met on a walk through all files. What is fetched later, with
 * `import()`, closes none: a feature's list of dialogs may name one that opens another.
 */
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
