/**
 * What a reader sees is written in words files (`words.ts`, `*-words.ts`), never in components, so
 * that all words can be read, and turned into another language, in one place. No text of JSX and no
 * label, title, hint or placeholder stands in a component as a literal.
 */
import { expect, test } from "vitest";
import { type Node, isNode, nameOf, visit, treeOf } from "./syntax.ts";
import { idsIn, wordsInModule } from "./module-words.ts";
import { sourceFiles } from "./source-files.ts";
import { isWordsFile } from "../support/made-up-words.ts";
import {
  COMPONENTS_NOT_DONE as NOT_DONE,
  CORE_NOT_DONE,
  PLURALS_NOT_DONE,
  QUOTED,
} from "../support/not-yet-words.ts";

/** Attributes whose text is read or heard. */
const SAID: ReadonlySet<string> = new Set([
  "aria-label",
  "aria-valuetext",
  "aria-roledescription",
  "alt",
  "heading",
  "hint",
  "label",
  "legend",
  "placeholder",
  "submitLabel",
  "title",
]);

/** A letter or two stand for a unit, a key or a sign: `x`, `g`, `°C`. */
const WORD = /\p{L}{3,}/u;

/** Texts among the nodes that an expression can give: its own, and those it chooses between. */
function givenTexts(node: unknown): readonly string[] {
  if (!isNode(node)) return [];
  switch (node.type) {
    case "Literal":
      return typeof node.value === "string" ? [node.value] : [];
    case "TemplateLiteral":
      return Array.isArray(node.quasis)
        ? node.quasis.map(({ value }: { value: { cooked: string } }) => value.cooked)
        : [];
    case "JSXExpressionContainer":
    case "ParenthesizedExpression":
      return givenTexts(node.expression);
    case "ConditionalExpression":
      return [...givenTexts(node.consequent), ...givenTexts(node.alternate)];
    case "LogicalExpression":
      return [...givenTexts(node.left), ...givenTexts(node.right)];
    default:
      return [];
  }
}

function textsIn(path: string, text: string): readonly string[] {
  const texts: string[] = [];
  const look = (node: Node) => {
    if (node.type === "JSXText" && typeof node.value === "string") texts.push(node.value);
    if (node.type === "JSXAttribute" && SAID.has(nameOf(node.name) ?? "")) {
      texts.push(...givenTexts(node.value));
    }
    if (node.type === "JSXElement" || node.type === "JSXFragment") {
      const children = Array.isArray(node.children) ? node.children : [];
      for (const child of children) {
        if (isNode(child) && child.type === "JSXExpressionContainer") {
          texts.push(...givenTexts(child));
        }
      }
    }
  };
  visit(treeOf(path, text), look);
  return texts.map((each) => each.trim()).filter((each) => WORD.test(each));
}

const found = [...sourceFiles()]
  .filter(([path]) => path.endsWith(".tsx"))
  .map(([path, text]) => ({ path, texts: textsIn(path, text) }));

const componentOf = (path: string) => path.slice("src/".length);

test("no text stands in a component", () => {
  const wrong = found
    .filter(({ path }) => !NOT_DONE.includes(componentOf(path)))
    .flatMap(({ path, texts }) => texts.map((text) => `${path}: ${text}`));
  expect(wrong).toEqual([]);
});

test("a component without texts leaves the list of those to be done", () => {
  const withTexts = new Set(
    found.filter(({ texts }) => texts.length > 0).map(({ path }) => componentOf(path)),
  );
  expect(NOT_DONE.filter((path) => !withTexts.has(path))).toEqual([]);
});

const trees = [...sourceFiles()].map(([path, text]) => ({ path, tree: treeOf(path, text) }));
const IDS = new Set(trees.flatMap(({ tree }) => idsIn(tree)));

test("no text stands in a module of app, panel, canvas or store", () => {
  const modules = trees.filter(
    ({ path }) => /^src\/(?:app|panel|canvas|store)\//.test(path) && !isWordsFile(path),
  );
  expect(modules.length).toBeGreaterThan(500);
  const wrong = modules.flatMap(({ path, tree }) =>
    wordsInModule(tree, IDS).map((words) => `${path}: ${words}`),
  );
  expect(wrong).toEqual([]);
});

test.each([
  ['announce("Nothing snaps now.")', ["Nothing snaps now."]],
  ["commit(move(id, `Move ${names}`))", ["Move"]],
  ['const undo = { name: "Undo", run }', ["Undo"]],
  ["const label = `${count} beds`", ["beds"]],
  ['context.fillText("sides cross each other", x, y)', ["sides cross each other"]],
  ['if (state === "in stock") throw new Error("No such lot here")', []],
  ['const state = "in stock"; press("Escape")', []],
])("%s says %s", (code, texts) => {
  expect(wordsInModule(treeOf("a.ts", code), new Set(["in stock"]))).toEqual(texts);
});

test.each([
  ["<p>Not saved</p>", ["Not saved"]],
  ['<Field label="Name" id="name" />', ["Name"]],
  ["<Field label={isOn ? `Move ${name}` : texts.move} />", ["Move"]],
  ['<p>{isOpen ? "Hide" : texts.show}{count > 0 && " more"}</p>', ["Hide", "more"]],
  ['<p className="soft">{texts.move(name)} × 3 m</p>', []],
])("%s holds the texts %s", (jsx, texts) => {
  expect(textsIn("a.tsx", `const a = ${jsx};`)).toEqual(texts);
});

/** Texts chosen between by whether a number is one: `count === 1 ? "bed" : "beds"`. */
function pluralsIn(path: string, text: string): readonly string[] {
  const plurals: string[] = [];
  visit(treeOf(path, text), (node) => {
    if (node.type !== "ConditionalExpression" || !isWhetherOne(node.test)) return;
    const texts = [...givenTexts(node.consequent), ...givenTexts(node.alternate)];
    if (texts.some((each) => /\p{L}/u.test(each))) plurals.push(texts.join(" / "));
  });
  return plurals;
}

function isWhetherOne(node: unknown): boolean {
  if (!isNode(node) || node.type !== "BinaryExpression") return false;
  const { left, right } = node;
  if (![left, right].some((side) => isNode(side) && side.type === "Literal" && side.value === 1)) {
    return false;
  }
  return node.operator === "===" || node.operator === "!==";
}

const withPlurals = [...sourceFiles()]
  .map(([path, text]) => ({ path, plurals: pluralsIn(path, text) }))
  .filter(({ plurals }) => plurals.length > 0);

test("plural forms are chosen by the rules of the language (core/words/plurals.ts), not by `=== 1`", () => {
  const wrong = withPlurals
    .filter(({ path }) => !PLURALS_NOT_DONE.some((part) => path.startsWith(`src/${part}`)))
    .flatMap(({ path, plurals }) => plurals.map((each) => `${path}: ${each}`));
  expect(wrong).toEqual([]);
});

test("a folder without such plurals leaves the list of those to be done", () => {
  const isLeft = (part: string) => withPlurals.some(({ path }) => path.startsWith(`src/${part}`));
  expect(PLURALS_NOT_DONE.filter((part) => !isLeft(part))).toEqual([]);
});

test.each([
  ['beds === 1 ? "1 bed" : `${beds} beds`', ["1 bed /  /  beds"]],
  ['`${beds} bed${beds === 1 ? "" : "s"}`', [" / s"]],
  ["pages > 1 ? `page ${page}` : title", []],
  ["step === 1 ? first : rest", []],
  ['formOf(beds, { one: "bed", other: "beds" })', []],
])("%s chooses between %s", (code, plurals) => {
  expect(pluralsIn("a.ts", `const a = ${code};`)).toEqual(plurals);
});

/** Calls whose texts nobody reads: what can only be a fault of the program, and lists in one text. */
const NOT_SAID: ReadonlySet<string> = new Set(["Error", "RangeError", "TypeError"]);

/** Whether a text reads like something said: several words, or one with a large first letter. */
function isSaid(text: string, isTemplate: boolean): boolean {
  const words = text.match(/\p{L}{2,}/gu) ?? [];
  if (!words.some((word) => word.length > 2)) return false;
  const isSpaced = /\s/.test(isTemplate ? text : text.trim());
  if (isTemplate) return isSpaced && !text.startsWith("<");
  return isSpaced ? /^\p{Lu}/u.test(text) || words.length > 3 : /^\p{Lu}\p{Ll}{2,}$/u.test(text);
}

/** Texts of a module that a reader could be told, left out what is only compared or thrown. */
function saidIn(path: string, text: string): readonly string[] {
  const said: string[] = [];
  visit(treeOf(path, text), (node) => {
    const type = String(node.type);
    if (/^(?:Import|ExportAll|BinaryExpression|TSLiteralType)/.test(type)) return false;
    if (type === "NewExpression" && NOT_SAID.has(nameOf(node.callee) ?? "")) return false;
    // A list of ids, written as one text.
    if (type === "MemberExpression" && nameOf(node.property) === "split") return false;
    if (type === "Literal" && typeof node.value === "string" && isSaid(node.value, false)) {
      said.push(node.value);
    }
    if (type === "TemplateLiteral") {
      const whole = givenTexts(node).join("{}");
      if (isSaid(whole, true)) said.push(whole);
    }
    return undefined;
  });
  return said;
}

const withTexts = [...sourceFiles()]
  .filter(([path]) => /^src\/(?:core|cli)\//.test(path) && !isWordsFile(path))
  .map(([path, text]) => ({ path: path.slice("src/".length), said: saidIn(path, text) }))
  .filter(({ said }) => said.length > 0);

test("what core and the command line say stands in words files", () => {
  const listed = new Set([...QUOTED, ...CORE_NOT_DONE]);
  const wrong = withTexts
    .filter(({ path }) => !listed.has(path))
    .flatMap(({ path, said }) => said.map((each) => `${path}: ${each}`));
  expect(wrong).toEqual([]);
});

test("a file of core without texts leaves the lists", () => {
  const paths = new Set(withTexts.map(({ path }) => path));
  expect([...QUOTED, ...CORE_NOT_DONE].filter((path) => !paths.has(path))).toEqual([]);
});

test.each([
  ['say("No date is known")', ["No date is known"]],
  ['row({ title: "Notes" })', ["Notes"]],
  ["say(`${code} is locked`)", ["{} is locked"]],
  ['say("it lies on no bed at all")', ["it lies on no bed at all"]],
  ['is("not for seed")', []],
  ['throw new Error("This cannot be: no layout")', []],
  ['"beet chard sugar-beet fodder-beet".split(" ")', []],
  ['kind === "Not for seed"', []],
  ['`<path d="${d}" fill="none"/>`', []],
])("%s says %s", (code, said) => {
  expect(saidIn("a.ts", `const a = () => { ${code}; };`)).toEqual(said);
});
