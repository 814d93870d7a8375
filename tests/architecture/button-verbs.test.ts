/**
 * Buttons say what they do with one of eight verbs where one fits: Apply, Add, Delete, Clear, Reset,
 * Cancel, Close, Try. Their synonyms are not used, so that one thing has one name. Read here: what
 * stands in a button, a command or an item of a menu, what a screen reader hears of it, and names of
 * commands; words that come from a words file are looked up there.
 */
import { posix } from "node:path";
import { expect, test } from "vitest";
import { type Node, isNode, nameOf, textsIn, treeOf, visit } from "./syntax.ts";
import { sourceFiles } from "./source-files.ts";

const VERBS = ["Apply", "Add", "Delete", "Clear", "Reset", "Cancel", "Close", "Try"] as const;

/** How a button must not begin, and which of the eight it is. */
const SYNONYMS: ReadonlyMap<string, (typeof VERBS)[number]> = new Map([
  ["Keep", "Apply"],
  ["Confirm", "Apply"],
  ["Submit", "Apply"],
  ["OK", "Apply"],
  ["Okay", "Apply"],
  ["Done", "Apply"],
  ["Do it", "Apply"],
  ["Bring", "Add"],
  ["Insert", "Add"],
  ["Put it", "Add"],
  ["Write", "Add"],
  ["Remove", "Delete"],
  ["Discard", "Delete"],
  ["Erase", "Delete"],
  ["Take away", "Delete"],
  ["Take it away", "Delete"],
  ["Throw", "Delete"],
  ["Put back", "Reset"],
  ["Put all", "Reset"],
  ["Take back", "Reset"],
  ["Restore", "Reset"],
  ["Revert", "Reset"],
  ["Abort", "Cancel"],
  ["Leave", "Cancel"],
  ["Discard changes", "Cancel"],
  ["Paste nothing", "Cancel"],
  ["Dismiss", "Close"],
  ["Fold", "Close"],
  ["Put away", "Close"],
  ["Test it", "Try"],
]);

/** What begins so and is something else. */
const OTHER_MEANING: ReadonlySet<string> = new Set([
  // Goes back to the plan from the walk through the garden.
  "Leave the walk",
  // What becomes of the open plan: it stays where it is kept, or it does not.
  "Keep it in this browser",
]);

const files = sourceFiles();

/** Files of words by the local names a component imports from them. */
function wordsImported(path: string, tree: Node): ReadonlyMap<string, Node> {
  const found = new Map<string, Node>();
  visit(tree, (node) => {
    if (node.type !== "ImportDeclaration" || !isNode(node.source)) return;
    const target = posix.join(posix.dirname(path), String(node.source.value));
    const text = /words|texts/.test(target) ? files.get(target) : undefined;
    if (text === undefined || !Array.isArray(node.specifiers)) return;
    const words = treeOf(target, text);
    for (const specifier of node.specifiers) {
      const [local, name] = [nameOf(specifier.local), nameOf(specifier.imported)];
      // All of the file under one name: `import * as texts`.
      if (local !== null && name === null) found.set(local, words);
      const declared = name === null ? null : declarationOf(words, name);
      if (local !== null && declared) found.set(local, declared);
    }
  });
  return found;
}

/** What stands under an exported name. */
function declarationOf(tree: Node, name: string): Node | null {
  let found: Node | null = null;
  visit(tree, (node) => {
    const isDeclared =
      node.type === "FunctionDeclaration" ||
      node.type === "VariableDeclarator" ||
      node.type === "Property";
    if (isDeclared && (nameOf(node.id) === name || nameOf(node.key) === name)) found ??= node;
  });
  return found;
}

/** Texts of a button: its own, and those its names lead to in words files. */
function wordsOf(node: Node, words: ReadonlyMap<string, Node>): readonly string[] {
  const led: string[] = [];
  visit(node, (inner) => {
    if (inner.type === "MemberExpression") {
      const holder = words.get(nameOf(inner.object) ?? "");
      const property = holder && declarationOf(holder, nameOf(inner.property) ?? "");
      if (property) led.push(...textsIn(property.value ?? property.init));
      return false;
    }
    const declared = inner.type === "Identifier" ? words.get(nameOf(inner) ?? "") : undefined;
    if (declared) led.push(...textsIn(declared.init ?? declared.body));
    return true;
  });
  return [...textsIn(node), ...led];
}

const BUTTON = /^(?:button|CommandButton|CommandItem|MenuItem|Item)$/;

function buttonTexts(path: string, text: string): readonly string[] {
  const tree = treeOf(path, text);
  const words = wordsImported(path, tree);
  const texts: string[] = [];
  visit(tree, (node) => {
    if (node.type === "JSXElement" && isNode(node.openingElement)) {
      const { name, attributes } = node.openingElement;
      if (!BUTTON.test(nameOf(name) ?? "") || !Array.isArray(node.children)) return;
      for (const child of node.children) texts.push(...wordsOf(child, words));
      for (const attribute of Array.isArray(attributes) ? attributes : []) {
        if (nameOf(attribute.name) === "aria-label") texts.push(...wordsOf(attribute.value, words));
      }
    }
    if (node.type !== "Property" || !isNode(node.value)) return;
    const isCommand = /\/commands\.ts$|-commands\.ts$/.test(path) && nameOf(node.key) === "name";
    if (isCommand || nameOf(node.key) === "submitLabel") texts.push(...wordsOf(node.value, words));
  });
  return texts;
}

const buttons = [...files]
  .filter(([path]) => /^src\/(?:panel|canvas|app)\//.test(path))
  .flatMap(([path, text]) => buttonTexts(path, text).map((words) => ({ path, words })));

test("buttons and commands are found in components and in words files", () => {
  expect(buttons.length).toBeGreaterThan(400);
  for (const verb of VERBS) {
    const users = buttons.filter(({ words }) => words.startsWith(verb));
    expect(users.length, verb).toBeGreaterThan(0);
  }
});

test("no button says a synonym of the eight verbs", () => {
  const wrong = buttons.flatMap(({ path, words }) => {
    if (OTHER_MEANING.has(words)) return [];
    const found = [...SYNONYMS].find(
      ([synonym]) => words === synonym || words.startsWith(`${synonym} `),
    );
    return found ? [`${path}: "${words}" is ${found[1]}`] : [];
  });
  expect(wrong).toEqual([]);
});
