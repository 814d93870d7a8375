import { describe, expect, test, vi } from "vitest";
import {
  type CommandId,
  allCommands,
  commandById,
} from "../../../src/panel/window/all-commands.ts";
import { whyNot } from "../../../src/panel/commands/command.ts";
import { commandNow } from "../../../src/panel/state/plan-actions.ts";
import { useOwnKeys } from "../../../src/panel/commands/own-keys.ts";
import {
  type KeyPress,
  chordText,
  commandOf,
  holderOf,
  keyOf,
  keysText,
  pressedChord,
} from "../../../src/panel/commands/shortcuts.ts";
import { toolEntries } from "../../../src/panel/window/tools.ts";

// The theme is read when its module is loaded, before anything of a test runs.
vi.hoisted(() => {
  vi.stubGlobal("matchMedia", () => ({ matches: false, addEventListener: () => undefined }));
  vi.stubGlobal("document", { documentElement: { dataset: {} } });
});

const press = (key: string, held: Partial<KeyPress> = {}): KeyPress => ({
  key,
  code: "",
  ctrlKey: false,
  metaKey: false,
  shiftKey: false,
  altKey: false,
  ...held,
});
const free = {
  isTyping: false,
  hasDraft: false,
  isDialogOpen: false,
  hasLetterKeys: true,
  isOnSheet: false,
};
const idOf = (pressed: KeyPress, situation = free) =>
  commandOf(allCommands, pressed, situation)?.id;

describe("undo, redo and save", () => {
  test("work with Ctrl and with Cmd", () => {
    for (const held of [{ ctrlKey: true }, { metaKey: true }]) {
      expect(idOf(press("z", held))).toBe("undo");
      expect(idOf(press("Z", { ...held, shiftKey: true }))).toBe("redo");
      expect(idOf(press("y", held))).toBe("redo");
      expect(idOf(press("s", held))).toBe("save-plan");
    }
  });
  test("typing keeps its own undo, but a plan is saved from anywhere", () => {
    const typing = { ...free, isTyping: true, hasDraft: true };
    expect(idOf(press("z", { ctrlKey: true }), typing)).toBeUndefined();
    expect(idOf(press("s", { ctrlKey: true }), typing)).toBe("save-plan");
  });
  test("in a field with nothing typed, undo is the plan's", () => {
    expect(idOf(press("z", { ctrlKey: true }), { ...free, isTyping: true })).toBe("undo");
  });
});

describe("text keys", () => {
  test("select all, delete and the like are a field's own", () => {
    const typing = { ...free, isTyping: true };
    for (const pressed of [
      press("a", { ctrlKey: true }),
      press("Delete"),
      press("F2"),
      press("/"),
      press("L", { shiftKey: true }),
    ]) {
      expect(idOf(pressed)).toBeDefined();
      expect(idOf(pressed, typing)).toBeUndefined();
    }
  });
  test("copy, cut and paste come as the browser's own events", () => {
    for (const key of ["c", "x", "v"]) {
      expect(idOf(press(key, { ctrlKey: true }))).toBeUndefined();
    }
  });
});

describe("keys of the sheet", () => {
  const onSheet = { ...free, isOnSheet: true, hasLetterKeys: false };
  test("work while it has the focus, whether or not letters are keys", () => {
    const ids = ["+", "=", "-", "0", "Backspace"].map((key) => idOf(press(key), onSheet));
    expect(ids).toEqual(["zoom-in", "zoom-in", "zoom-out", "fit-all", "delete"]);
  });
  test("mean nothing elsewhere", () => {
    for (const key of ["+", "=", "-", "0", "Backspace"]) expect(idOf(press(key))).toBeUndefined();
    expect(idOf(press("Delete"))).toBe("delete");
  });
});

describe("letters", () => {
  test("pick tools by the printed character, upper or lower case of the layout", () => {
    for (const { key, name } of toolEntries) {
      expect(idOf(press(key.toLowerCase()))).toBe(`tool-${name}`);
    }
  });
  test("are text in a field, in a dialog and when switched off", () => {
    expect(idOf(press("b"), { ...free, isTyping: true })).toBeUndefined();
    expect(idOf(press("b"), { ...free, isDialogOpen: true })).toBeUndefined();
    expect(idOf(press("b"), { ...free, hasLetterKeys: false })).toBeUndefined();
    const question = press("?", { shiftKey: true });
    expect(idOf(question)).toBe("keys");
    expect(idOf(question, { ...free, hasLetterKeys: false })).toBeUndefined();
  });
  test("with Ctrl or Alt belong to the browser", () => {
    expect(idOf(press("b", { ctrlKey: true }))).toBeUndefined();
    expect(idOf(press("p", { ctrlKey: true }))).toBeUndefined();
    expect(idOf(press("b", { altKey: true }))).toBeUndefined();
  });
});

// Characters of the layouts as the operating systems print them (common practice).
describe("on other keyboards", () => {
  test.each([
    ["German, Z where Y is", { key: "z", code: "KeyY" }, "z"],
    ["French, A where Q is", { key: "a", code: "KeyQ" }, "a"],
    ["Dvorak, a sign where Q is", { key: "'", code: "KeyQ" }, "'"],
    ["French, an accented letter on a digit", { key: "é", code: "Digit2" }, "é"],
    ["Russian", { key: "я", code: "KeyZ" }, "z"],
    ["Greek", { key: "ω", code: "KeyV" }, "v"],
    ["Arabic", { key: "ئ", code: "KeyZ" }, "z"],
    ["Japanese in kana", { key: "つ", code: "KeyZ" }, "z"],
  ])("%s", (_, pressed, key) => {
    expect(keyOf(pressed)).toBe(key);
  });
  test("undo is where the layout prints it", () => {
    expect(idOf(press("я", { code: "KeyZ", ctrlKey: true }))).toBe("undo");
    expect(idOf(press("z", { code: "KeyY", ctrlKey: true }))).toBe("undo");
    expect(idOf(press("w", { code: "KeyZ", ctrlKey: true }))).toBeUndefined();
  });
});

describe("the commands", () => {
  test("no two have one id, one name or one key", () => {
    const keys = allCommands.flatMap((command) => (command.keys ?? []).map(chordText));
    for (const list of [
      allCommands.map(({ id }) => id),
      allCommands.map(({ name }) => name),
      keys,
    ]) {
      expect(list.filter((entry, index) => list.indexOf(entry) !== index)).toEqual([]);
    }
  });
  test("whether they can be used is told without any finding being counted", () => {
    // It is asked on each frame of a drag; where hundreds move, counting takes four frames.
    const refuse = () => {
      throw new Error("findings were asked for");
    };
    const result = { ...commandNow().result };
    for (const list of ["counts", "findings", "accepted", "byCheck"]) {
      Object.defineProperty(result, list, { get: refuse });
    }
    const selections = [[], ["one"], ["one", "two"]];
    for (const selection of selections) {
      const now = { ...commandNow(), result, selection };
      expect(allCommands.map((command) => typeof whyNot(command, now))).not.toContain("undefined");
    }
  });
  test("their keys are written out", () => {
    expect(keysText(commandById("redo"))).toBe("Ctrl or Cmd + Shift + Z, Ctrl or Cmd + Y");
    expect(keysText(commandById("delete"))).toBe("Delete, Backspace");

    expect(() => commandById("no such thing" as CommandId)).toThrow("no such thing");
  });
});

describe("keys of one's own", () => {
  test("take the place of the given ones until they are forgotten", () => {
    const chord = pressedChord(press("я", { code: "KeyZ", ctrlKey: true, shiftKey: true }));
    expect(chord).toEqual({ key: "z", isCommand: true, isShift: true });
    const letter = pressedChord(press("J"));
    if (!chord || !letter) throw new Error("both are whole chords");
    expect(holderOf(allCommands, chord, "duplicate")?.id).toBe("redo");
    expect(holderOf(allCommands, chord, "redo")).toBeUndefined();
    expect(holderOf(allCommands, letter, "duplicate")).toBeUndefined();
    useOwnKeys.getState().setKeys("duplicate", letter);
    expect(idOf(press("j"))).toBe("duplicate");
    expect(idOf(press("d", { ctrlKey: true }))).toBeUndefined();
    expect(keysText(commandById("duplicate"))).toBe("J");
    useOwnKeys.getState().forgetKeys();
    expect(idOf(press("d", { ctrlKey: true }))).toBe("duplicate");
  });
  test("are no keys while only Ctrl or Shift is down; a sign is a sign whatever it takes", () => {
    expect(pressedChord(press("Control", { ctrlKey: true }))).toBeNull();
    expect(pressedChord(press("a", { altKey: true }))).toBeNull();
    expect(pressedChord(press("!", { shiftKey: true }))).toEqual({ key: "!" });
    expect(pressedChord(press("F4", { shiftKey: true }))).toEqual({ key: "F4", isShift: true });
  });
});
