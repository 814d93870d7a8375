/**
 * Turns the words of the program into a made-up language, for the test that no word stands outside
 * the words files: every letter gets an accent, every third letter stands twice, so that texts are
 * a third longer. In words files every text is turned; in the folders not yet done (not-yet-words.ts)
 * texts of JSX and literals that are prose. Ids, keys, classes and codes stay.
 */
import { type Plugin, parseSync } from "vite";
import { type Node, isNode, nameOf } from "../architecture/syntax.ts";
import { isNotDone } from "./not-yet-words.ts";

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

const WORDS_FILE = /\/src\/(?:.*[-/])?(?:words|texts)\.ts$|\/src\/core\/words\//;

/** Members of texts, lists and tables whose arguments are no words. */
const ASKS = new Set(
  "at endsWith get has includes indexOf localeCompare match padEnd padStart replace replaceAll split startsWith test toFixed".split(
    " ",
  ),
);
/** Properties that hold what the program goes by. */
const GOES_BY = new Set(
  "by dates ext how id key kind lang type unit value way what when".split(" "),
);
/** Attributes that are read or heard; those of other names are for the program. */
const SAID =
  /^(?:aria-(?:label|valuetext|roledescription)|alt|empty|heading|hint|label|legend|note|placeholder|submitLabel|title)$/;

interface Piece {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Finds the texts of a file and what they become. */
class Turning {
  readonly pieces: Piece[] = [];

  readonly #code: string;
  /** Whether only what is plainly prose is turned. */
  readonly #isProseOnly: boolean;

  constructor(code: string, isProseOnly: boolean) {
    this.#code = code;
    this.#isProseOnly = isProseOnly;
  }

  walk(node: unknown, isJsx = false): void {
    if (Array.isArray(node)) {
      for (const each of node) this.walk(each, isJsx);
      return;
    }
    if (!isNode(node) || !isEntered(node)) return;
    switch (node.type) {
      case "Literal":
        if (typeof node.value === "string") this.literal(node, node.value, isJsx);
        return;
      case "TemplateLiteral":
        this.template(node, isJsx);
        return;
      case "JSXText":
        this.put(Number(node.start), Number(node.end), String(node.raw ?? node.value));
        return;
      case "JSXAttribute":
        if (SAID.test(nameOf(node.name) ?? "")) this.walk(node.value, true);
        else if (isNode(node.value) && node.value.type === "JSXExpressionContainer") {
          if (nameOf(node.name) !== "className") this.walk(node.value, false);
        }
        return;
      case "SwitchCase":
        this.walk(node.consequent, isJsx);
        return;
      case "ConditionalExpression":
        this.walk([node.consequent, node.alternate], isJsx);
        return;
      case "LogicalExpression":
        this.walk([node.left, node.right], isJsx);
        return;
      case "Property":
        if (!GOES_BY.has(nameOf(node.key) ?? "")) this.walk(node.value, isJsx);
        return;
      case "CallExpression":
        this.call(node, isJsx);
        return;
      case "NewExpression":
        this.made(node, isJsx);
        return;
      case "MemberExpression":
        this.walk(node.object, isJsx);
        return;
      case "JSXExpressionContainer":
        this.walk(node.expression, true);
        return;
      default:
        for (const [key, child] of Object.entries(node)) {
          if (key !== "type") this.walk(child, node.type === "JSXElement");
        }
    }
  }

  /** Arguments of a question to a text or a table are no words. */
  private call(node: Node, isJsx: boolean): void {
    this.walk(node.callee, isJsx);
    const { callee } = node;
    const isQuestion =
      isNode(callee) &&
      callee.type === "MemberExpression" &&
      ASKS.has(nameOf(callee.property) ?? "");
    const args = Array.isArray(node.arguments) ? node.arguments : [];
    for (const argument of args) {
      if (isQuestion && isNode(argument) && argument.type === "Literal") continue;
      this.walk(argument, isJsx);
    }
  }

  /** Of `new Map([["key", "words"]])` the second of each; of `new Set`, `new Intl.X` nothing. */
  private made(node: Node, isJsx: boolean): void {
    if (nameOf(node.callee) !== "Map") return;
    const [list] = Array.isArray(node.arguments) ? node.arguments : [];
    const rows = isNode(list) && Array.isArray(list.elements) ? list.elements : [];
    for (const row of rows) {
      const [, value] = isNode(row) && Array.isArray(row.elements) ? row.elements : [];
      this.walk(value, isJsx);
    }
  }

  private literal(node: Node, value: string, isJsx: boolean): void {
    if (this.#isProseOnly && !isJsx && !isProse(value)) return;
    // Ids of sources and kinds: `rape-seed-shed`.
    if (/^[a-z0-9]+(?:-[a-z0-9]+)+$/.test(value)) return;
    this.put(
      Number(node.start) + 1,
      Number(node.end) - 1,
      this.#code.slice(Number(node.start) + 1, Number(node.end) - 1),
    );
  }

  private template(node: Node, isJsx: boolean): void {
    const quasis = Array.isArray(node.quasis) ? node.quasis : [];
    const texts = quasis.map(({ value }: { value: { raw: string } }) => value.raw);
    if (isJsx || !this.#isProseOnly || isProse(texts.join("x"))) {
      for (const [at, raw] of texts.entries()) {
        if (raw === "") continue;
        const start = this.#code.indexOf(raw, Number(quasis[at].start));
        this.put(start, start + raw.length, raw);
      }
    }
    this.walk(node.expressions, false);
  }

  private put(start: number, end: number, raw: string): void {
    // Escapes and entities stay what they are.
    const text = raw
      .split(/(\\u\{?[0-9A-Fa-f]+\}?|\\.|&\w+;)/)
      .map((part, at) => (at % 2 === 1 ? part : madeUp(part)))
      .join("");
    if (text !== raw) this.pieces.push({ start, end, text });
  }
}

/** Imports, types and what is compared hold no words. */
function isEntered({ type }: Node): boolean {
  if (typeof type !== "string") return true;
  if (/^(?:Import|ExportAll|BinaryExpression)/.test(type)) return false;
  return !type.startsWith("TS") || /^TS(?:As|Satisfies|NonNull)/.test(type);
}

/** Words with spaces between them that begin large or hold a small word. */
function isProse(text: string): boolean {
  return (
    /[A-Za-z]{2,}[,.:;]? [a-z]{2,}|[A-Z][a-z]+ [A-Za-z]/.test(text) &&
    !/[{};<>=]|^[Mm][\d.]/.test(text)
  );
}

/** What a file's text becomes. */
export function turned(path: string, code: string): string {
  const isWords = WORDS_FILE.test(path);
  if (!isWords && !isNotDone(path)) return code;
  const { program } = parseSync(path, code);
  const turning = new Turning(code, !isWords);
  turning.walk(program);
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
