/**
 * Turns the words of the program into a made-up language, for the test that no word stands outside
 * the words files: every letter gets an accent, every third letter stands twice, so that texts are
 * a third longer. Every text of the words files is turned; ids, keys and what is compared stay.
 */
import type { Plugin } from "vite";
import { type Node, isNode, nameOf, treeOf } from "../architecture/syntax.ts";

/** A letter with an accent for each plain one: all in Latin Extended, so that most type has them. */
const PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
const ACCENTED = "àḃçďéḟğĥîĵķĺṁñôṗǫřšťûṽŵẋýžÀḂÇĎÉḞĞĤÎĴĶĹṀÑÔṖǪŘŠŤÛṼŴẊÝŽ";
const LETTERS: ReadonlyMap<string, string> = new Map(
  Array.from(PLAIN).map((letter, at) => [letter, ACCENTED.charAt(at)]),
);

/** The made-up word for each word; what stands in braces or is one letter (a unit, a key) stays. */
export function madeUp(text: string): string {
  return text.replace(/\{[^{}]*\}|[A-Za-z]{2,}/g, (word) =>
    word.startsWith("{")
      ? word
      : Array.from(word)
          .map((letter, at) => {
            const accented = LETTERS.get(letter) ?? letter;
            return at % 3 === 2 ? `${accented}${accented.toLowerCase()}` : accented;
          })
          .join(""),
  );
}

/** `words.ts`, `*-words.ts`, `*-texts.ts`, and all of core/words. */
export function isWordsFile(path: string): boolean {
  return /\bsrc\/(?:.*[-/])?(?:words|texts)\.ts$|\bsrc\/core\/words\//.test(path);
}

/** Questions to texts, lists and tables, whose arguments are no words. */
const ASKS = new Set(
  "at citedAs countPairs endsWith formatRequired get groundCited has includes indexOf localeCompare match padEnd padStart replace replaceAll split startsWith test toFixed".split(
    " ",
  ),
);
/** Properties whose text, where it begins small, is what the program goes by. */
const GOES_BY = new Set("dates ext id key kind lang unit value way what".split(" "));
interface Piece {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Finds the texts of a words file and what they become. */
class Turning {
  readonly pieces: Piece[] = [];
  readonly #code: string;

  constructor(code: string) {
    this.#code = code;
  }

  walk(node: unknown): void {
    if (Array.isArray(node)) {
      for (const each of node) this.walk(each);
      return;
    }
    if (!isNode(node) || !isEntered(node)) return;
    switch (node.type) {
      case "Literal":
        if (typeof node.value === "string") this.#literal(node, node.value);
        return;
      case "TemplateLiteral":
        this.#template(node);
        return;
      case "SwitchCase":
        this.walk(node.consequent);
        return;
      case "ConditionalExpression":
        this.walk([node.consequent, node.alternate]);
        return;
      case "Property":
        if (!isGoneBy(node)) this.walk(node.value);
        return;
      case "CallExpression":
        this.#call(node);
        return;
      case "NewExpression":
        this.#made(node);
        return;
      case "MemberExpression":
        this.walk(node.object);
        return;
      default:
        for (const [key, child] of Object.entries(node)) if (key !== "type") this.walk(child);
    }
  }

  /** Arguments of a question to a text or a table are no words. */
  #call(node: Node): void {
    this.walk(node.callee);
    const { callee } = node;
    const asked = isNode(callee) && callee.type === "MemberExpression" ? callee.property : callee;
    const isQuestion = ASKS.has(nameOf(asked) ?? "");
    for (const argument of Array.isArray(node.arguments) ? node.arguments : []) {
      if (!isQuestion || !isNode(argument) || argument.type !== "Literal") this.walk(argument);
    }
  }

  /** Of `new Map([["key", "words"]])` the second of each; of `new Set`, `new Intl.X` nothing. */
  #made(node: Node): void {
    if (nameOf(node.callee) !== "Map") return;
    const [list] = Array.isArray(node.arguments) ? node.arguments : [];
    for (const row of isNode(list) && Array.isArray(list.elements) ? list.elements : []) {
      const [, value] = isNode(row) && Array.isArray(row.elements) ? row.elements : [];
      this.walk(value);
    }
  }

  #literal(node: Node, value: string): void {
    // Ids of sources and kinds, and languages: `rape-seed-shed`, `en-GB`.
    if (/^[a-z0-9]+(?:-[a-z0-9]+)+$|^[a-z]{2}-[A-Z]{2}$/.test(value)) return;
    const [start, end] = [Number(node.start) + 1, Number(node.end) - 1];
    this.#put(start, end, this.#code.slice(start, end));
  }

  #template(node: Node): void {
    for (const quasi of Array.isArray(node.quasis) ? node.quasis : []) {
      const { raw } = quasi.value as { readonly raw: string };
      const start = this.#code.indexOf(raw, Number(quasi.start));
      if (raw !== "") this.#put(start, start + raw.length, raw);
    }
    this.walk(node.expressions);
  }

  #put(start: number, end: number, raw: string): void {
    // Escapes stay what they are.
    const text = raw
      .split(/(\\u\{?[0-9A-Fa-f]+\}?|\\.)/)
      .map((part, at) => (at % 2 === 1 ? part : madeUp(part)))
      .join("");
    if (text !== raw) this.pieces.push({ start, end, text });
  }
}

/** `value: "cage"`, but neither `what: "What"` nor a function that makes words. */
function isGoneBy({ key, value }: Node): boolean {
  const text = isNode(value) && value.type === "Literal" ? value.value : null;
  return GOES_BY.has(nameOf(key) ?? "") && typeof text === "string" && /^[a-z]/.test(text);
}

/** Imports, types and what is compared hold no words. */
function isEntered({ type }: Node): boolean {
  if (typeof type !== "string") return true;
  if (/^(?:Import|ExportAll|BinaryExpression)/.test(type)) return false;
  return !type.startsWith("TS") || /^TS(?:As|Satisfies|NonNull)/.test(type);
}

/** What a file's text becomes; any other than a words file stays. */
export function turned(path: string, code: string): string {
  if (!isWordsFile(path)) return code;
  const turning = new Turning(code);
  turning.walk(treeOf(path, code));
  let text = code;
  for (const { start, end, text: next } of turning.pieces.sort((a, b) => b.start - a.start)) {
    text = `${text.slice(0, start)}${next}${text.slice(end)}`;
  }
  return text;
}

export function madeUpWords(): Plugin {
  return {
    name: "made-up-words",
    enforce: "pre",
    transform: (code, id) => {
      const [path = ""] = id.split("?");
      if (!/\/src\/.*\.tsx?$/.test(path) || id.includes("?raw")) return null;
      const next = turned(path, code);
      return next === code ? null : { code: next, map: null };
    },
  };
}
