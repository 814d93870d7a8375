import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { entriesOf, oneOf, stored } from "../../../src/store/window/stored.ts";

const held = new Map<string, string>();

beforeEach(() => {
  held.clear();
  vi.stubGlobal("localStorage", {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
  });
});
afterEach(() => void vi.unstubAllGlobals());

const isText = (value: unknown): value is string => typeof value === "string";

test("a word is kept as it is, and one that is unknown gives the first", () => {
  const wheel = stored("wheel", oneOf(["guess", "zoom"]));
  expect(wheel.load()).toBe("guess");
  wheel.save("zoom");
  expect([held.get("wheel"), wheel.load()]).toEqual(["zoom", "zoom"]);
  held.set("wheel", "sideways");
  expect(wheel.load()).toBe("guess");
});

test("of an object only whole entries come back, of anything else none", () => {
  const notes = stored("notes", entriesOf(isText));
  notes.save({ a: "one" });
  expect(notes.load()).toEqual({ a: "one" });
  held.set("notes", '{"a":"one","b":2}');
  expect(notes.load()).toEqual({ a: "one" });
  for (const broken of ["{", "null", "3", '"text"']) {
    held.set("notes", broken);
    expect(notes.load()).toEqual({});
  }
});

test("storage that refuses is lived with", () => {
  const refuse = () => {
    throw new DOMException("refused", "SecurityError");
  };
  vi.stubGlobal("localStorage", { getItem: refuse, setItem: refuse });
  const snap = stored("snap", oneOf(["on", "off"]));
  expect(() => snap.save("off")).not.toThrow();
  expect(snap.load()).toBe("on");
});
