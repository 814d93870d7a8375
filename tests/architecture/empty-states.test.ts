/**
 * Where there is nothing yet, the words say what to do next: what is shown as empty names a step, or
 * has the button for it beside it.
 */
import { expect, test } from "vitest";
import { type Node, isNode, nameOf, textsIn, treeOf, visit } from "./syntax.ts";
import { sourceFiles } from "./source-files.ts";
import { wordsImported, wordsOf } from "./words-led-to.ts";

/** What a step begins with, as words of an empty place say it. */
const STEP =
  /\b(?:add|begin|come back|draw|give|go|open|pick|place|put|read|select|take|tick|type|write)\b/i;

interface Empty {
  readonly path: string;
  readonly words: string;
  readonly hasButton: boolean;
}

function emptyPlaces(path: string, text: string): readonly Empty[] {
  const tree = treeOf(path, text);
  const words = wordsImported(path, tree);
  const found: Empty[] = [];
  visit(tree, (node) => {
    if (node.type !== "JSXElement" || !isNode(node.openingElement)) return;
    if (!isEmpty(node.openingElement.attributes) || !Array.isArray(node.children)) return;
    let hasButton = false;
    visit(node.children, (inner) => {
      if (inner.type === "JSXOpeningElement") {
        hasButton ||= /^(?:button|CommandButton)$/.test(nameOf(inner.name) ?? "");
      }
    });
    for (const child of node.children as readonly Node[]) {
      // Each of several words an expression may show stands for itself.
      for (const shown of isNode(child) ? wordsOf(child, words) : []) {
        found.push({ path, words: shown, hasButton });
      }
    }
  });
  return found;
}

function isEmpty(attributes: unknown): boolean {
  return (Array.isArray(attributes) ? attributes : []).some(
    (attribute: Node) =>
      nameOf(attribute.name) === "className" &&
      textsIn(attribute.value).some((text) => /\bregion-empty\b/.test(text)),
  );
}

test("every empty place says the next step", () => {
  const places = [...sourceFiles()]
    .filter(([path, text]) => path.endsWith(".tsx") && text.includes("region-empty"))
    .flatMap(([path, text]) => emptyPlaces(path, text));
  expect(places.length).toBeGreaterThan(14);
  expect(
    places
      .filter(({ words, hasButton }) => !hasButton && /[a-z]/i.test(words) && !STEP.test(words))
      .map(({ path, words }) => `${path}: "${words}"`),
  ).toEqual([]);
});
