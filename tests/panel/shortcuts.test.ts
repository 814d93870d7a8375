import { describe, expect, test } from "vitest";
import { type KeyPress, commandOf, keyList } from "../../src/panel/shortcuts.ts";
import { toolEntries } from "../../src/panel/tools.ts";

const press = (key: string, held: Partial<KeyPress> = {}): KeyPress => ({
  key,
  ctrlKey: false,
  metaKey: false,
  shiftKey: false,
  altKey: false,
  ...held,
});
const free = { isTyping: false, hasDraft: false, isDialogOpen: false, hasLetterKeys: true };

describe("undo, redo and save", () => {
  test("work with Ctrl and with Cmd", () => {
    for (const held of [{ ctrlKey: true }, { metaKey: true }]) {
      expect(commandOf(press("z", held), free)).toEqual({ kind: "undo" });
      expect(commandOf(press("Z", { ...held, shiftKey: true }), free)).toEqual({ kind: "redo" });
      expect(commandOf(press("y", held), free)).toEqual({ kind: "redo" });
      expect(commandOf(press("s", held), free)).toEqual({ kind: "save" });
    }
  });
  test("typing keeps its own undo, but a plan is saved from anywhere", () => {
    const typing = { ...free, isTyping: true, hasDraft: true };
    expect(commandOf(press("z", { ctrlKey: true }), typing)).toBeNull();
    expect(commandOf(press("s", { ctrlKey: true }), typing)).toEqual({ kind: "save" });
  });
});

test("in a field with nothing typed, undo is the plan's", () => {
  const resting = { ...free, isTyping: true };
  expect(commandOf(press("z", { ctrlKey: true }), resting)).toEqual({ kind: "undo" });
});

describe("letters", () => {
  test("pick tools by the printed character, upper or lower case of the layout", () => {
    for (const { key, name } of toolEntries) {
      expect(commandOf(press(key.toLowerCase()), free)).toEqual({ kind: "tool", tool: name });
    }
  });
  test("are text in a field, in a dialog and when switched off", () => {
    expect(commandOf(press("b"), { ...free, isTyping: true })).toBeNull();
    expect(commandOf(press("b"), { ...free, isDialogOpen: true })).toBeNull();
    expect(commandOf(press("b"), { ...free, hasLetterKeys: false })).toBeNull();
    expect(commandOf(press("?", { shiftKey: true }), { ...free, hasLetterKeys: false })).toBeNull();
  });
  test("with Ctrl or Alt belong to the browser", () => {
    expect(commandOf(press("b", { ctrlKey: true }), free)).toBeNull();
    expect(commandOf(press("p", { ctrlKey: true }), free)).toBeNull();
    expect(commandOf(press("b", { altKey: true }), free)).toBeNull();
  });
  test("no two tools share one", () => {
    expect(new Set(toolEntries.map((entry) => entry.key)).size).toBe(toolEntries.length);
  });
});

test("the list of keys names every tool", () => {
  const listed = keyList.flatMap(({ keys }) => keys.map(({ key }) => key));
  for (const { key } of toolEntries) expect(listed).toContain(key);
});
