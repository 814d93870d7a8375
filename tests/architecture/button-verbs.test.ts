/**
 * Buttons say what they do with one of eight verbs where one fits: Apply, Add, Delete, Clear, Reset,
 * Cancel, Close, Try. Their synonyms are not used, so that one thing has one name. Read here: what
 * stands in a button, a command or an item of a menu, what a screen reader hears of it, and names of
 * commands; words that come from a words file are looked up there.
 */
import { expect, test } from "vitest";
import { type Node, isNode, nameOf, textsIn, treeOf, visit } from "./syntax.ts";
import { sourceFiles } from "./source-files.ts";
import { wordsImported, wordsOf } from "./words-led-to.ts";

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

const BUTTON = /^(?:button|CommandButton|CommandItem|MenuItem|Item)$/;

/** Texts of buttons and commands; of those that look like links alone, if asked so. */
function buttonTexts(path: string, text: string, isLink = false): readonly string[] {
  const tree = treeOf(path, text);
  const words = wordsImported(path, tree);
  const texts: string[] = [];
  visit(tree, (node) => {
    if (node.type === "JSXElement" && isNode(node.openingElement)) {
      const { name, attributes } = node.openingElement;
      if (!BUTTON.test(nameOf(name) ?? "") || !Array.isArray(node.children)) return;
      if (isLink && !looksLikeLink(attributes)) return;
      for (const child of node.children) texts.push(...wordsOf(child, words));
      for (const attribute of Array.isArray(attributes) ? attributes : []) {
        if (nameOf(attribute.name) === "aria-label") texts.push(...wordsOf(attribute.value, words));
      }
    }
    if (isLink || node.type !== "Property" || !isNode(node.value)) return;
    const isCommand = /\/commands\.ts$|-commands\.ts$/.test(path) && nameOf(node.key) === "name";
    if (isCommand || nameOf(node.key) === "submitLabel") texts.push(...wordsOf(node.value, words));
  });
  return texts;
}

function looksLikeLink(attributes: unknown): boolean {
  return (Array.isArray(attributes) ? attributes : []).some(
    (attribute: Node) =>
      nameOf(attribute.name) === "className" &&
      textsIn(attribute.value).some((text) => /\blink\b/.test(text)),
  );
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

/** What is done on the spot begins so; with dots behind it, or a name, it goes to where it is done. */
const DOING =
  /^(?:Apply|Add|Delete|Clear|Reset|Cancel|Try|Change|Correct|Strike|Move|Play|Stop|Step|Make|Draw|Select|Number|Unlock|Enter)\b(?!.*\.\.\.$)/;

test("what goes somewhere looks like a link, what does something like a button", () => {
  const links = [...files]
    .filter(([path, text]) => path.endsWith(".tsx") && /\blink\b/.test(text))
    .flatMap(([path, text]) => buttonTexts(path, text, true).map((words) => ({ path, words })));
  expect(links.length).toBeGreaterThan(20);
  expect(
    links.filter(({ words }) => DOING.test(words)).map(({ path, words }) => `${path}: "${words}"`),
  ).toEqual([]);
});
