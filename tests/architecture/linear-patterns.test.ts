/**
 * Every pattern of src is matched in time that grows with the text, never with its square or worse:
 * a 290 kB name of a waypoint once stopped the window for 21 seconds. The patterns are analysed as
 * automata by scslre; what it cannot look into is not written.
 */
import { type AST, RegExpParser, visitRegExpAST } from "@eslint-community/regexpp";
import { analyse } from "scslre";
import { expect, test } from "vitest";
import { parseAstAsync } from "vite";
import { sourceFiles } from "./source-files.ts";

interface Pattern {
  readonly path: string;
  readonly source: string;
  readonly flags: string;
}

/** Pairs of nested quantifiers, neighbours that trade characters, and ends sought from every place. */
function faultsOf({ source, flags }: Pattern): readonly string[] {
  return analyse({ source, flags }).reports.map(({ type }) => type);
}

/** Looking behind and back-references are beyond the analysis. */
function hasWhatIsNotAnalysed({ source, flags }: Pattern): boolean {
  let isFound = false;
  const look = ({ kind }: AST.LookaroundAssertion) => {
    if (kind === "lookbehind") isFound = true;
  };
  const pattern = new RegExpParser().parsePattern(source, 0, source.length, {
    unicode: flags.includes("u"),
    unicodeSets: flags.includes("v"),
  });
  visitRegExpAST(pattern, {
    onAssertionEnter: (node) => {
      if (node.kind === "lookbehind" || node.kind === "lookahead") look(node);
    },
    onBackreferenceEnter: () => {
      isFound = true;
    },
  });
  return isFound;
}

/** Calls what it is given with every node of a syntax tree. */
function walk(node: unknown, visit: (node: Readonly<Record<string, unknown>>) => void): void {
  if (Array.isArray(node)) for (const one of node) walk(one, visit);
  if (typeof node !== "object" || node === null || Array.isArray(node)) return;
  const fields = Object.fromEntries(Object.entries(node));
  visit(fields);
  for (const field of Object.values(fields)) walk(field, visit);
}

async function patternsOf(path: string, text: string): Promise<readonly Pattern[]> {
  const found: Pattern[] = [];
  const lang = path.endsWith("x") ? "tsx" : "ts";
  walk(await parseAstAsync(text, { lang }), ({ type, regex }) => {
    if (type !== "Literal" || typeof regex !== "object" || regex === null) return;
    const { pattern, flags } = Object.fromEntries(Object.entries(regex));
    found.push({ path, source: String(pattern), flags: String(flags) });
  });
  return found;
}

test("the analysis finds what takes the square of a text's length, and lets the rest be", () => {
  const squares = [/\s*days?$/i, /^(.*?)\d*$/, /\d*(?:[.,]\d+)+/g, /([^\s=]+)\s*=/g, /^(a+)+$/];
  for (const { source, flags } of squares) {
    expect(faultsOf({ path: "", source, flags }), source).not.toEqual([]);
  }
  for (const { source, flags } of [/^\s*days/, /\d+(?:[.,]\d+)*/g, /[a-z]+/y]) {
    expect(faultsOf({ path: "", source, flags }), source).toEqual([]);
  }
  expect(hasWhatIsNotAnalysed({ path: "", source: "(?<!a)b+$", flags: "" })).toBe(true);
  expect(hasWhatIsNotAnalysed({ path: "", source: "a(?=b)", flags: "" })).toBe(false);
});

test("every pattern takes time in step with the text", async () => {
  const files = [...sourceFiles()];
  const patterns = (await Promise.all(files.map((file) => patternsOf(...file)))).flat();
  expect(patterns.length).toBeGreaterThan(100);
  const slow = patterns.flatMap((pattern) => {
    const faults = hasWhatIsNotAnalysed(pattern) ? ["not analysed"] : faultsOf(pattern);
    return faults.map((fault) => `${pattern.path}: /${pattern.source}/${pattern.flags} ${fault}`);
  });
  expect(slow).toEqual([]);
}, 60_000);

test("no pattern is put together while the program runs", () => {
  const made = [...sourceFiles()].filter(([, text]) => /\bRegExp\(/.test(text));
  expect(made.map(([path]) => path)).toEqual([]);
});
